import { InputError } from "../../shared/inputError";
import { pitch } from "../../shared/kinds/pitch";
import { RATIO_RESULT } from "../../shared/result";
import { defineFunction, omittable, required } from "../../shared/spec/spec";
import { PITCH_RUN } from "../../shared/units";

/**
 * How far a hip or valley runs along the first plane's eave for each unit of run up that plane, seen from above.
 * At a square corner both planes reach the same height where their runs are inversely proportional to their pitches: p/q.
 */
export const alongEavePerRun = (rise: number, otherRise: number): number => {
  if (rise === otherRise) return 1;
  if (otherRise === 0)
    throw new InputError("otherPitch must be more than 0 in 12 if the pitches differ, got 0");
  return rise / otherRise;
};

/**
 * Hip or valley length per unit of the common run of the first pitch, at a square corner:
 * sqrt(1 + (p/q)² + p²) with p, q as rise over run; sqrt(2 + p²) where they are equal.
 */
export const hipFactor = (rise: number, otherRise = rise): number =>
  Math.sqrt(1 + alongEavePerRun(rise, otherRise) ** 2 + (rise / PITCH_RUN) ** 2);

export const hipFactorSpec = defineFunction({
  id: "HIPFACTOR",
  concept: "slope",
  summary: "Length of a hip or valley per unit of common rafter run, at a square corner.",
  parameters: [
    required("pitch", pitch(), "Rise on 12 of the plane whose run is measured."),
    omittable(
      "otherPitch",
      pitch(),
      "Rise on 12 of the plane across the hip or valley; the same if left out.",
    ),
  ],
  heading: "Hip factor",
  result: RATIO_RESULT,
  formula: "√(1 + (p ÷ q)² + p²), p and q the two pitches as rise ÷ run; equal pitches: √(2 + p²)",
  source: "I. S. Griffith, Carpentry (1916), sections 20 and 23: unit length times the common run",
  examples: [
    { args: [6], result: 1.5, from: "√(2 + 0.25)" },
    { args: [12], result: Math.sqrt(3), from: "the diagonal of a cube" },
    { args: [6, 12], result: Math.sqrt(1.5), from: "√(1 + 0.5² + 0.5²)" },
  ],
  calculate: hipFactor,
});
