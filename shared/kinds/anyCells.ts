import type { Matrix } from "../cell";
import type { RangeKind } from "./kind";

/** Cells of any kind, as they stand. */
export const anyCells: RangeKind<Matrix> = {
  shape: "range",
  takes: "a range of cells",
  read: (cells) => cells,
};
