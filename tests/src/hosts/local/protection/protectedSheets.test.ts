import { ICommandService, type Workbook } from "@univerjs/core";
import {
  AddWorksheetMergeMutation,
  InsertRowMutation,
  SetColHiddenMutation,
  SetNumfmtMutation,
  SetRangeValuesMutation,
  SetStyleCommand,
  SetWorksheetColWidthMutation,
  SetWorksheetRowHeightMutation,
} from "@univerjs/sheets";
import ExcelJS from "exceljs";
import { localCatalog } from "../../../../../src/hosts/local/formulas/catalog";
import { createHeadlessEngine } from "../../../../../src/hosts/local/workbook/headless";
import { protectSheets } from "../../../../../src/hosts/local/protection/protectedSheets";
import { openXlsx } from "../../../../../src/xlsx/xlsxFile";
import { formula, number, text, type WorkbookPlan } from "../../../../../src/workbook/plan";

const planned = (): Promise<WorkbookPlan> => {
  const sheet = { columnWidths: [], rowHeights: {}, frozenRows: 0 };
  const cells = [
    { row: 0, column: 0, content: text("Eave (ft)") },
    { row: 0, column: 1, content: number(40) },
    { row: 0, column: 2, content: formula("=B1*2") },
  ];
  return Promise.resolve({
    sheets: [
      { ...sheet, name: "Bid", isProtected: true, cells },
      { ...sheet, name: "Open", cells: [] },
    ],
    names: [],
  });
};

const filed = async () => {
  const workbook = new ExcelJS.Workbook();
  const bid = workbook.addWorksheet("Bid");
  bid.addRow(["Eave (ft)", 40]);
  bid.getCell("B1").protection = { locked: false };
  bid.getCell("C1").value = { formula: "B1*2", result: 80 };
  await bid.protect("invented", {});
  workbook.addWorksheet("Open");
  return openXlsx(new Uint8Array(await workbook.xlsx.writeBuffer())).book;
};

const opened = async (make: typeof planned | typeof filed) => {
  const engine = createHeadlessEngine(localCatalog, await make());
  await engine.calculated();
  const told: string[] = [];
  protectSheets(engine.injector, engine.workbook, (message) => told.push(message));
  return { engine, told, at: (column: number, sheet = "Bid") => ({ sheet, row: 0, column }) };
};

const idsOf = (workbook: Workbook, sheet: string) => ({
  unitId: workbook.getUnitId(),
  subUnitId: workbook.getSheetBySheetName(sheet)?.getSheetId() ?? "",
});

const A1 = { startRow: 0, endRow: 0, startColumn: 0, endColumn: 0 };
const BOLD = { trigger: SetStyleCommand.id, cellValue: { 0: { 0: { s: { bl: 1 } } } } };
const PERCENT = { values: { p: { ranges: [A1] } }, refMap: { p: { pattern: "0%" } } };

describe.each([
  ["a plan", planned, '"Bid" is protected: ', "."],
  ["its file", filed, '"Bid" is protected in its file: ', ". Remove the protection in Excel first."],
] as const)("on a sheet that %s protects", (_, make, begins, ends) => {
  it.each([
    ["a value", SetRangeValuesMutation.id, { cellValue: { 0: { 0: { v: "Rake" } } } }, "A1 wasn't changed"],
    ["a format", SetRangeValuesMutation.id, BOLD, "A1 wasn't changed"],
    ["a number format", SetNumfmtMutation.id, PERCENT, "A1 wasn't changed"],
    ["a row", InsertRowMutation.id, { range: { ...A1, endColumn: 25 } }, "nothing was moved"],
    ["a merge", AddWorksheetMergeMutation.id, { ranges: [{ ...A1, endColumn: 1 }] }, "no format was changed"],
    ["a width", SetWorksheetColWidthMutation.id, { ranges: [A1], colWidth: 9 }, "no format was changed"],
    ["a height", SetWorksheetRowHeightMutation.id, { ranges: [A1], rowHeight: 9 }, "no format was changed"],
    ["a hidden column", SetColHiddenMutation.id, { ranges: [A1] }, "no format was changed"],
  ])("%s is refused with a message, and accepted on another sheet", async (_what, id, params, refused) => {
    const { engine, told } = await opened(make);
    const commands = engine.injector.get(ICommandService);
    const before = JSON.stringify(engine.workbook.save());
    commands.syncExecuteCommand(id, { ...params, ...idsOf(engine.workbook, "Bid") });
    expect(told).toEqual([`${begins}${refused}${ends}`]);
    expect(JSON.stringify(engine.workbook.save())).toBe(before);
    commands.syncExecuteCommand(id, { ...params, ...idsOf(engine.workbook, "Open") });
    expect(told).toHaveLength(1);
    expect(JSON.stringify(engine.workbook.save())).not.toBe(before);
    engine.dispose();
  });
});

it("a cell that the file leaves unlocked can be edited and formulas follow; so can another sheet", async () => {
  const { engine, told, at } = await opened(filed);
  engine.setCell(at(1), 50);
  engine.setCell(at(0, "Open"), "free");
  await engine.calculated();
  expect([engine.getCell(at(1)), engine.getCell(at(2)), engine.getCell(at(0, "Open"))]).toEqual([
    50,
    100,
    "free",
  ]);
  expect(told).toEqual([]);
  engine.dispose();
});

it("nothing is written to a sheet that its file protects", async () => {
  const { engine } = await opened(filed);
  const at = { row: 5, column: 5 };
  const patch = (sheet: string) => ({ sheet, at, cells: [[{ content: number(1) }]] });
  expect(engine.survey("Bid", { from: at, to: at }).isProtected).toBe(true);
  await expect(engine.putCells(patch("Bid"))).rejects.toThrow(
    'F6 of "Bid" is protected. Nothing was written.',
  );
  expect(engine.survey("Open", { from: at, to: at }).isProtected).toBe(false);
  await engine.putCells(patch("Open"));
  expect(engine.getCell({ sheet: "Open", ...at })).toBe(1);
  engine.dispose();
});
