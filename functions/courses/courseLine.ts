import { lengthInFeet, lengthInInches } from "../../shared/kinds/length";
import { count } from "../../shared/kinds/number";
import { FEET_RESULT } from "../../shared/result";
import { defineFunction, optional, required } from "../../shared/spec/spec";
import { inchesToFeet } from "../../shared/units";

/** Feet up the slope from the eave to the lower edge of a course, where its chalk line is snapped. */
export const courseLine = (course: number, exposureIn: number, startFt: number): number =>
  startFt + (course - 1) * inchesToFeet(exposureIn);

export const courseLineSpec = defineFunction({
  id: "COURSELINE",
  concept: "courses",
  summary: "Feet from the eave up to the lower edge of a course, where its chalk line goes.",
  parameters: [
    required("course", count(), "Course number; 1 is the course at the eave."),
    required("exposureIn", lengthInInches({ moreThan: 0 }), "Height of a course that shows."),
    optional(
      "startFt",
      lengthInFeet(),
      "Distance from the eave up to the lower edge of the first course.",
      0,
    ),
  ],
  heading: "Course line (ft)",
  result: FEET_RESULT,
  formula: "start + (course − 1) × exposure",
  source: "common practice, no published source",
  examples: [
    { args: [1, 12], result: 0, from: "the first course starts at the eave" },
    { args: [5, 12], result: 4, from: "four courses of 1 ft are below it" },
    { args: [3, 9, "6 in"], result: 2, from: "6 in + 2 × 9 in = 24 in" },
  ],
  calculate: courseLine,
});
