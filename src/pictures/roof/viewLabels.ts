import type { Roof, RoofPlane } from "../../../functions/roof/roofParts";
import { atHeight, type RoofPoint } from "../../../functions/roof/skeleton/planVectors";
import { planeHeight } from "../../../functions/roof/skeleton/roofSide";
import { isWithin } from "../../../shared/outlineWithin";
import { labelPoint } from "./labelPoint";
import { towardViewer } from "./projection";

/** Whether a plane lies between a point and the viewer. */
const hides = ({ side, corners }: RoofPlane, point: RoofPoint, toViewer: RoofPoint): boolean => {
  const below = planeHeight(side, point) - point.z;
  const gainPerStep =
    toViewer.z -
    (planeHeight(side, { x: point.x + toViewer.x, y: point.y + toViewer.y }) - planeHeight(side, point));
  const steps = below / gainPerStep;
  return steps > 0 && isWithin(corners, { x: point.x + toViewer.x * steps, y: point.y + toViewer.y * steps });
};

/** The planes that the viewer can see, and where to put their numbers. */
export const visibleLabels = (
  { planes }: Roof,
  turnDegrees: number,
): { plane: RoofPlane; point: RoofPoint }[] => {
  const toViewer = towardViewer(turnDegrees);
  return planes
    .map((plane) => {
      const onPlan = labelPoint(plane.corners);
      return { plane, point: atHeight(onPlan, planeHeight(plane.side, onPlan)) };
    })
    .filter(({ plane, point }) => !planes.some((other) => other !== plane && hides(other, point, toViewer)));
};
