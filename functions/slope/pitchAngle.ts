import { pitch } from "../../shared/kinds/pitch";
import { DEGREES_RESULT } from "../../shared/result";
import { defineFunction, required } from "../../shared/spec/spec";
import { PITCH_RUN, toDegrees } from "../../shared/units";

/** The angle of a pitch above level, in radians. */
export const slopeRadians = (rise: number): number => Math.atan(rise / PITCH_RUN);

/** Degrees above level: atan(rise / 12). */
export const pitchAngle = (rise: number): number => toDegrees(slopeRadians(rise));

export const pitchAngleSpec = defineFunction({
  id: "PITCHANGLE",
  concept: "slope",
  summary: "The angle of a pitch, in degrees above level.",
  parameters: [required("pitch", pitch(), "Rise on 12.")],
  heading: "Pitch (degrees)",
  result: DEGREES_RESULT,
  formula: "atan(rise ÷ 12)",
  source: "right-triangle trigonometry",
  examples: [
    { args: ["50%"], result: 26.565051177, from: "atan 0.5" },
    { args: [12], result: 45, from: "rise equals run" },
  ],
  calculate: pitchAngle,
});
