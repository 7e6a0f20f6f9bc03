import { isBlank, type Cell, type Matrix } from "../cell";
import { dateInWords, isDateSerial } from "../sheetDate";
import { InputError } from "../inputError";
import { fraction } from "./number";
import type { Filled, RangeKind } from "./kind";

/** The default stagger: full, half, three-quarter, quarter. */
export const DEFAULT_PATTERN = "1, 1/2, 3/4, 1/4";

/** Far longer than any repeat in use; a search for the best start weighs every step. */
const LONGEST_PATTERN = 24;
const TAKES = `fractions of a panel from the eave up, as a range or as text such as ${DEFAULT_PATTERN}`;
const aFraction = fraction({ moreThan: 0, atMost: 1 });

const steps = (cells: Matrix): Filled[] =>
  cells
    .flat()
    .flatMap((cell): Cell[] => (typeof cell === "string" ? cell.split(",") : [cell]))
    .flatMap((cell) => (isBlank(cell) ? [] : [cell]));

/** The width of each course's starter as a fraction of a panel, from the eave up; then it repeats. */
export const staggerPattern: RangeKind<readonly number[]> = {
  shape: "range",
  takes: TAKES,
  read: (cells, label) => {
    const given = steps(cells);
    if (given.length === 0) throw new InputError(`${label} has no steps: it takes ${TAKES}`);
    if (given.length > LONGEST_PATTERN)
      throw new InputError(`${label} must have at most ${LONGEST_PATTERN} steps, got ${given.length}`);
    return given.map((cell) => {
      if (typeof cell === "number" && isDateSerial(cell))
        throw new InputError(
          `${label} got the date ${dateInWords(cell)} (${cell}); type the fraction as 0.5, or as text`,
        );
      return aFraction.read(cell, label);
    });
  },
};
