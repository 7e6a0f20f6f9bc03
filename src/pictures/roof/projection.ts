import type { RoofPoint } from "../../../functions/roof/skeleton/planVectors";
import { toRadians } from "../../../shared/units";

/** The viewer looks down at this angle: steep enough to see the planes, flat enough to see their rise. */
const DOWN = toRadians(28);

/** A point as the viewer sees it, in ft: x to the right, y up, depth away from the viewer on plan. */
export interface ProjectedPoint {
  readonly x: number;
  readonly y: number;
  readonly depth: number;
}

/** Parallel projection after a turn about the vertical axis. At 0° the viewer is on the side where plan y is least. */
export const project = ({ x, y, z }: RoofPoint, turnDegrees: number): ProjectedPoint => {
  const turn = toRadians(turnDegrees);
  const depth = x * Math.sin(turn) + y * Math.cos(turn);
  return {
    x: x * Math.cos(turn) - y * Math.sin(turn),
    y: z * Math.cos(DOWN) + depth * Math.sin(DOWN),
    depth,
  };
};

/** A step from the building toward the viewer. */
export const towardViewer = (turnDegrees: number): RoofPoint => {
  const turn = toRadians(turnDegrees);
  return { x: -Math.sin(turn), y: -Math.cos(turn), z: Math.tan(DOWN) };
};

/** A face of less area is seen edge on. */
const EDGE_ON_SQ_FT = 1e-9;

/** Whether a face, its corners counterclockwise as seen from outside, turns its outside to the viewer. */
export const facesViewer = (corners: readonly ProjectedPoint[]): boolean =>
  corners.reduce((sum, from, index) => {
    const to = corners[(index + 1) % corners.length] as ProjectedPoint;
    return sum + from.x * to.y - to.x * from.y;
  }, 0) > EDGE_ON_SQ_FT;
