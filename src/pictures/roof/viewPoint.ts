import type { RoofPoint } from "../../../functions/roof/skeleton/plan";
import { toRadians } from "../../../shared/units";

/** The eye looks down at this angle: steep enough to see the planes, low enough to see their rise. */
const DOWN = toRadians(28);

/** A place as the eye sees it, in ft: across to the right, up, and how far off it stands on plan. */
export interface Sight {
  readonly across: number;
  readonly up: number;
  readonly away: number;
}

/** Parallel projection, the building turned about its upright axis; at 0° the eye stands where y is least. */
export const sightOf = ({ x, y, z }: RoofPoint, turnDegrees: number): Sight => {
  const turn = toRadians(turnDegrees);
  const across = x * Math.cos(turn) - y * Math.sin(turn);
  const away = x * Math.sin(turn) + y * Math.cos(turn);
  return { across, up: z * Math.cos(DOWN) + away * Math.sin(DOWN), away };
};

/** A step from the building toward the eye. */
export const towardsTheEye = (turnDegrees: number): RoofPoint => {
  const turn = toRadians(turnDegrees);
  return { x: -Math.sin(turn), y: -Math.cos(turn), z: Math.tan(DOWN) };
};

/** Less area than this is a face seen edge on. */
const EDGE_ON_SQ_FT = 1e-9;

/** Whether a face whose corners run counterclockwise as seen from outside turns its outside to the eye. */
export const facesTheEye = (sights: readonly Sight[]): boolean =>
  sights.reduce((sum, from, index) => {
    const to = sights[(index + 1) % sights.length] as Sight;
    return sum + from.across * to.up - to.across * from.up;
  }, 0) > EDGE_ON_SQ_FT;
