import { lengthInFeet } from "./length";
import type { RangeKind } from "./kind";

const aLength = lengthInFeet();

/** A range of lengths in feet, read row by row; blank cells are passed over. */
export const lengthsInFeet: RangeKind<readonly number[]> = {
  shape: "range",
  takes: "a range of lengths in ft, or of text such as 18' 6 1/2\"",
  read: (cells, label) =>
    cells.flat().flatMap((cell) => (cell === null || cell === "" ? [] : [aLength.read(cell, label)])),
};
