import type { Matrix } from "../../shared/cell";
import type { Area, CellAddress } from "./address";

/** An Excel table (a formatted range with a name), or the same in a file. */
export interface SpreadsheetTable {
  readonly name: string;
  /** Its heading and total rows included. */
  readonly area: Area;
  readonly hasHeadings: boolean;
  readonly hasTotals: boolean;
}

/** All about the active sheet that matters before writing into it. */
export interface Survey {
  readonly sheet: string;
  readonly selected: Area;
  /** Values from A1 to the end of the used range. */
  readonly cells: Matrix;
  /** The formulas of the same cells; empty text where a cell has none. */
  readonly formulas: readonly (readonly string[])[];
  /** The sheet's last cell. */
  readonly end: CellAddress;
  /** The table that the selection is in. */
  readonly table?: SpreadsheetTable;
  readonly merged: readonly Area[];
  readonly isProtected: boolean;
  /** A filter hides rows. */
  readonly isFiltered: boolean;
  /** Rows hidden by hand. */
  readonly hiddenRows: readonly number[];
  /** Names that the workbook has. */
  readonly names: readonly string[];
}

/** What was entered. Results of formulas don't count: they may change without an edit. */
const typedIn = ({ sheet, cells, formulas }: Survey): string =>
  JSON.stringify([
    sheet,
    cells.map((line, row) => line.map((cell, column) => formulas[row]?.[column] || cell)),
  ]);

/** Whether both are the same sheet with the same contents, so that a plan made for one is valid for the other. */
export const sameSheet = (a: Survey, b: Survey): boolean => typedIn(a) === typedIn(b);
