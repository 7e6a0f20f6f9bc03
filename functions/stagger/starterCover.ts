import { InputError } from "../../shared/inputError";
import { lengthInInches } from "../../shared/kinds/length";
import { count } from "../../shared/kinds/number";
import { INCHES_RESULT } from "../../shared/result";
import { defineFunction, required } from "../../shared/spec/spec";
import { PATTERN_PARAMETER } from "./patternParameter";
import { staggerOffset } from "./staggerOffset";

/** Inches that the starter of a course covers: its fraction of a panel, less the setback from the gable edge. */
export const starterCover = (
  course: number,
  panelWidthIn: number,
  setbackIn: number,
  pattern: readonly number[],
): number => {
  const offsetIn = staggerOffset(course, panelWidthIn, pattern);
  if (!(setbackIn < offsetIn))
    throw new InputError(
      `setback must be less than the starter of course ${course}, ${offsetIn} in, got ${setbackIn}`,
    );
  return offsetIn - setbackIn;
};

export const starterCoverSpec = defineFunction({
  id: "STARTERCOVER",
  concept: "stagger",
  summary: "Inches that the starter of a course covers at a gable.",
  parameters: [
    required("course", count(), "Course number; 1 is the course at the eave."),
    required("panelWidthIn", lengthInInches({ moreThan: 0 }), "Width of a panel that shows."),
    required("setbackIn", lengthInInches(), "Distance that the starter stops short of the roof edge."),
    PATTERN_PARAMETER,
  ],
  heading: "Starter cover (in)",
  result: INCHES_RESULT,
  formula: "fraction of the course × panel width − setback",
  source: "common practice, no published source",
  examples: [
    { args: [1, 24, 1.5], result: 22.5, from: "24 − 1 1/2" },
    { args: [3, 24, 1.5], result: 16.5, from: "18 − 1 1/2" },
  ],
  calculate: starterCover,
});
