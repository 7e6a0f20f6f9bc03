import type { EdgeKind } from "./roofParts";
import type { GraphEdge } from "./roofGraph";
import { cross, distance, dot, minus } from "./skeleton/planVectors";
import type { RoofSide } from "./skeleton/roofSide";

/** Cosine of 10°: planes that face within 10° of opposite ways meet in a ridge, even where walls are out of square. */
const NEARLY_OPPOSITE = Math.cos((10 * Math.PI) / 180);
/** Rise on run below which an edge is level. */
const LEVEL = 1e-6;

const isLevel = ({ from, to }: GraphEdge): boolean => Math.abs(to.z - from.z) <= LEVEL * distance(from, to);

/** How steeply the plane climbs to the left of the edge. */
const climbToLeft = (side: RoofSide, { from, to }: GraphEdge): number => {
  const run = minus(to, from);
  return cross(run, side.inward) / (side.runPerRise * distance(from, to));
};

/**
 * At the outer edge: an eave (level, below its plane), a ridge (the level top of a shed roof), a rake along a gable, or an
 * eave step (the short sloping edge between two eaves at different heights).
 */
const outerKind = (edge: GraphEdge): EdgeKind => {
  if (!isLevel(edge)) return edge.isAlongGable ? "rake" : "eave step";
  return climbToLeft(edge.left, edge) > 0 ? "eave" : "ridge";
};

/** Where two planes meet: a valley in a trough; a ridge or hip over a crest; a pitch break where both climb the same way. */
const innerKind = (edge: GraphEdge, right: RoofSide): EdgeKind => {
  const [leftClimb, rightClimb] = [climbToLeft(edge.left, edge), -climbToLeft(right, edge)];
  if (isLevel(edge) && leftClimb * rightClimb < 0) return "pitch break";
  if (leftClimb + rightClimb > 0) return "valley";
  return dot(edge.left.inward, right.inward) < -NEARLY_OPPOSITE ? "ridge" : "hip";
};

export const edgeKind = (edge: GraphEdge): EdgeKind =>
  edge.right ? innerKind(edge, edge.right) : outerKind(edge);
