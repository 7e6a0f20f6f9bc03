import type { EdgePiece } from "./eaves";
import type { RoofPoint } from "./skeleton/planVectors";
import type { RoofSide } from "./skeleton/roofSide";

/** One plane: the sides in line that carry it, lowest number first, and its corners counterclockwise on plan. */
export interface RoofPlane {
  /** Numbered from 1 in the order of their lowest sides. */
  readonly number: number;
  readonly side: RoofSide;
  readonly sideNumbers: readonly number[];
  readonly corners: readonly RoofPoint[];
}

export const EDGE_KINDS = ["eave", "rake", "ridge", "hip", "valley", "pitch break", "eave step"] as const;
export type EdgeKind = (typeof EDGE_KINDS)[number];

/** A straight edge with `plane` on its left, looking from `from` to `to`; at the outer edge there is no other plane. */
export interface RoofEdge {
  readonly kind: EdgeKind;
  readonly plane: RoofPlane;
  readonly otherPlane: RoofPlane | undefined;
  readonly from: RoofPoint;
  readonly to: RoofPoint;
}

/** A roof that has passed `checkRoof`. */
export interface Roof {
  readonly sides: readonly RoofSide[];
  readonly planes: readonly RoofPlane[];
  readonly edges: readonly RoofEdge[];
  /** The outer edge of the roof on plan, ring by ring. */
  readonly outerEdges: readonly (readonly EdgePiece[])[];
}
