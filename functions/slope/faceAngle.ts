import { pitch } from "../../shared/kinds/pitch";
import { DEGREES_RESULT } from "../../shared/result";
import { defineFunction, omittable, required } from "../../shared/spec/spec";
import { toDegrees } from "../../shared/units";
import { alongEavePerRun } from "./hipFactor";
import { rafterFactor } from "./rafterFactor";

/** The angle on the sloped face between the eave and a hip or valley: atan(sloped run / run along the eave). */
export const faceAngle = (rise: number, otherRise = rise): number =>
  toDegrees(Math.atan2(rafterFactor(rise), alongEavePerRun(rise, otherRise)));

export const faceAngleSpec = defineFunction({
  id: "FACEANGLE",
  concept: "slope",
  summary: "Degrees on the sloped face between the eave and a hip or valley: the angle to cut panels at.",
  parameters: [
    required("pitch", pitch(), "Rise on 12 of the plane whose panels are cut."),
    omittable(
      "otherPitch",
      pitch(),
      "Rise on 12 of the plane across the hip or valley; the same if left out.",
    ),
  ],
  heading: "Face angle (degrees)",
  result: DEGREES_RESULT,
  formula: "atan(√(1 + p²) ÷ (p ÷ q)), p and q the two pitches as rise ÷ run",
  source: "plane geometry on the sloped face, square corner",
  examples: [
    { args: [6], result: 48.189685104, from: "atan 1.118034" },
    { args: [0], result: 45, from: "a flat roof: 45°, as on plan" },
  ],
  calculate: faceAngle,
});
