import { lengthInInches } from "../../shared/kinds/length";
import { count } from "../../shared/kinds/number";
import { INCHES_RESULT } from "../../shared/result";
import { defineFunction, required } from "../../shared/spec/spec";
import { PATTERN_PARAMETER } from "./patternParameter";

/** The fraction of a panel that a course starts with. */
export const startFraction = (course: number, pattern: readonly number[]): number =>
  pattern[(course - 1) % pattern.length] as number;

/** Inches from the roof edge to the first joint of a course, before setback and fold. */
export const staggerOffset = (course: number, panelWidthIn: number, pattern: readonly number[]): number =>
  startFraction(course, pattern) * panelWidthIn;

export const staggerOffsetSpec = defineFunction({
  id: "STAGGEROFFSET",
  concept: "stagger",
  summary: "Inches from the roof edge to the first joint of a course.",
  parameters: [
    required("course", count(), "Course number; 1 is the course at the eave."),
    required("panelWidthIn", lengthInInches({ moreThan: 0 }), "Width of a panel that shows."),
    PATTERN_PARAMETER,
  ],
  heading: "Stagger offset (in)",
  result: INCHES_RESULT,
  formula: "fraction of the course × panel width",
  source: "common practice, no published source",
  examples: [
    { args: [1, 24], result: 24, from: "full" },
    { args: [2, 24], result: 12, from: "half" },
    { args: [7, 24], result: 18, from: "course 7 is the third of the second four: three-quarter" },
    { args: [2, 24, "1, 1/3, 2/3"], result: 8, from: "24 in ÷ 3" },
  ],
  calculate: staggerOffset,
});
