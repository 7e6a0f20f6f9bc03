import { lengthInFeet, lengthInInches } from "../../shared/kinds/length";
import { count } from "../../shared/kinds/number";
import { countOf } from "../../shared/result";
import { wholeCount } from "../../shared/rounding";
import { defineFunction, optional, required } from "../../shared/spec/spec";
import { spacesAlong } from "./spaces";

/** Nails along a run at a spacing, with both ends nailed, in one or more rows. */
export const nailCount = (lengthFt: number, spacingIn: number, rows: number): number => {
  const spaces = spacesAlong(lengthFt, spacingIn);
  return spaces === 0 ? 0 : wholeCount(rows * (spaces + 1));
};

export const nailCountSpec = defineFunction({
  id: "NAILCOUNT",
  concept: "trim",
  summary: "Nails along a run at a given spacing, with both ends nailed.",
  parameters: [
    required("lengthFt", lengthInFeet(), "Length of the run."),
    required("spacingIn", lengthInInches({ moreThan: 0 }), "Largest on-center spacing."),
    optional("rows", count(), "Rows of nails side by side.", 1),
  ],
  heading: "Nails",
  result: countOf("nails"),
  formula: "rows × (length ÷ spacing, rounded up, + 1); 0 for no length",
  source: "common practice, no published source",
  examples: [
    { args: [20, 12], result: 21, from: "20 spaces of 12 in have 21 ends" },
    { args: [20, 6, 2], result: 82, from: "2 rows × (40 + 1)" },
  ],
  calculate: nailCount,
});
