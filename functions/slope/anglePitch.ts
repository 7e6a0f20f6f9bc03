import { InputError } from "../../shared/inputError";
import { degrees } from "../../shared/kinds/number";
import { STEEPEST_PITCH } from "../../shared/kinds/pitch";
import { pitchInWords } from "../../shared/pitchText";
import { RISE_RESULT } from "../../shared/result";
import { isSame } from "../../shared/rounding";
import { defineFunction, required } from "../../shared/spec/spec";
import { PITCH_RUN, toRadians } from "../../shared/units";
import { pitchAngle } from "./pitchAngle";

const STEEPEST_DEGREES = pitchAngle(STEEPEST_PITCH);

/** Rise on 12: 12 tan(degrees). The steepest pitch comes back exactly, so that every other function accepts it. */
export const anglePitch = (angleDegrees: number): number => {
  if (angleDegrees < STEEPEST_DEGREES)
    return Math.min(STEEPEST_PITCH, PITCH_RUN * Math.tan(toRadians(angleDegrees)));
  if (isSame(angleDegrees, STEEPEST_DEGREES)) return STEEPEST_PITCH;
  throw new InputError(
    `angle must be at most ${STEEPEST_DEGREES.toFixed(2)} degrees, which is ${pitchInWords(STEEPEST_PITCH)}, got ${angleDegrees}`,
  );
};

export const anglePitchSpec = defineFunction({
  id: "ANGLEPITCH",
  concept: "slope",
  summary: "An angle in degrees above level as a pitch: the rise on a run of 12.",
  parameters: [required("angleDegrees", degrees({ atLeast: 0 }), "Degrees above level.")],
  heading: "Pitch (in 12)",
  result: RISE_RESULT,
  formula: "12 × tan(degrees)",
  source: "right-triangle trigonometry",
  examples: [
    { args: [45], result: 12, from: "rise equals run" },
    { args: ["26.565051177°"], result: 6, from: "atan(6 ÷ 12) = 26.565051177°" },
  ],
  calculate: anglePitch,
});
