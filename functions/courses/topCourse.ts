import { lengthInFeet, lengthInInches } from "../../shared/kinds/length";
import { INCHES_RESULT } from "../../shared/result";
import { isSame } from "../../shared/rounding";
import { defineFunction, required } from "../../shared/spec/spec";
import { feetToInches } from "../../shared/units";
import { courses } from "./courses";

/** Inches of the last course that show; rounding never makes it more than the exposure. */
export const topCourse = (slopeLengthFt: number, exposureIn: number): number => {
  const slopeIn = feetToInches(slopeLengthFt);
  const count = courses(slopeLengthFt, exposureIn);
  if (count === 0) return slopeIn;
  return isSame(slopeIn / exposureIn, count) ? exposureIn : slopeIn - (count - 1) * exposureIn;
};

export const topCourseSpec = defineFunction({
  id: "TOPCOURSE",
  concept: "courses",
  summary: "Inches of the last course that show below the ridge.",
  parameters: [
    required("slopeLengthFt", lengthInFeet(), "Distance up the slope from the eave to the ridge."),
    required("exposureIn", lengthInInches({ moreThan: 0 }), "Height of a course that shows."),
  ],
  heading: "Top course (in)",
  result: INCHES_RESULT,
  formula: "slope length − (courses − 1) × exposure",
  source: "common practice, no published source",
  examples: [
    { args: [20, 12], result: 12, from: "twenty whole courses" },
    { args: [0, 12], result: 0, from: "no slope, no course" },
    { args: [`18' 6"`, 12], result: 6, from: "222 in − 18 × 12 in" },
  ],
  calculate: topCourse,
});
