import type { Point } from "../../../shared/outline";
import { cross, dot } from "./planVectors";

/** One side of the footprint, the building on its left, and what stands on it: a plane, or a gable's plumb wall. */
export interface RoofSide {
  /** As the person counted it. */
  readonly number: number;
  readonly from: Point;
  readonly to: Point;
  readonly direction: Point;
  /** Level, square to the side, into the building. */
  readonly inward: Point;
  /** Where the plane stands at height 0, or the gable's wall: `inward · p`. A gable's stands out at its rake. */
  readonly lineFt: number;
  /** Rise on 12; 0 for a gable. */
  readonly pitch: number;
  /** Level ft that the plane's edge moves inward for each ft of height; 0 for a gable, whose wall stands plumb. */
  readonly runPerRise: number;
  /** Height of the eave: how far the overhang brings the plane below the walls' top (0 or less). */
  readonly eaveHeightFt: number;
}

export const isGable = ({ runPerRise }: RoofSide): boolean => runPerRise === 0;

/** How far inside the side's line a point stands. */
export const insideFt = ({ inward, lineFt }: RoofSide, point: Point): number => dot(inward, point) - lineFt;

/** The height of the side's plane over a point. */
export const planeHeight = (side: RoofSide, point: Point): number => insideFt(side, point) / side.runPerRise;

/** Sine of the angle below which two sides count as parallel: half an inch in 80,000 miles. */
const PARALLEL = 1e-10;

export type Bearing = "crossing" | "same way" | "opposite";

/** How two sides' directions stand to each other. */
export const bearing = (a: RoofSide, b: RoofSide): Bearing => {
  if (Math.abs(cross(a.direction, b.direction)) > PARALLEL) return "crossing";
  return dot(a.direction, b.direction) > 0 ? "same way" : "opposite";
};

/** Whether the building has an inner corner between a side and the next. */
export const isInner = (before: RoofSide, after: RoofSide): boolean =>
  bearing(before, after) === "crossing" && cross(before.direction, after.direction) < 0;

/** Whether the two planes, where they meet, are one and the same. */
export const isOnePlane = (a: RoofSide, b: RoofSide): boolean =>
  !isGable(a) && a.runPerRise === b.runPerRise && bearing(a, b) === "same way";

/** Whether two sides in line climb at unequal speeds, so that they can't share a corner as they go on. */
export const areOutOfStep = (a: RoofSide, b: RoofSide): boolean =>
  a.runPerRise !== b.runPerRise && bearing(a, b) === "same way";
