import type { Cell, Matrix } from "../../shared/cell";
import type { Area, CellAddress } from "./address";

/** What a sheet's cells show, and the formulas behind them; empty text where a cell has no formula. */
export interface SheetContents {
  readonly cells: Matrix;
  readonly formulas: readonly (readonly string[])[];
}

/** What a workbook's sheets show, and what its names refer to. */
export interface Contents {
  /** By sheet name, in the workbook's order. */
  readonly sheets: ReadonlyMap<string, SheetContents>;
  /** What each name refers to, such as `'Panel'!$B$4`. */
  readonly targets: ReadonlyMap<string, string>;
}

type Shown = Pick<SheetContents, "cells">;

/** What a cell shows; null outside the used range. */
export const valueAt = ({ cells }: Shown, { row, column }: CellAddress): Cell => cells[row]?.[column] ?? null;

/** What the cells of an area show; null outside the used range. */
export const valuesIn = (sheet: Shown, { from, to }: Area): Matrix =>
  Array.from({ length: to.row - from.row + 1 }, (_, row) =>
    Array.from({ length: to.column - from.column + 1 }, (_each, column) =>
      valueAt(sheet, { row: from.row + row, column: from.column + column }),
    ),
  );

export const formulaAt = ({ formulas }: SheetContents, { row, column }: CellAddress): string =>
  formulas[row]?.[column] ?? "";
