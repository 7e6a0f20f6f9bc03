import { lengthInFeet } from "../../shared/kinds/length";
import { pitch } from "../../shared/kinds/pitch";
import { FEET_RESULT } from "../../shared/result";
import { defineFunction, optional, required } from "../../shared/spec/spec";
import { rafterFactor } from "./rafterFactor";

/** Slope length of a level run and a level overhang. */
export const rafterLength = (runFt: number, rise: number, overhangFt: number): number =>
  (runFt + overhangFt) * rafterFactor(rise);

export const rafterLengthSpec = defineFunction({
  id: "RAFTERLENGTH",
  concept: "slope",
  summary: "Length up the slope, from a level run and overhang.",
  parameters: [
    required("runFt", lengthInFeet(), "Level distance from the wall line to below the ridge."),
    required("pitch", pitch(), "Rise on 12."),
    optional("overhangFt", lengthInFeet(), "Level distance from the wall line out to the eave.", 0),
  ],
  heading: "Slope length (ft)",
  result: FEET_RESULT,
  formula: "(run + overhang) × rafter factor",
  source: "Framing-square practice; US Army Engineer School Subcourse EN0069 Ed. A, Lesson 2",
  examples: [
    { args: [12, 9], result: 15, from: "the 3-4-5 triangle" },
    { args: [10, 9, 2], result: 15, from: "10 ft and 2 ft of overhang, the 3-4-5 triangle" },
  ],
  calculate: rafterLength,
});
