import { noAnswer } from "../../shared/inputError";
import type { GraphEdge } from "./roofGraph";
import { cross, dot, minus, type RoofPoint } from "./skeleton/planVectors";
import type { RoofSide } from "./skeleton/roofSide";

interface Step {
  readonly from: RoofPoint;
  readonly to: RoofPoint;
}

/** The edges around a plane, each directed so that the plane is on its left. */
const stepsAround = (edges: readonly GraphEdge[], plane: RoofSide): Step[] =>
  edges.flatMap(({ left, right, from, to }) => {
    if (left === plane) return [{ from, to }];
    return right === plane ? [{ from: to, to: from }] : [];
  });

/** How far a step turns to the left of the one before it. */
const turn = (before: Step, after: Step): number => {
  const [a, b] = [minus(before.to, before.from), minus(after.to, after.from)];
  return Math.atan2(cross(a, b), dot(a, b));
};

/**
 * The corners around a plane, from its edges chained end to end. Where the plane touches itself at a node, the chain
 * turns sharpest right, so that one ring goes around both parts.
 */
export const planeCorners = (edges: readonly GraphEdge[], plane: RoofSide): RoofPoint[] => {
  const left = new Set(stepsAround(edges, plane));
  const [first] = left;
  if (!first) throw noAnswer(`the plane of side ${plane.number} comes to nothing between its neighbors`);
  const corners: RoofPoint[] = [];
  for (let step: Step | undefined = first; step;) {
    const before: Step = step;
    left.delete(before);
    corners.push(before.from);
    [step] = [...left]
      .filter(({ from }) => from === before.to)
      .sort((a, b) => turn(before, a) - turn(before, b));
    if (!step && before.to !== first.from) throw noAnswer(`the plane of side ${plane.number} doesn't close`);
  }
  if (left.size > 0)
    throw noAnswer(`the plane of side ${plane.number} would run all round other planes, as round a hole`);
  return corners;
};
