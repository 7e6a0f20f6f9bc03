import type { Cell, Matrix } from "../../shared/cell";
import type { CellAddress } from "./address";

/** A sheet as it stands: what its cells show, and the formulas behind them, empty text where there is none. */
export interface SheetContents {
  readonly cells: Matrix;
  readonly formulas: readonly (readonly string[])[];
}

/** A workbook as it stands. */
export interface Contents {
  /** By the sheet's name, in the workbook's order. */
  readonly sheets: ReadonlyMap<string, SheetContents>;
  /** What each name stands for, such as `'Panel'!$B$4`. */
  readonly targets: ReadonlyMap<string, string>;
}

export const shownAt = ({ cells }: SheetContents, { row, column }: CellAddress): Cell =>
  cells[row]?.[column] ?? null;

export const formulaAt = ({ formulas }: SheetContents, { row, column }: CellAddress): string =>
  formulas[row]?.[column] ?? "";
