import type { Matrix } from "../../shared/cell";
import type { Area, CellAddress } from "./address";

/** A table of the spreadsheet's own. */
export interface SpreadsheetTable {
  readonly name: string;
  /** Its heading and total rows included. */
  readonly area: Area;
  readonly hasHeadings: boolean;
  readonly hasTotals: boolean;
}

/** The sheet in front as somebody must know it who wants to write into it. */
export interface Survey {
  readonly sheet: string;
  readonly selected: Area;
  /** What shows, from the sheet's first cell as far as it is used. */
  readonly cells: Matrix;
  /** The formulas behind it, empty text where there is none; rows and columns as in `cells`. */
  readonly formulas: readonly (readonly string[])[];
  /** The last cell that the sheet has. */
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

/** What people typed: results of formulas may change by themselves. */
const typedIn = ({ sheet, cells, formulas }: Survey): string =>
  JSON.stringify([
    sheet,
    cells.map((line, row) => line.map((cell, column) => formulas[row]?.[column] || cell)),
  ]);

/** Whether both show the same sheet with the same cells, so that what was planned on one holds on the other. */
export const sameSheet = (a: Survey, b: Survey): boolean => typedIn(a) === typedIn(b);
