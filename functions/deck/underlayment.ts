import { InputError } from "../../shared/inputError";
import { lengthInFeet, lengthInInches } from "../../shared/kinds/length";
import { countOf } from "../../shared/result";
import { wholeCount } from "../../shared/rounding";
import { defineFunction, required } from "../../shared/spec";
import { feetToInches, inchesToFeet } from "../../shared/units";
import { trimPieces } from "../trim/trimPieces";

/** Courses of sheet up a height, each lapped over the one below. */
const sheetCourses = (heightIn: number, rollWidthIn: number, headLapIn: number): number =>
  Math.max(1, wholeCount((heightIn - headLapIn) / (rollWidthIn - headLapIn)));

/**
 * Rolls of underlayment for one plane, wrapped over all four edges. A roll goes on from course to course, and each
 * after the first gives up an end lap.
 */
export const underlayment = (
  eaveFt: number,
  slopeLengthFt: number,
  rollWidthIn: number,
  rollLengthIn: number,
  headLapIn: number,
  endLapIn: number,
  wrapIn: number,
): number => {
  if (!(headLapIn < rollWidthIn))
    throw new InputError(`headLap must be less than the roll's width of ${rollWidthIn} in, got ${headLapIn}`);
  if (!(endLapIn < rollLengthIn))
    throw new InputError(`endLap must be less than the roll's length of ${rollLengthIn} in, got ${endLapIn}`);
  if (eaveFt === 0 || slopeLengthFt === 0) return 0;
  const courses = sheetCourses(feetToInches(slopeLengthFt) + 2 * wrapIn, rollWidthIn, headLapIn);
  const sheetIn = courses * (feetToInches(eaveFt) + 2 * wrapIn);
  return trimPieces(inchesToFeet(sheetIn), rollLengthIn, endLapIn);
};

export const underlaymentSpec = defineFunction({
  id: "UNDERLAYMENT",
  concept: "deck",
  summary: "Rolls of underlayment for a plane, lapped course over course and wrapped over every edge.",
  parameters: [
    required("eaveFt", lengthInFeet(), "Along the eave; for a plane that narrows, its mean width."),
    required("slopeLengthFt", lengthInFeet(), "Up the slope, from the eave to the ridge."),
    required("rollWidthIn", lengthInInches({ moreThan: 0 }), "Width of a roll."),
    required("rollLengthIn", lengthInInches({ moreThan: 0 }), "Length of a roll."),
    required("headLapIn", lengthInInches(), "Each course over the one below."),
    required("endLapIn", lengthInInches(), "Each roll over the one before."),
    required("wrapIn", lengthInInches(), "Over every edge."),
  ],
  result: countOf("rolls"),
  formula:
    "courses = (slope length + 2 wraps − head lap) ÷ (roll width − head lap), rounded up; rolls = (courses × (eave + 2 wraps) − end lap) ÷ (roll length − end lap), rounded up",
  source:
    "Laps of 2 in and 4 in: US Navy NAVEDTRA 14045, sample specification; wrap of at least 1 in: common practice, no published source; the local code governs",
  examples: [
    {
      args: [40, 12, 36, 800, 2, 4, 1],
      result: 4,
      from: "146 in: (146 − 2) ÷ 34, 5 courses of 482 in; (2410 − 4) ÷ 796 = 3.02",
    },
    { args: [10, "34 in", 36, 800, 2, 4, 1], result: 1, from: "36 in: one course of 122 in" },
  ],
  calculate: underlayment,
});
