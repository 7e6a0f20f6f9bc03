import type { Cell } from "../../shared/cell";
import { lengthInFeet, lengthInInches } from "../../shared/kinds/length";
import { countOf, INCHES_RESULT, RATIO_RESULT } from "../../shared/result";
import { wholeCount } from "../../shared/rounding";
import { defineTable, required } from "../../shared/spec/spec";
import { courses } from "../courses/courses";
import { PATTERN_PARAMETER } from "./patternParameter";
import { startFraction } from "./staggerOffset";
import { starterBlank } from "./starterBlank";
import { starterCover } from "./starterCover";

/** How many of `courseCount` courses use the starter of step `step` (counted from 1) of a repeat. */
const piecesOfStep = (step: number, courseCount: number, repeat: number): number =>
  wholeCount((courseCount - step + 1) / repeat);

const NO_STARTERS = ["no starters", "", "", "", "", ""];

/** One row for each step of the stagger that is used: what to cut, where to bend, how many. */
export const starterList = (
  slopeLengthFt: number,
  exposureIn: number,
  panelWidthIn: number,
  setbackIn: number,
  foldIn: number,
  pattern: readonly number[],
): Cell[][] => {
  const courseCount = courses(slopeLengthFt, exposureIn);
  if (courseCount === 0) return [NO_STARTERS];
  return pattern.slice(0, courseCount).map((_, index) => {
    const step = index + 1;
    return [
      step,
      startFraction(step, pattern),
      starterCover(step, panelWidthIn, setbackIn, pattern),
      foldIn,
      starterBlank(step, panelWidthIn, setbackIn, foldIn, pattern),
      piecesOfStep(step, courseCount, pattern.length),
    ];
  });
};

export const starterListSpec = defineTable({
  id: "STARTERLIST",
  concept: "stagger",
  summary:
    "The starters of one gable edge: what to cut and bend on the ground before anyone climbs the roof.",
  parameters: [
    required("slopeLengthFt", lengthInFeet(), "Distance up the gable edge from the eave to the ridge."),
    required("exposureIn", lengthInInches({ moreThan: 0 }), "Height of a course that shows."),
    required("panelWidthIn", lengthInInches({ moreThan: 0 }), "Width of a panel that shows."),
    required("setbackIn", lengthInInches(), "Distance that the starter stops short of the roof edge."),
    required(
      "foldIn",
      lengthInInches(),
      "Width bent up at the gable; the bend mark is this far from the cut.",
    ),
    PATTERN_PARAMETER,
  ],
  columns: [
    { heading: "first course", result: countOf("course") },
    { heading: "fraction of a panel", result: RATIO_RESULT },
    { heading: "cover (in)", result: INCHES_RESULT },
    { heading: "bend mark from cut (in)", result: INCHES_RESULT },
    { heading: "blank to cut (in)", result: INCHES_RESULT },
    { heading: "pieces", result: countOf("pieces") },
  ],
  formula:
    "for each step of the pattern that is used: cover, fold, blank = cover + fold; pieces = courses that start with it",
  source: "common practice, no published source",
  examples: [
    {
      args: [20, 12, 24, 1.5, 2.5],
      result: [
        [
          "first course",
          "fraction of a panel",
          "cover (in)",
          "bend mark from cut (in)",
          "blank to cut (in)",
          "pieces",
        ],
        [1, 1, 22.5, 2.5, 25, 5],
        [2, 0.5, 10.5, 2.5, 13, 5],
        [3, 0.75, 16.5, 2.5, 19, 5],
        [4, 0.25, 4.5, 2.5, 7, 5],
      ],
      from: "a 20 ft gable at 12 in exposure: five sets",
    },
  ],
  calculate: starterList,
});
