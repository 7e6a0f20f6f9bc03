import type { Point } from "../../../shared/outline";
import { cross, dot } from "./planVectors";

/** One side of the footprint, with the building on its left, and what it carries: a roof plane, or a gable wall. */
export interface RoofSide {
  /** Numbered as in the footprint. */
  readonly number: number;
  readonly from: Point;
  readonly to: Point;
  readonly direction: Point;
  /** Level, square to the side, into the building. */
  readonly inward: Point;
  /** The line of the plane at height 0, or of the rake of a gable, as `inward · p` in ft. */
  readonly lineFt: number;
  /** Rise on 12; 0 for a gable. */
  readonly pitch: number;
  /** Level ft that the wavefront edge moves inward per ft of height; 0 for a gable, whose wall is plumb. */
  readonly runPerRise: number;
  /** Height of the eave above the top of the walls, in ft: 0 or less, by the overhang. */
  readonly eaveHeightFt: number;
}

export const isGable = ({ runPerRise }: RoofSide): boolean => runPerRise === 0;

/** How far a point is inside the line of the side, in ft. */
export const insideFt = ({ inward, lineFt }: RoofSide, point: Point): number => dot(inward, point) - lineFt;

/** The height of the plane above a point. */
export const planeHeight = (side: RoofSide, point: Point): number => insideFt(side, point) / side.runPerRise;

/** Sine of the angle below which two sides count as parallel: half an inch in 80,000 miles. */
const PARALLEL = 1e-10;

export type Bearing = "crossing" | "same way" | "opposite";

/** How the directions of two sides relate. */
export const bearing = (a: RoofSide, b: RoofSide): Bearing => {
  if (Math.abs(cross(a.direction, b.direction)) > PARALLEL) return "crossing";
  return dot(a.direction, b.direction) > 0 ? "same way" : "opposite";
};

/** Whether the building has an inner (reflex) corner between a side and the next. */
export const isInner = (before: RoofSide, after: RoofSide): boolean =>
  bearing(before, after) === "crossing" && cross(before.direction, after.direction) < 0;

/** Whether two sides carry the same plane. */
export const isOnePlane = (a: RoofSide, b: RoofSide): boolean =>
  !isGable(a) && a.runPerRise === b.runPerRise && bearing(a, b) === "same way";

/** Whether two sides in line move at unequal speeds, so that they can't keep a common corner. */
export const areOutOfStep = (a: RoofSide, b: RoofSide): boolean =>
  a.runPerRise !== b.runPerRise && bearing(a, b) === "same way";
