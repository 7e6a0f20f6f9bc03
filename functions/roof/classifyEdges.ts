import { edgeKind } from "./edgeKind";
import type { GraphEdge } from "./roofGraph";
import { EDGE_KINDS, type RoofEdge, type RoofPlane } from "./roofParts";

const inOrder = (a: RoofEdge, b: RoofEdge): number =>
  EDGE_KINDS.indexOf(a.kind) - EDGE_KINDS.indexOf(b.kind) ||
  a.plane.number - b.plane.number ||
  (a.otherPlane?.number ?? 0) - (b.otherPlane?.number ?? 0);

/** The edges with their kinds and planes: the outer edge first, then ridges, hips, valleys and pitch breaks. */
export const classifyEdges = (edges: readonly GraphEdge[], planes: readonly RoofPlane[]): RoofEdge[] => {
  const planeOn = new Map(planes.map((plane) => [plane.side, plane]));
  return edges
    .map((edge): RoofEdge => ({
      kind: edgeKind(edge),
      plane: planeOn.get(edge.left) as RoofPlane,
      otherPlane: edge.right && planeOn.get(edge.right),
      from: edge.from,
      to: edge.to,
    }))
    .sort(inOrder);
};
