import ExcelJS from "exceljs";
import type { ISheetDataValidationRule } from "@univerjs/core";
import { bookSnapshot } from "../../../../../src/hosts/local/book/bookSnapshot";
import { localCatalog } from "../../../../../src/hosts/local/formulas/catalog";
import { createHeadlessEngine } from "../../../../../src/hosts/local/workbook/headless";
import { openXlsx, saveXlsx, type XlsxFile } from "../../../../../src/xlsx/xlsxFile";

const opened = async (rules: Readonly<Record<string, ExcelJS.DataValidation>>): Promise<XlsxFile> => {
  const workbook = new ExcelJS.Workbook();
  const sheet = workbook.addWorksheet("Old bid");
  sheet.addRow(["shape", 40]);
  for (const [address, rule] of Object.entries(rules)) sheet.getCell(address).dataValidation = rule;
  return openXlsx(new Uint8Array(await workbook.xlsx.writeBuffer()));
};

const list = (formula: string): ExcelJS.DataValidation => ({ type: "list", formulae: [formula] });

const engineRules = ({ book }: XlsxFile): Pick<ISheetDataValidationRule, "formula1" | "ranges">[] => {
  const resources = bookSnapshot("test", book).resources ?? [];
  const data = resources.find(({ name }) => name === "SHEET_DATA_VALIDATION_PLUGIN")?.data ?? "{}";
  const bySheet = JSON.parse(data) as Record<string, ISheetDataValidationRule[]>;
  return Object.values(bySheet)
    .flat()
    .map(({ formula1, ranges }) => ({ formula1, ranges }));
};

const cell = (row: number, column: number) => ({
  startRow: row,
  endRow: row,
  startColumn: column,
  endColumn: column,
});

it("a file's lists are offered, whether the entries are in the rule or in cells", async () => {
  const file = await opened({
    B2: list('"hip, gable,""flat"""'),
    B3: list("$D$1:$D$4"),
    B4: list("'Old bid'!$D$1:$D$4"),
  });
  expect(engineRules(file)).toEqual([
    { formula1: 'hip,gable,"flat"', ranges: [cell(1, 1)] },
    { formula1: "=$D$1:$D$4", ranges: [cell(2, 1)] },
    { formula1: "='Old bid'!$D$1:$D$4", ranges: [cell(3, 1)] },
  ]);
  expect(file.notShown).toEqual([]);
});

it("other rules aren't offered, and the page says so", async () => {
  const file = await opened({
    B2: { type: "whole", operator: "greaterThan", formulae: [1] },
    B3: list("INDIRECT(A1)"),
  });
  expect(engineRules(file)).toEqual([]);
  expect(file.notShown).toEqual(["2 validation rules"]);
});

it("a list for a whole column is offered in the rows shown", async () => {
  const { book } = await opened({});
  const [sheet] = book.sheets;
  if (!sheet) throw new Error("there is no sheet");
  const dropDowns = [{ ranges: ["B2:B1048576"], choices: ["hip"] }];
  const [rule] = engineRules({ book: { ...book, sheets: [{ ...sheet, dropDowns }] } } as unknown as XlsxFile);
  expect(rule?.ranges).toEqual([{ startRow: 1, endRow: 60, startColumn: 1, endColumn: 1 }]);
});

it("saving keeps the file's rules unchanged, and doesn't count them as a change", async () => {
  const file = await opened({ B2: list('"hip,gable"'), B3: list("$D$1:$D$4") });
  const engine = createHeadlessEngine(localCatalog, file.book);
  await engine.calculated();
  const calculated = engine.book();
  expect(saveXlsx({ file, calculated }, calculated)).toBe(file.bytes);
  engine.setCell({ sheet: "Old bid", row: 0, column: 1 }, 41);
  await engine.calculated();
  const again = openXlsx(saveXlsx({ file, calculated }, engine.book()));
  const rulesOf = ({ parts }: XlsxFile) =>
    /<dataValidations.*<\/dataValidations>/s.exec(
      new TextDecoder().decode(parts.get("xl/worksheets/sheet1.xml")),
    )?.[0];
  expect(rulesOf(again)).toContain("hip,gable");
  expect(rulesOf(again)).toBe(rulesOf(file));
  engine.dispose();
});
