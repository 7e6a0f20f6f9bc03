import type { SkeletonArc } from "./skeleton/wavefront";
import { distance, type RoofPoint } from "./skeleton/planVectors";
import { isGable, isOnePlane, type RoofSide } from "./skeleton/roofSide";

/** A straight edge between two nodes, with the plane of side `left` on its left; no `right` at the outer edge. */
export interface GraphEdge {
  readonly from: RoofPoint;
  readonly to: RoofPoint;
  readonly left: RoofSide;
  readonly right: RoofSide | undefined;
  /** The edge runs along a gable, whose wall carries no plane. */
  readonly isAlongGable: boolean;
}

interface PlaneJoint extends SkeletonArc {
  readonly isAlongGable: boolean;
}

/** Finds the common node of all ends that fall on the same point. */
const nodeFinder = (snapFt: number): ((spot: RoofPoint) => RoofPoint) => {
  const nodes: RoofPoint[] = [];
  return (spot) => {
    const known = nodes.find((node) => distance(node, spot) <= snapFt && Math.abs(node.z - spot.z) <= snapFt);
    if (!known) nodes.push(spot);
    return known ?? spot;
  };
};

/** A gable carries no plane: an edge along it has one plane only, kept on its left. */
const withoutGables = ({ left, right, from, to }: SkeletonArc): PlaneJoint[] => {
  const plane = right && !isGable(right) ? right : undefined;
  if (!isGable(left)) return [{ left, right: plane, from, to, isAlongGable: right !== undefined && !plane }];
  return plane ? [{ left: plane, right: undefined, from: to, to: from, isAlongGable: true }] : [];
};

/**
 * One side to stand for each plane: sides in line that carry the same plane share the one with the lowest number
 * (union-find).
 */
const sharedPlanes = (edges: readonly SkeletonArc[]): ((side: RoofSide) => RoofSide) => {
  const first = new Map<RoofSide, RoofSide>();
  const find = (side: RoofSide): RoofSide => {
    const parent = first.get(side);
    return parent ? find(parent) : side;
  };
  for (const { left, right } of edges) {
    if (!right || !isOnePlane(left, right)) continue;
    const [a, b] = [find(left), find(right)];
    if (a !== b) first.set(a.number > b.number ? a : b, a.number > b.number ? b : a);
  }
  return find;
};

/** Turns skeleton arcs into edges between planes: ends that meet become one node, and seams within a plane are removed. */
export const roofGraph = (joints: readonly SkeletonArc[], snapFt: number) => {
  const nodeOf = nodeFinder(snapFt);
  const edges = joints
    .flatMap(withoutGables)
    .map((joint): PlaneJoint => ({ ...joint, from: nodeOf(joint.from), to: nodeOf(joint.to) }))
    .filter(({ from, to }) => from !== to);
  const planeOf = sharedPlanes(edges);
  return {
    planeOf,
    edges: edges
      .map((edge): GraphEdge => ({
        ...edge,
        left: planeOf(edge.left),
        right: edge.right && planeOf(edge.right),
      }))
      .filter(({ left, right }) => left !== right),
  };
};
