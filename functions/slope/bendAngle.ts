import { InputError } from "../../shared/inputError";
import { choice } from "../../shared/kinds/choice";
import { pitch } from "../../shared/kinds/pitch";
import { DEGREES_RESULT } from "../../shared/result";
import { defineFunction, omittable, required } from "../../shared/spec/spec";
import { toDegrees } from "../../shared/units";
import { pitchAngle, slopeRadians } from "./pitchAngle";

const JOINTS = ["ridge", "hip", "valley", "eave break", "side wall"] as const;
type Joint = (typeof JOINTS)[number];

/** Between two planes whose eaves meet at a square corner, so that their level components are perpendicular. */
const squareCornerBend = (rise: number, otherRise: number): number =>
  toDegrees(Math.acos(Math.cos(slopeRadians(rise)) * Math.cos(slopeRadians(otherRise))));

/** The angle between the normals of the two planes: the bend that a brake puts into a flat strip to fit the joint. */
export const bendAngle = (joint: Joint, rise: number, otherRise?: number): number => {
  switch (joint) {
    case "ridge":
      return pitchAngle(rise) + pitchAngle(otherRise ?? rise);
    case "hip":
    case "valley":
      return squareCornerBend(rise, otherRise ?? rise);
    case "eave break":
      if (otherRise === undefined)
        throw new InputError("otherPitch is missing: an eave break needs two pitches");
      return Math.abs(pitchAngle(rise) - pitchAngle(otherRise));
    case "side wall":
      // A plumb wall that runs up the slope is perpendicular to the plane at every pitch.
      return 90;
  }
};

export const bendAngleSpec = defineFunction({
  id: "BENDANGLE",
  concept: "slope",
  summary: "Degrees to bend a flat strip of trim to fit a joint between two planes.",
  parameters: [
    required("joint", choice(JOINTS), "ridge, hip or valley at a square corner, eave break, or side wall."),
    required("pitch", pitch(), "Rise on 12 of one plane."),
    omittable(
      "otherPitch",
      pitch(),
      "Rise on 12 of the other plane; the same if left out. An eave break needs it.",
    ),
  ],
  heading: "Bend (degrees)",
  result: DEGREES_RESULT,
  formula:
    "angle between the normals of the planes: ridge a + b; hip, valley acos(cos a × cos b); eave break |a − b|; side wall 90",
  source: "Solid geometry; 180° less the dihedral of the framing-square hip backing",
  examples: [
    { args: ["hip", 6], result: 36.869897646, from: "180° − 143.130°, the dihedral of a 6 in 12 hip" },
    { args: ["ridge", 12], result: 90, from: "45° + 45°" },
    { args: ["eave break", 12, 0], result: 45, from: "45° − 0°" },
    { args: ["eave break", 12, 6], result: 18.434948823, from: "45° − 26.565°" },
    { args: ["side wall", 6], result: 90, from: "a plumb wall is perpendicular to a plane that it runs up" },
  ],
  calculate: bendAngle,
});
