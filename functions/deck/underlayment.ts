import { lappedPieces } from "../../shared/laps";
import { lengthInFeet, lengthInInches } from "../../shared/kinds/length";
import { countOf } from "../../shared/result";
import { defineFunction, required } from "../../shared/spec/spec";
import { feetToInches } from "../../shared/units";
import { lapBelow } from "./lapBelow";

/** Rolls for one rectangular face, laid in courses from the eave up. The next roll continues where one ends. */
export const underlayment = (
  eaveFt: number,
  slopeLengthFt: number,
  rollWidthIn: number,
  rollLengthIn: number,
  headLapIn: number,
  endLapIn: number,
  wrapIn: number,
): number => {
  lapBelow(headLapIn, "headLap", rollWidthIn, "roll's width");
  lapBelow(endLapIn, "endLap", rollLengthIn, "roll's length");
  if (eaveFt === 0 || slopeLengthFt === 0) return 0;
  const courses = lappedPieces(feetToInches(slopeLengthFt) + 2 * wrapIn, rollWidthIn, headLapIn);
  return lappedPieces(courses * (feetToInches(eaveFt) + 2 * wrapIn), rollLengthIn, endLapIn);
};

export const underlaymentSpec = defineFunction({
  id: "UNDERLAYMENT",
  concept: "deck",
  summary: "Rolls of underlayment for a rectangular roof face, laps and wraps included.",
  parameters: [
    required("eaveFt", lengthInFeet(), "Length along the eave."),
    required("slopeLengthFt", lengthInFeet(), "Distance up the slope from the eave to the ridge."),
    required("rollWidthIn", lengthInInches({ moreThan: 0 }), "Width of a roll."),
    required("rollLengthIn", lengthInInches({ moreThan: 0 }), "Length of a roll."),
    required("headLapIn", lengthInInches(), "Lap of one course over the next."),
    required("endLapIn", lengthInInches(), "Lap of one roll over the next within a course."),
    required("wrapIn", lengthInInches(), "Wrap over every edge."),
  ],
  heading: "Underlayment rolls",
  result: countOf("rolls"),
  formula:
    "courses = (slope + 2 × wrap − head lap) ÷ (roll width − head lap), rounded up; rolls = (courses × (eave + 2 × " +
    "wrap) − end lap) ÷ (roll length − end lap), rounded up. The local code and the manufacturer govern the laps",
  source:
    "Navy NAVEDTRA 14045, sample specification: one layer from 4 in 12 up, head lap 2 in, end lap 4 in; 2 in 12 to " +
    "4 in 12 two layers, head lap 19 in. The wrap of at least 1 in is common practice",
  examples: [
    {
      args: [40, 16, 36, 800, 2, 4, 1],
      result: 4,
      from: "(194 − 2) ÷ 34: six courses of 482 in are 2892 in; (2892 − 4) ÷ 796 is 3.63",
    },
    {
      args: [40, 16, 36, 800, 19, 4, 1],
      result: 7,
      from: "(194 − 19) ÷ 17: eleven courses are 5302 in; (5302 − 4) ÷ 796 is 6.66",
    },
  ],
  calculate: underlayment,
});
