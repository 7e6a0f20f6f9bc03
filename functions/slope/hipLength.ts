import { lengthInFeet } from "../../shared/kinds/length";
import { pitch } from "../../shared/kinds/pitch";
import { FEET_RESULT } from "../../shared/result";
import { defineFunction, omittable, required } from "../../shared/spec/spec";
import { hipFactor } from "./hipFactor";

/** True length of a hip or valley from the common run of the first plane. */
export const hipLength = (runFt: number, rise: number, otherRise?: number): number =>
  runFt * hipFactor(rise, otherRise);

export const hipLengthSpec = defineFunction({
  id: "HIPLENGTH",
  concept: "slope",
  summary: "True length of a hip or valley, from the level run of the common rafter next to it.",
  parameters: [
    required("runFt", lengthInFeet(), "Level run of the common rafter, not of the hip."),
    required("pitch", pitch(), "Rise on 12 of the plane whose run is measured."),
    omittable(
      "otherPitch",
      pitch(),
      "Rise on 12 of the plane across the hip or valley; the same if left out.",
    ),
  ],
  heading: "Hip (ft)",
  result: FEET_RESULT,
  formula: "run × hip factor",
  source: "I. S. Griffith, Carpentry (1916), section 23: unit length times the common run",
  examples: [
    { args: [12, 6], result: 18, from: "12 × 1.5" },
    { args: [10, 12], result: 10 * Math.sqrt(3), from: "the diagonal of a cube" },
  ],
  calculate: hipLength,
});
