import { isBlank } from "../cell";
import type { CellKind, RangeKind } from "./kind";

/** One value for all sides, or a list of one a side; undefined where a cell among them is blank. */
export type PerSide = readonly (number | undefined)[];

/** A range that holds one cell, or a cell for each side in the sides' order. */
export const perSide = (cellKind: CellKind<number>): RangeKind<PerSide> => ({
  shape: "range",
  ...(cellKind.nameEnding && { nameEnding: cellKind.nameEnding }),
  takes: `${cellKind.takes}: one for all sides, or a range of one for each side`,
  read: (cells, label) => {
    const list = cells.flat();
    const labelOf = (index: number): string => (list.length > 1 ? `${label} of side ${index + 1}` : label);
    return list.map((cell, index) => (isBlank(cell) ? undefined : cellKind.read(cell, labelOf(index))));
  },
});
