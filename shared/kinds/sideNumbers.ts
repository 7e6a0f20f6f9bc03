import { isBlank, type Cell } from "../cell";
import { count } from "./number";
import type { Filled, RangeKind } from "./kind";

const LONGEST_LIST = 2000;
const aNumber = count();

const isFilled = (cell: Cell): cell is Filled => !isBlank(cell);

/** Numbers of a footprint's sides, as a range or as text such as `2, 4`; blank cells are passed over. */
export const sideNumbers: RangeKind<readonly number[]> = {
  shape: "range",
  takes: "numbers of sides, as a range or as text such as 2, 4",
  read: (cells, label) =>
    cells
      .flat()
      .flatMap((cell): Cell[] => (typeof cell === "string" ? cell.slice(0, LONGEST_LIST).split(",") : [cell]))
      .filter(isFilled)
      .map((cell) => aNumber.read(cell, label)),
};
