import { dayAndMonth, isDateSerial, timeOfDay } from "../sheetDate";
import { InputError } from "../inputError";
import { describeCell } from "../describe";
import { readPitchText } from "../pitchText";
import { PITCH_RUN } from "../units";
import { notTaken, withinBounds, type Bounds } from "./bounds";
import type { CellKind } from "./kind";

/** Steeper than this a roof is a wall. */
export const STEEPEST_PITCH = 24;

const TAKES = "a pitch such as 6 (rise on 12), 6:12, 6/12, 6 in 12, 26.57° or 50%";
const HOW_TO_TYPE = "type the rise alone, as 6, or the pitch as 6 in 12";

/** A rise that a person types has few decimals; a time of day in minutes mostly hasn't. */
const isShortDecimal = (value: number): boolean => Number(value.toFixed(4)) === value;

/** The rise in a time that a spreadsheet made of `6:12`, a date that it made of `6/12`, or the number itself. */
const riseOfNumber = (value: number, label: string): number => {
  if (isDateSerial(value)) {
    const { day, month } = dayAndMonth(value);
    if (Number.isInteger(value) && day === PITCH_RUN) return month;
    if (Number.isInteger(value) && month === PITCH_RUN) return day;
    throw new InputError(`${label} got a date that is no pitch on 12 (${value}): ${HOW_TO_TYPE}`);
  }
  const time = timeOfDay(value);
  if (time?.minutes === PITCH_RUN && time.hours <= STEEPEST_PITCH) return time.hours;
  if (time && value > 0 && value < 1 && !isShortDecimal(value))
    throw new InputError(
      `${label} got a time of day that is no pitch on 12 (${describeCell(value)}): ${HOW_TO_TYPE}`,
    );
  return value;
};

/** A pitch as its rise on a run of 12. */
export const pitch = (bounds: Bounds = { atLeast: 0 }): CellKind<number> => ({
  shape: "cell",
  takes: TAKES,
  read: (cell, label) => {
    const rise = typeof cell === "string" ? readPitchText(cell) : cell;
    if (typeof rise !== "number") throw notTaken(label, TAKES, cell);
    const value = typeof cell === "number" ? riseOfNumber(cell, label) : rise;
    return withinBounds(value, { atMost: STEEPEST_PITCH, ...bounds }, label, "in 12", cell);
  },
});
