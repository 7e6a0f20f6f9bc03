import type { EdgeKind } from "./roofParts";
import type { GraphEdge } from "./roofGraph";
import { cross, distance, dot, minus } from "./skeleton/planVectors";
import type { RoofSide } from "./skeleton/roofSide";

/** Cosine of 10°: planes that face this nearly opposite ways meet in a ridge, even where walls are out of square. */
const NEARLY_OPPOSITE = Math.cos((10 * Math.PI) / 180);
/** Rise on run below which an edge is level. */
const LEVEL = 1e-6;

const isLevel = ({ from, to }: GraphEdge): boolean => Math.abs(to.z - from.z) <= LEVEL * distance(from, to);

/** How steeply the plane climbs away from the edge, to the edge's left. */
const climbToLeft = (side: RoofSide, { from, to }: GraphEdge): number => {
  const run = minus(to, from);
  return cross(run, side.inward) / (side.runPerRise * distance(from, to));
};

/**
 * At the roof's edge: the eave and what lies level below its plane, the level top of a shed, a rake along a gable, or the
 * short sloping step between two eaves at different heights.
 */
const outerKind = (edge: GraphEdge): EdgeKind => {
  if (!isLevel(edge)) return edge.isAlongGable ? "rake" : "eave step";
  return climbToLeft(edge.left, edge) > 0 ? "eave" : "ridge";
};

/** Where two planes meet: in a trough a valley; over a crest a ridge or a hip; level and one above the other a break. */
const innerKind = (edge: GraphEdge, right: RoofSide): EdgeKind => {
  const [leftClimb, rightClimb] = [climbToLeft(edge.left, edge), -climbToLeft(right, edge)];
  if (isLevel(edge) && leftClimb * rightClimb < 0) return "pitch break";
  if (leftClimb + rightClimb > 0) return "valley";
  return dot(edge.left.inward, right.inward) < -NEARLY_OPPOSITE ? "ridge" : "hip";
};

export const edgeKind = (edge: GraphEdge): EdgeKind =>
  edge.right ? innerKind(edge, edge.right) : outerKind(edge);
