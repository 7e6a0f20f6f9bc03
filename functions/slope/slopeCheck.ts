import { pitch } from "../../shared/kinds/pitch";
import { pitchInWords } from "../../shared/pitchText";
import { TEXT_RESULT } from "../../shared/result";
import { isSame } from "../../shared/rounding";
import { defineFunction, required } from "../../shared/spec/spec";

/** A roof steeper than this is "steep" in 29 CFR 1926.500(b). */
const STEEP_ABOVE = 4;

/** Whether a pitch meets the minimum for the shingle, and whether the roof counts as steep for the people working on it. */
export const slopeCheck = (rise: number, minimumRise: number): string => {
  const isBelow = rise < minimumRise && !isSame(rise, minimumRise);
  const isSteep = rise > STEEP_ABOVE && !isSame(rise, STEEP_ABOVE);
  const allowed = isBelow ? "below the minimum of" : "at or above the minimum of";
  const steep = isSteep ? `; steep: over ${pitchInWords(STEEP_ABOVE)} (OSHA 1926.500(b))` : "";
  return `${allowed} ${pitchInWords(minimumRise)}${steep}`;
};

export const slopeCheckSpec = defineFunction({
  id: "SLOPECHECK",
  concept: "slope",
  summary:
    "Whether a pitch is below the minimum for the shingle, and whether the roof counts as steep to work on.",
  parameters: [
    required("pitch", pitch(), "Rise on 12."),
    required("minimum", pitch(), "Lowest pitch that the manufacturer allows."),
  ],
  heading: "Pitch check",
  result: TEXT_RESULT,
  formula: "pitch < minimum; pitch > 4 in 12",
  source: "29 CFR 1926.500(b), low slope and steep roofs; the minimum is the manufacturer's",
  examples: [
    { args: [2, 3], result: "below the minimum of 3 in 12", from: "2 < 3" },
    { args: [4, 3], result: "at or above the minimum of 3 in 12", from: "4 in 12 is not over 4 in 12" },
    {
      args: [6, 3],
      result: "at or above the minimum of 3 in 12; steep: over 4 in 12 (OSHA 1926.500(b))",
      from: "29 CFR 1926.500(b)",
    },
  ],
  calculate: slopeCheck,
});
