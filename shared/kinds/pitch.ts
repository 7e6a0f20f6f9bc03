import { dateInWords, dayAndMonth, isDateSerial, timeOfDay, type TimeOfDay } from "../sheetDate";
import { InputError } from "../inputError";
import { isSame, isShortDecimal } from "../rounding";
import { readPitchText } from "../pitchText";
import { PITCH_RUN } from "../units";
import { limitsOf, notTaken, withinLimits, type Bounds } from "./bounds";
import type { CellKind } from "./kind";

/** Steeper than this a roof is a wall. */
export const STEEPEST_PITCH = 24;

const TAKES = "a pitch such as 6 (rise on 12), 6:12, 6/12, 6 in 12, 26.57° or 50%";
const HOW_TO_TYPE = "type the rise alone, as 6, or the pitch as 6 in 12";

/** The rise in a date that a spreadsheet made of `6/12`. */
const riseOfDate = (serial: number, label: string): number => {
  const { day, month } = dayAndMonth(serial);
  if (Number.isInteger(serial) && day === PITCH_RUN) return month;
  if (Number.isInteger(serial) && month === PITCH_RUN && day <= STEEPEST_PITCH) return day;
  throw new InputError(
    `${label} got the date ${dateInWords(serial)}, which is no pitch on 12: ${HOW_TO_TYPE}`,
  );
};

/** A number such as 0.3333, which may be a time of day that a person typed, or a fraction that a formula worked out. */
const refuseTime = (value: number, { hours, minutes }: TimeOfDay, label: string): never => {
  const time = `the time ${hours}:${String(minutes).padStart(2, "0")}`;
  const rise = Math.round(value * PITCH_RUN);
  const readings = isSame(value * PITCH_RUN, rise) ? `${time}, or ${rise}/${PITCH_RUN} worked out` : time;
  throw new InputError(`${label} got ${Number(value.toFixed(4))}, which may be ${readings}: ${HOW_TO_TYPE}`);
};

/** The rise in a time that a spreadsheet made of `6:12`, a date that it made of `6/12`, or the number itself. */
const riseOfNumber = (value: number, label: string): number => {
  if (isDateSerial(value)) return riseOfDate(value, label);
  const time = timeOfDay(value);
  if (time?.minutes === PITCH_RUN && time.hours <= STEEPEST_PITCH) return time.hours;
  // A rise that a person types has few decimals; a time of day in minutes mostly hasn't.
  if (time && value < 1 && !isShortDecimal(value)) return refuseTime(value, time, label);
  return value;
};

/** A pitch as its rise on a run of 12. */
export const pitch = (bounds: Bounds = { atLeast: 0 }): CellKind<number> => {
  const limits = limitsOf({ atMost: STEEPEST_PITCH, ...bounds });
  return {
    shape: "cell",
    takes: TAKES,
    read: (cell, label) => {
      const rise = typeof cell === "string" ? readPitchText(cell) : cell;
      if (typeof rise !== "number") throw notTaken(label, TAKES, cell);
      const value = typeof cell === "number" ? riseOfNumber(cell, label) : rise;
      // A person doesn't recognise the number of a date or time: the sentence shows the rise that was read.
      const came = typeof cell === "number" ? value : cell;
      return withinLimits(value, limits, label, "in 12", came);
    },
  };
};
