import type { Cell, Matrix } from "../../shared/cell";
import type { CellAddress } from "./address";

/** The sheet that a person looks at, as a host reads it. */
export interface SheetInView {
  readonly sheet: string;
  readonly selected: CellAddress;
  readonly cells: Matrix;
}

export const cellInView = ({ cells }: SheetInView, { row, column }: CellAddress): Cell =>
  cells[row]?.[column] ?? null;

/** A block of the sheet, blank where the sheet ends before it. */
export const blockInView = (view: SheetInView, from: CellAddress, to: CellAddress): Matrix =>
  Array.from({ length: to.row - from.row + 1 }, (_, row) =>
    Array.from({ length: to.column - from.column + 1 }, (_column, column) =>
      cellInView(view, { row: from.row + row, column: from.column + column }),
    ),
  );
