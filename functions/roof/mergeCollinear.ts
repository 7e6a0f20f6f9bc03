import { cross, distance, minus, type RoofPoint } from "./skeleton/planVectors";
import type { GraphEdge } from "./roofGraph";

/** The same edge, directed so that equal pairs of planes are on equal sides. */
const oriented = (edge: GraphEdge): GraphEdge =>
  edge.right && edge.right.number < edge.left.number
    ? { ...edge, left: edge.right, right: edge.left, from: edge.to, to: edge.from }
    : edge;

const isStraightOn = (first: GraphEdge, second: GraphEdge, toleranceFt: number): boolean => {
  const whole = minus(second.to, first.from);
  const offFt = Math.abs(cross(whole, minus(first.to, first.from))) / Math.hypot(whole.x, whole.y);
  return offFt <= toleranceFt && distance(second.to, first.from) > distance(first.to, first.from);
};

/** Merges collinear pieces of one edge where nothing else meets them, such as the eaves of two sides in line. */
export const mergeCollinear = (edges: readonly GraphEdge[], toleranceFt: number): GraphEdge[] => {
  const whole = edges.map(oriented);
  const meetings = new Map<RoofPoint, number>();
  for (const { from, to } of whole)
    for (const node of [from, to]) meetings.set(node, (meetings.get(node) ?? 0) + 1);
  for (let index = 0; index < whole.length;) {
    const edge = whole[index] as GraphEdge;
    const next = whole.findIndex(
      (other) =>
        other !== edge &&
        other.from === edge.to &&
        meetings.get(edge.to) === 2 &&
        other.left === edge.left &&
        other.right === edge.right &&
        isStraightOn(edge, other, toleranceFt),
    );
    if (next < 0) {
      index++;
      continue;
    }
    const joined = { ...edge, to: (whole[next] as GraphEdge).to };
    whole[index] = joined;
    whole.splice(next, 1);
    if (next < index) index--;
  }
  return whole;
};
