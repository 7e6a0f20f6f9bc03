import type { EdgePiece } from "./eaves";
import type { RoofPoint } from "./skeleton/planVectors";
import type { RoofSide } from "./skeleton/roofSide";

/** One plane: the sides in line that it stands on, the lowest number first, and its corners counterclockwise on plan. */
export interface RoofPlane {
  /** Counted from 1 in the order of the planes' lowest sides. */
  readonly number: number;
  readonly side: RoofSide;
  readonly sideNumbers: readonly number[];
  readonly corners: readonly RoofPoint[];
}

export const EDGE_KINDS = ["eave", "rake", "ridge", "hip", "valley", "pitch break", "eave step"] as const;
export type EdgeKind = (typeof EDGE_KINDS)[number];

/** A straight edge, its first plane on the left of the way from -> to; at the roof's edge there is no other. */
export interface RoofEdge {
  readonly kind: EdgeKind;
  readonly plane: RoofPlane;
  readonly otherPlane: RoofPlane | undefined;
  readonly from: RoofPoint;
  readonly to: RoofPoint;
}

/** A roof that has been checked against the laws. */
export interface Roof {
  readonly sides: readonly RoofSide[];
  readonly planes: readonly RoofPlane[];
  readonly edges: readonly RoofEdge[];
  /** The roof's outer edge on plan, ring by ring. */
  readonly outerEdges: readonly (readonly EdgePiece[])[];
}
