import { numberChoice } from "../../shared/kinds/choice";
import { lengthInFeet, lengthInInches } from "../../shared/kinds/length";
import { countOf } from "../../shared/result";
import { wholeCount } from "../../shared/rounding";
import { defineFunction, optional, required } from "../../shared/spec/spec";
import { spacesAlong } from "./spaces";

/** Clips along a run at a spacing: one between each two spaces, and one at each clipped end. */
export const clipCount = (lengthFt: number, spacingIn: number, ends: number): number => {
  const spaces = spacesAlong(lengthFt, spacingIn);
  return spaces === 0 ? 0 : wholeCount(spaces - 1 + ends);
};

export const clipCountSpec = defineFunction({
  id: "CLIPCOUNT",
  concept: "trim",
  summary: "Clips along a run of trim at a given spacing.",
  parameters: [
    required("lengthFt", lengthInFeet(), "Length of the run."),
    required("spacingIn", lengthInInches({ moreThan: 0 }), "Largest on-center spacing."),
    optional("ends", numberChoice([0, 1, 2]), "How many ends of the run get a clip.", 2),
  ],
  heading: "Clips",
  result: countOf("clips"),
  formula: "length ÷ spacing, rounded up, − 1 + ends; 0 for no length",
  source: "common practice, no published source",
  examples: [
    { args: [20, 12], result: 21, from: "20 spaces of 12 in have 21 ends" },
    { args: [20, 12, 0], result: 19, from: "20 spaces, only the joints between them" },
    { args: [20.25, 12], result: 22, from: "21 spaces, none over 12 in" },
  ],
  calculate: clipCount,
});
