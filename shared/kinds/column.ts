import { isBlank } from "../cell";
import type { CellKind, RangeKind } from "./kind";

/** A cell's value for each cell of a range, row by row; undefined where it is blank, so that places still count. */
export type Column<T> = readonly (T | undefined)[];

/** A range of cells of one kind that sits beside others: its blank cells keep their places. */
export const column = <T>(cellKind: CellKind<T>, takes: string): RangeKind<Column<T>> => ({
  shape: "range",
  takes,
  ...(cellKind.nameEnding && { nameEnding: cellKind.nameEnding }),
  read: (cells, label) =>
    cells.flat().map((cell) => (isBlank(cell) ? undefined : cellKind.read(cell, label))),
});
