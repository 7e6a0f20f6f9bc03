import type { Roof, RoofPlane } from "../../../functions/roof/roofParts";
import { atHeight, type RoofPoint } from "../../../functions/roof/skeleton/plan";
import { planeHeight } from "../../../functions/roof/skeleton/roofSide";
import { isWithin } from "../../../shared/outlineWithin";
import { labelPoint } from "./labelPoint";
import { towardsTheEye } from "./viewPoint";

/** Whether a plane stands between a place and the eye. */
const hides = ({ side, corners }: RoofPlane, place: RoofPoint, eye: RoofPoint): boolean => {
  const below = planeHeight(side, place) - place.z;
  const gainPerStep =
    eye.z - (planeHeight(side, { x: place.x + eye.x, y: place.y + eye.y }) - planeHeight(side, place));
  const steps = below / gainPerStep;
  return steps > 0 && isWithin(corners, { x: place.x + eye.x * steps, y: place.y + eye.y * steps });
};

/** Where the numbers of the planes stand that the eye can see. */
export const visibleLabels = (
  { planes }: Roof,
  turnDegrees: number,
): { plane: RoofPlane; place: RoofPoint }[] => {
  const eye = towardsTheEye(turnDegrees);
  return planes
    .map((plane) => {
      const point = labelPoint(plane.corners);
      return { plane, place: atHeight(point, planeHeight(plane.side, point)) };
    })
    .filter(({ plane, place }) => !planes.some((other) => other !== plane && hides(other, place, eye)));
};
