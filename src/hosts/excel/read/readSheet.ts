import { CellError, type Cell, type Matrix } from "../../../../shared/cell";
import type { SheetContents } from "../../../workbook/contents";
import type { ActiveSheet } from "../../../workbook/activeSheet";
import type { CellAddress } from "../../../workbook/address";
import type { ExcelEntry } from "../ranges/excelEntry";
import { areaOf, PLACE_AND_SIZE } from "../ranges/ranges";
import { readLines } from "../ranges/readInPieces";
import { usedRanges } from "../ranges/usedRanges";

/** Where a blank sheet begins. */
const FIRST: CellAddress = { row: 0, column: 0 };

/** Excel gives an error's code as the cell's value, without a message. */
export const toCell = (value: unknown): Cell => {
  if (value === "" || value === null || value === undefined) return null;
  if (typeof value === "string" && /^#[A-Z/0!?]+$/.test(value)) return new CellError(value, "");
  return typeof value === "number" || typeof value === "boolean" ? value : String(value);
};

/** Excel gives a cell's value where it has no formula. */
const toFormula = (formula: unknown): string =>
  typeof formula === "string" && formula.startsWith("=") ? formula : "";

/** The values of a row, and what was entered in its cells. */
export interface Line {
  readonly values: unknown[];
  readonly formulas: unknown[];
}

/** The rows of a range whose values and formulas are loaded. */
export const linesOf = ({ values, formulas }: Excel.Range): Line[] =>
  values.map((line: unknown[], row) => ({
    values: line,
    formulas: (formulas[row] ?? []) as unknown[],
  }));

/** Values from A1 on: a used range leaves out the blank rows and columns before it. */
const paddedBy = <T>(
  { row: rows, column: columns }: CellAddress,
  values: readonly (readonly unknown[])[],
  read: (value: unknown) => T,
  blank: T,
): T[][] => [
  ...Array.from({ length: rows }, () => [] as T[]),
  ...values.map((row) => [...Array.from({ length: columns }, () => blank), ...row.map(read)]),
];

/** The contents of a sheet whose used range begins at `from`. */
export const sheetContents = (from: CellAddress, lines: readonly Line[]): SheetContents => ({
  cells: paddedBy(
    from,
    lines.map(({ values }) => values),
    toCell,
    null,
  ),
  formulas: paddedBy(
    from,
    lines.map(({ formulas }) => formulas),
    toFormula,
    "",
  ),
});

/** The sheet in front, as it shows. */
export const readActiveSheet = (excel: ExcelEntry): Promise<ActiveSheet> =>
  excel.run(async (context) => {
    const sheet = context.workbook.worksheets.getActiveWorksheet();
    const active = context.workbook.getActiveCell();
    sheet.load("id,name");
    active.load("rowIndex,columnIndex");
    await context.sync();
    const view = { sheet: sheet.name, selected: { row: active.rowIndex, column: active.columnIndex } };
    // By its id: the sheet in front may be another by the next step.
    const blocks = await usedRanges(context, [context.workbook.worksheets.getItem(sheet.id)]);
    const [lines = []] = await readLines(context, blocks, "values");
    return { ...view, cells: paddedBy(blocks[0]?.area.from ?? FIRST, lines, toCell, null) };
  });

/** The cells that a name stands for; undefined where there is no such name. */
export const readNamedRange = (excel: ExcelEntry, name: string): Promise<Matrix | undefined> =>
  excel.run(async (context) => {
    const item = context.workbook.names.getItemOrNullObject(name);
    await context.sync();
    if (item.isNullObject) return undefined;
    const range = item.getRangeOrNullObject();
    range.load(PLACE_AND_SIZE);
    await context.sync();
    if (range.isNullObject) return undefined;
    const sheet = range.worksheet;
    sheet.load("name");
    await context.sync();
    const [lines = []] = await readLines(
      context,
      [{ sheet, name: sheet.name, area: areaOf(range) }],
      "values",
    );
    return lines.map((line) => line.map(toCell));
  });
