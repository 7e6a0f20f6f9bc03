import { lengthInInches } from "../../shared/kinds/length";
import { count } from "../../shared/kinds/number";
import { INCHES_RESULT } from "../../shared/result";
import { defineFunction, required } from "../../shared/spec/spec";
import { PATTERN_PARAMETER } from "./patternParameter";
import { starterCover } from "./starterCover";

/** Inches of panel to cut for a starter, before its fold is bent up. */
export const starterBlank = (
  course: number,
  panelWidthIn: number,
  setbackIn: number,
  foldIn: number,
  pattern: readonly number[],
): number => starterCover(course, panelWidthIn, setbackIn, pattern) + foldIn;

export const starterBlankSpec = defineFunction({
  id: "STARTERBLANK",
  concept: "stagger",
  summary: "Inches to cut for the starter of a course, before its fold is bent.",
  parameters: [
    required("course", count(), "Course number; 1 is the course at the eave."),
    required("panelWidthIn", lengthInInches({ moreThan: 0 }), "Width of a panel that shows."),
    required("setbackIn", lengthInInches(), "Distance that the starter stops short of the roof edge."),
    required("foldIn", lengthInInches(), "Width bent up at the gable."),
    PATTERN_PARAMETER,
  ],
  heading: "Starter blank (in)",
  result: INCHES_RESULT,
  formula: "fraction of the course × panel width − setback + fold",
  source: "common practice, no published source",
  examples: [
    {
      args: [1, 24, 1.5, 2.5],
      result: 25,
      from: "24 − 1 1/2 + 2 1/2: the panel with its side lock opened flat",
    },
    { args: [3, 24, 1.5, 2.5], result: 19, from: "18 − 1 1/2 + 2 1/2" },
  ],
  calculate: starterBlank,
});
