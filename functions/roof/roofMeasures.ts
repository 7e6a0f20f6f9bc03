import { twiceSignedArea, type Outline, type Point } from "../../shared/outline";
import { toDegrees } from "../../shared/units";
import { rafterFactor } from "../slope/rafterFactor";
import type { RoofEdge, RoofPlane } from "./roofParts";
import { along, cross, distance, dot } from "./skeleton/planVectors";
import { insideFt, type RoofSide } from "./skeleton/roofSide";

export const planLengthFt = ({ from, to }: RoofEdge): number => distance(from, to);
export const riseFt = ({ from, to }: RoofEdge): number => Math.abs(to.z - from.z);
export const trueLengthFt = (edge: RoofEdge): number => Math.hypot(planLengthFt(edge), riseFt(edge));

export const planAreaSqFt = ({ corners }: RoofPlane): number => twiceSignedArea(corners) / 2;
export const slopedAreaSqFt = (plane: RoofPlane): number =>
  planAreaSqFt(plane) * rafterFactor(plane.side.pitch);

/** Below this a coordinate is 0. */
const SPECK_FT = 1e-9;
const clean = (value: number): number => (Math.abs(value) < SPECK_FT ? 0 : value);

/** The plane laid flat: x along its eave as seen from outside, y up the slope from its lowest corner, in ft. */
const laidFlat = ({ side, corners }: RoofPlane): Outline => {
  const flat = corners.map((corner) => ({
    x: dot(side.direction, corner),
    y: insideFt(side, corner) * rafterFactor(side.pitch),
  }));
  const [left, low] = [Math.min(...flat.map(({ x }) => x)), Math.min(...flat.map(({ y }) => y))];
  return flat.map(({ x, y }) => ({ x: clean(x - left), y: clean(y - low) }));
};

/** The outline of the plane on its sloped face, counterclockwise from the left end of its lowest edge. */
export const faceOutline = (plane: RoofPlane): Outline => {
  const flat = laidFlat(plane);
  const first = flat.reduce((best, { x, y }, index) => {
    const low = flat[best] as (typeof flat)[number];
    return y < low.y || (y === low.y && x < low.x) ? index : best;
  }, 0);
  return [...flat.slice(first), ...flat.slice(0, first)];
};

/** Distance up the slope from the lowest corner of the plane to its highest. */
export const slopeLengthFt = (plane: RoofPlane): number => Math.max(...laidFlat(plane).map(({ y }) => y));

/** The gradient of a plane: level, uphill, as long as its rise per foot of run. */
const climb = ({ inward, runPerRise }: RoofSide): Point => along({ x: 0, y: 0 }, inward, 1 / runPerRise);

/** The angle between the normals of the two planes, (−a, 1) and (−b, 1): the bend of a flat strip that fits the joint. */
export const bendDegrees = (plane: RoofPlane, otherPlane: RoofPlane): number => {
  const [a, b] = [climb(plane.side), climb(otherPlane.side)];
  return toDegrees(Math.atan2(Math.hypot(distance(a, b), cross(a, b)), dot(a, b) + 1));
};
