import { degrees } from "../../shared/kinds/number";
import { STEEPEST_PITCH } from "../../shared/kinds/pitch";
import { RISE_RESULT } from "../../shared/result";
import { defineFunction, required } from "../../shared/spec";
import { PITCH_RUN, toRadians } from "../../shared/units";
import { pitchAngle } from "./pitchAngle";

/** Rise on 12: 12 tan(degrees). */
export const anglePitch = (angleDegrees: number): number => PITCH_RUN * Math.tan(toRadians(angleDegrees));

/** The steepest pitch's own angle, with room for its last digit. */
const STEEPEST_DEGREES = Number((pitchAngle(STEEPEST_PITCH) + 0.01).toFixed(2));

export const anglePitchSpec = defineFunction({
  id: "ANGLEPITCH",
  concept: "slope",
  summary: "Degrees above level as a pitch, the rise on 12.",
  parameters: [
    required("angleDegrees", degrees({ atLeast: 0, atMost: STEEPEST_DEGREES }), "Degrees above level."),
  ],
  result: RISE_RESULT,
  formula: "12 × tan(degrees)",
  source: "Trigonometry of the right triangle",
  examples: [
    { args: [45], result: 12, from: "rise equals run" },
    { args: ["26.565051177°"], result: 6, from: "atan(6 ÷ 12) = 26.565051177°" },
  ],
  calculate: anglePitch,
});
