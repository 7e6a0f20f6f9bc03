import { isBlank } from "../cell";
import { lengthInFeet } from "./length";
import type { RangeKind } from "./kind";

const aLength = lengthInFeet();

/** A range of lengths in feet, read row by row; blank cells are passed over. */
export const lengthsInFeet: RangeKind<readonly number[]> = {
  shape: "range",
  takes: "a range of lengths in feet, or of text such as 18' 6 1/2\"",
  nameEnding: "Ft",
  read: (cells, label) => cells.flat().flatMap((cell) => (isBlank(cell) ? [] : [aLength.read(cell, label)])),
};
