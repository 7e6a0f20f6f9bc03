import { CellError, type Cell, type Matrix } from "../../../shared/cell";
import type { SheetInView } from "../../sheets/inView";
import type { ExcelEntry } from "./excelHost";

/** Excel gives an error's code as the cell's value, without the sentence. */
export const toCell = (value: unknown): Cell => {
  if (value === "" || value === null || value === undefined) return null;
  if (typeof value === "string" && /^#[A-Z/0!?]+$/.test(value)) return new CellError(value, "");
  return typeof value === "number" || typeof value === "boolean" ? value : String(value);
};

/** Excel gives a cell's value where it has no formula. */
export const toFormula = (formula: unknown): string =>
  typeof formula === "string" && formula.startsWith("=") ? formula : "";

/** Values from the sheet's first cell on: Excel leaves out the rows and columns before the range that is used. */
export const paddedBy = <T>(
  rows: number,
  columns: number,
  values: readonly (readonly unknown[])[],
  read: (value: unknown) => T,
  blank: T,
): T[][] => [
  ...Array.from({ length: rows }, () => [] as T[]),
  ...values.map((row) => [...Array.from({ length: columns }, () => blank), ...row.map(read)]),
];

/** The sheet in front, as it shows. */
export const readInView = (excel: ExcelEntry): Promise<SheetInView> =>
  excel.run(async (context) => {
    const sheet = context.workbook.worksheets.getActiveWorksheet();
    const used = sheet.getUsedRangeOrNullObject(true);
    const active = context.workbook.getActiveCell();
    sheet.load("name");
    used.load("values,rowIndex,columnIndex");
    active.load("rowIndex,columnIndex");
    await context.sync();
    return {
      sheet: sheet.name,
      selected: { row: active.rowIndex, column: active.columnIndex },
      cells: used.isNullObject
        ? []
        : paddedBy(used.rowIndex, used.columnIndex, used.values as unknown[][], toCell, null),
    };
  });

/** The cells that a name stands for; undefined where there is no such name. */
export const readNamed = (excel: ExcelEntry, name: string): Promise<Matrix | undefined> =>
  excel.run(async (context) => {
    const item = context.workbook.names.getItemOrNullObject(name);
    await context.sync();
    if (item.isNullObject) return undefined;
    const range = item.getRangeOrNullObject();
    range.load("values");
    await context.sync();
    return range.isNullObject ? undefined : (range.values as unknown[][]).map((row) => row.map(toCell));
  });

/** Calls back when the selection, a cell or a result changes. Excel's handlers last as long as the pane. */
export const watchWorkbook = (excel: ExcelEntry, listener: () => void): (() => void) => {
  let isListening = true;
  const onEvent = (): Promise<void> => {
    if (isListening) listener();
    return Promise.resolve();
  };
  void excel
    .run(async (context) => {
      const { workbook } = context;
      workbook.onSelectionChanged.add(onEvent);
      workbook.worksheets.onChanged.add(onEvent);
      workbook.worksheets.onCalculated.add(onEvent);
      workbook.worksheets.onActivated.add(onEvent);
      await context.sync();
    })
    .then(listener);
  return () => {
    isListening = false;
  };
};
