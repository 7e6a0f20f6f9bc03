import type { Matrix } from "../cell";
import { dateInWords, isDateSerial } from "../sheetDate";
import { InputError } from "../inputError";
import { fraction } from "./number";
import type { Filled, RangeKind } from "./kind";

/** The stagger in use where nothing else is said: full, half, three-quarter, quarter. */
export const DEFAULT_PATTERN = "1, 1/2, 3/4, 1/4";

const LONGEST_PATTERN = 100;
const aFraction = fraction({ moreThan: 0, atMost: 1 });

const steps = (cells: Matrix): Filled[] =>
  cells
    .flat()
    .flatMap((cell): (Filled | null)[] =>
      typeof cell === "string" ? cell.slice(0, 2000).split(",") : [cell],
    )
    .filter((cell): cell is Filled => cell !== null && !(typeof cell === "string" && cell.trim() === ""));

/** The width of each course's starter as a fraction of a panel, from the eave up; then it repeats. */
export const staggerPattern: RangeKind<readonly number[]> = {
  shape: "range",
  takes: `fractions of a panel from the eave up, as a range or as text such as ${DEFAULT_PATTERN}`,
  read: (cells, label) => {
    const fractions = steps(cells).map((cell) => {
      if (typeof cell === "number" && isDateSerial(cell))
        throw new InputError(
          `${label} got the date ${dateInWords(cell)} (${cell}); type the fraction as 0.5, or as text`,
        );
      return aFraction.read(cell, label);
    });
    if (fractions.length > LONGEST_PATTERN)
      throw new InputError(`${label} must have at most ${LONGEST_PATTERN} steps, got ${fractions.length}`);
    return fractions;
  },
};
