import { lengthInFeet, lengthInInches } from "../../shared/kinds/length";
import { countOf } from "../../shared/result";
import { wholeCount } from "../../shared/rounding";
import { defineFunction, required } from "../../shared/spec/spec";
import { courses } from "../courses/courses";
import { PATTERN_PARAMETER } from "./patternParameter";

/** Whole sets of starters, one of each width in the pattern, for one gable edge. */
export const starterSets = (slopeLengthFt: number, exposureIn: number, pattern: readonly number[]): number =>
  wholeCount(courses(slopeLengthFt, exposureIn) / pattern.length);

export const starterSetsSpec = defineFunction({
  id: "STARTERSETS",
  concept: "stagger",
  summary: "Whole sets of starters for one gable edge.",
  parameters: [
    required("slopeLengthFt", lengthInFeet(), "Distance up the gable edge from the eave to the ridge."),
    required("exposureIn", lengthInInches({ moreThan: 0 }), "Height of a course that shows."),
    PATTERN_PARAMETER,
  ],
  heading: "Starter sets",
  result: countOf("sets"),
  formula: "courses ÷ courses in the repeat, rounded up",
  source: "common practice, no published source",
  examples: [
    { args: [20, 12], result: 5, from: "20 courses ÷ 4" },
    { args: [21, 12], result: 6, from: "21 courses begin a sixth set" },
  ],
  calculate: starterSets,
});
