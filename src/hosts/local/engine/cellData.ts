import {
  BooleanNumber,
  CellValueType,
  isNullCell,
  type ICellData,
  type Injector,
  type Nullable,
  type Worksheet,
} from "@univerjs/core";
import { FormulaDataModel } from "@univerjs/engine-formula";

/** What a person may put in a cell: text that begins with = is a formula. */
export type CellInput = string | number | boolean | null;

/** The engine's cell data for an input; it clears what was in the cell before. */
export const toCellData = (content: CellInput): ICellData => {
  const blank: ICellData = { v: null, f: null, si: null, p: null, t: null };
  if (content === null) return blank;
  if (typeof content === "number") return { ...blank, v: content, t: CellValueType.NUMBER };
  if (typeof content === "boolean") return { ...blank, v: content ? 1 : 0, t: CellValueType.BOOLEAN };
  if (content.startsWith("=")) return { ...blank, f: content };
  // Without the type, the engine would read 6:12 as a time.
  return { ...blank, v: content, t: CellValueType.STRING };
};

/** What a cell shows, without its number format; an error is its code. */
export const fromCellData = (cell: Nullable<ICellData>): CellInput => {
  const value = cell?.v ?? null;
  if (value === null) return null;
  if (cell?.t === CellValueType.BOOLEAN) return Number(value) === BooleanNumber.TRUE || value === true;
  return value;
};

/**
 * A cell's data as calculated. The sheet's own getCell gives a formatted number as text, and getCellRaw leaves out the cells that
 * a formula spills into.
 */
export const cellDataAt = (
  injector: Injector,
  sheet: Worksheet,
  row: number,
  column: number,
): Nullable<ICellData> => {
  const own = sheet.getCellRaw(row, column);
  if (!isNullCell(own)) return own;
  const spilled = injector.get(FormulaDataModel).getArrayFormulaCellData()[sheet.getUnitId()]?.[
    sheet.getSheetId()
  ];
  return spilled?.[row]?.[column];
};
