import { excelHost } from "../../../src/hosts/excel/excelHost";
import { localCatalog } from "../../../src/hosts/local/formulas/catalog";
import { createHeadlessEngine } from "../../../src/hosts/local/workbook/headless";
import type { Book } from "../../../src/xlsx/book/book";
import { openXlsx, saveXlsx } from "../../../src/xlsx/xlsxFile";
import { a1, readArea } from "../../../src/workbook/address";
import type { WorkbookPlan } from "../../../src/workbook/plan";
import { fakeExcel, fakeWorkbook } from "../../support/fakeExcel";
import { TEMPLATES } from "../../support/templates";

jest.setTimeout(120_000);

/** What stands in a workbook, whichever keeps it: by sheet, then by address; and what its names stand for. */
interface WrittenWorkbook {
  readonly sheets: Record<string, { frozenRows: number; cells: Record<string, string> }>;
  readonly names: Record<string, string>;
}

type CellInWords = [address: string, holds: string];

const inWords = (
  holds: string | number,
  numberFormat: string | undefined,
  choices: string | undefined,
): string =>
  [
    typeof holds === "number" ? `number ${holds}` : holds,
    numberFormat === undefined || numberFormat === "General" ? "" : `shown as ${numberFormat}`,
    choices === undefined ? "" : `one of ${choices}`,
  ]
    .filter((part) => part !== "")
    .join(", ");

const sorted = (cells: readonly CellInWords[]): Record<string, string> =>
  Object.fromEntries(cells.filter(([, holds]) => holds !== "").sort(([a], [b]) => a.localeCompare(b)));

/** Without the quotes that a sheet's name may have, and the dollar signs. */
const plainTarget = (target: string): string => target.replace(/['$]/g, "");

const inExcel = async (plan: WorkbookPlan): Promise<WrittenWorkbook> => {
  const workbook = fakeWorkbook();
  await excelHost(fakeExcel(workbook), () =>
    Promise.reject(new Error("no picture was to be inserted")),
  ).addSheets(plan);
  return {
    sheets: Object.fromEntries(
      workbook.sheets.map(({ name, frozenRows, cells }) => [
        name,
        {
          frozenRows,
          cells: sorted(
            [...cells].map(([address, { formula = "", numberFormat, choices }]): CellInWords => {
              const holds = typeof formula === "string" ? formula.replace(/^'/, "") : formula;
              return [address, inWords(holds, numberFormat, choices)];
            }),
          ),
        },
      ]),
    ),
    names: Object.fromEntries([...workbook.names].map(([name, target]) => [name, plainTarget(target)])),
  };
};

const inBook = ({ sheets, names, styles }: Book): WrittenWorkbook => ({
  sheets: Object.fromEntries(
    sheets.map(({ name, frozen, cells, dropDowns }) => {
      const choicesAt = (address: string): string | undefined =>
        dropDowns
          .find(({ ranges }) =>
            ranges.some((range) => {
              const { from, to } = readArea(range);
              const at = readArea(address).from;
              return (
                at.row >= from.row && at.row <= to.row && at.column >= from.column && at.column <= to.column
              );
            }),
          )
          ?.choices.join(",");
      const held = [...cells].flatMap(([row, inRow]) =>
        [...inRow].map(([column, { value, formula, isSpilled, style }]): CellInWords => {
          const address = a1({ row, column });
          const holds = formula ?? (isSpilled || value === null ? "" : value);
          if (typeof holds !== "string" && typeof holds !== "number")
            throw new Error(`a template writes text, numbers and formulas, but ${address} is none`);
          const pattern = styles.get(style ?? "")?.n?.pattern;
          return [address, inWords(holds, pattern, choicesAt(address))];
        }),
      );
      return [name, { frozenRows: frozen.rows, cells: sorted(held) }];
    }),
  ),
  names: Object.fromEntries(names.map(({ name, target }) => [name, plainTarget(target)])),
});

describe.each(Object.entries(TEMPLATES))("%s", (_, plan) => {
  it("stands in Excel, the local workbook and an .xlsx file alike", async () => {
    const engine = createHeadlessEngine(localCatalog, plan);
    await engine.calculated();
    const book = engine.book();
    engine.dispose();

    const excel = await inExcel(plan);
    expect(Object.keys(excel.sheets)).toEqual(plan.sheets.map(({ name }) => name));
    expect(inBook(book)).toEqual(excel);
    expect(inBook(openXlsx(saveXlsx(undefined, book)).book)).toEqual(excel);
  });
});
