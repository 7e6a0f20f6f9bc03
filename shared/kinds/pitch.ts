import { dateInWords, dayAndMonth, isDateSerial, timeOfDay } from "../sheetDate";
import { InputError } from "../inputError";
import { isSame } from "../rounding";
import { readPitchText } from "../pitchText";
import { PITCH_RUN } from "../units";
import { limitsOf, notTaken, withinLimits, type Bounds } from "./bounds";
import type { CellKind } from "./kind";

/** Steeper than this a roof is a wall. */
export const STEEPEST_PITCH = 24;

const TAKES = "a pitch such as 6 (rise on 12), 6:12, 6/12, 6 in 12, 26.57°, or 50% as a text";
const PERCENT = 100;
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

/**
 * A number below 1, which a cell holds that shows 50%, a time of day, or a rise over a run that a formula worked out. No
 * shingle lies on half an inch in twelve, so none of them is taken for a rise on 12.
 */
const refuseFraction = (value: number, label: string): never => {
  const time = timeOfDay(value);
  const rise = Math.round(value * PITCH_RUN);
  const readings = [
    `${Number((value * PERCENT).toFixed(2))}%`,
    ...(time ? [`the time ${time.hours}:${String(time.minutes).padStart(2, "0")}`] : []),
    ...(isSame(value * PITCH_RUN, rise) ? [`${rise}/${PITCH_RUN} worked out`] : []),
  ];
  throw new InputError(
    `${label} got ${Number(value.toFixed(4))}, which may be ${readings.join(", or ")}: ${HOW_TO_TYPE}`,
  );
};

/** Less than this is a rise of 0 that was worked out in binary, not half a minute past midnight. */
const NOISE = 0.0003;

/** No time of `24:12` or before has so large a number. */
const PAST_TIMES = (STEEPEST_PITCH + 1) / 24;

/** The rise in a time that a spreadsheet made of `6:12`, a date that it made of `6/12`, or the number itself. */
const riseOfNumber = (value: number, label: string): number => {
  if (isDateSerial(value)) return riseOfDate(value, label);
  if (value >= PAST_TIMES) return value;
  const time = timeOfDay(value);
  if (time?.minutes === PITCH_RUN && time.hours <= STEEPEST_PITCH) return time.hours;
  if (value > NOISE && value < 1) return refuseFraction(value, label);
  return value;
};

/** A pitch as its rise on a run of 12. */
export const pitch = (bounds: Bounds = { atLeast: 0 }): CellKind<number> => {
  const limits = limitsOf({ atMost: STEEPEST_PITCH, ...bounds });
  return {
    shape: "cell",
    takes: TAKES,
    bareNumber: "rise",
    read: (cell, label) => {
      const rise = typeof cell === "string" ? readPitchText(cell) : cell;
      if (typeof rise !== "number") throw notTaken(label, TAKES, cell);
      const value = typeof cell === "number" ? riseOfNumber(cell, label) : rise;
      // A person doesn't recognize the number of a date or time: the sentence shows the rise that was read.
      const came = typeof cell === "number" ? value : cell;
      return withinLimits(value, limits, label, "in 12", came);
    },
  };
};
