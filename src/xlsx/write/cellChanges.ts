import { CellError, type Cell } from "../../../shared/cell";
import type { CellAddress } from "../../workbook/address";
import type { BookCell, BookSheet } from "../book/book";

export const sameValue = (a: Cell, b: Cell): boolean =>
  a instanceof CellError && b instanceof CellError ? a.code === b.code : a === b;

const sameCell = (a: BookCell | undefined, b: BookCell | undefined): boolean =>
  a === b ||
  (sameValue(a?.value ?? null, b?.value ?? null) &&
    a?.formula === b?.formula &&
    a?.style === b?.style &&
    a?.spill?.rows === b?.spill?.rows &&
    a?.spill?.columns === b?.spill?.columns);

export interface CellChange extends CellAddress {
  readonly before: BookCell | undefined;
  readonly now: BookCell | undefined;
}

const cellsOf = ({ cells }: BookSheet): (CellAddress & { cell: BookCell })[] =>
  [...cells].flatMap(([row, inRow]) => [...inRow].map(([column, cell]) => ({ row, column, cell })));

/** The cells that differ between two versions of a sheet, row by row. */
export const cellChanges = (before: BookSheet, now: BookSheet): CellChange[] => {
  const gone = cellsOf(before).flatMap(({ row, column, cell }) =>
    now.cells.get(row)?.has(column) ? [] : [{ row, column, before: cell, now: undefined }],
  );
  const here = cellsOf(now).map(({ row, column, cell }) => ({
    row,
    column,
    before: before.cells.get(row)?.get(column),
    now: cell,
  }));
  return [...gone, ...here]
    .filter((change) => !sameCell(change.before, change.now))
    .sort((a, b) => a.row - b.row || a.column - b.column);
};
