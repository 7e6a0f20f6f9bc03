import { lengthInFeet, lengthInInches } from "../../shared/kinds/length";
import { countOf } from "../../shared/result";
import { wholeCount } from "../../shared/rounding";
import { defineFunction, required } from "../../shared/spec/spec";
import { feetToInches } from "../../shared/units";

/** Courses that cover a slope; the last one may be cut. */
export const courses = (slopeLengthFt: number, exposureIn: number): number =>
  wholeCount(feetToInches(slopeLengthFt) / exposureIn);

export const coursesSpec = defineFunction({
  id: "COURSES",
  concept: "courses",
  summary: "Courses of shingles from eave to ridge; the last one may be cut.",
  parameters: [
    required("slopeLengthFt", lengthInFeet(), "Distance up the slope from the eave to the ridge."),
    required("exposureIn", lengthInInches({ moreThan: 0 }), "Height of a course that shows."),
  ],
  heading: "Courses",
  result: countOf("courses"),
  formula: "slope length ÷ exposure, rounded up",
  source: "common practice, no published source",
  examples: [
    { args: [20, 12], result: 20, from: "240 in ÷ 12 in, exactly" },
    { args: ["20' 0 1/16\"", 12], result: 21, from: "a sixteenth of an inch over 20 courses" },
    { args: ["20 ft", "12 in"], result: 20, from: "240 in ÷ 12 in, exactly" },
  ],
  calculate: courses,
});
