import type { Point } from "../../../shared/outline";
import { cornerAt, type Corner } from "./corner";
import { around, dot, minus, type RoofPoint } from "./planVectors";
import type { RoofSide } from "./roofSide";

/** A line that a corner of the front draws: the joint of two sides, `left` and `right` of the way from -> to. */
export interface SkeletonArc {
  readonly left: RoofSide;
  readonly right: RoofSide | undefined;
  readonly from: RoofPoint;
  readonly to: RoofPoint;
}

/** The part of a side's level line that still climbs; it begins at `start` and ends where the next one starts. */
export interface WavefrontEdge {
  readonly side: RoofSide;
  readonly start: Corner;
}

/** Fronts in order around what the roof has not covered yet, which lies on their left. */
export type Wavefront = readonly WavefrontEdge[];

/** The level outline of what is not covered yet at a height. */
export const outlineAt = (loop: Wavefront, height: number): Point[] =>
  loop.map(({ start }) => cornerAt(start, height));

/** Length of a front at a height; negative where its ends have passed each other. */
export const lengthAt = (loop: Wavefront, index: number, height: number): number => {
  const { side, start } = around(loop, index);
  const end = around(loop, index + 1).start;
  return dot(side.direction, minus(cornerAt(end, height), cornerAt(start, height)));
};

/** What a corner has drawn by the time it comes to `to`. */
export const arcTo = (loop: Wavefront, index: number, to: RoofPoint): SkeletonArc => {
  const { side, start } = around(loop, index);
  return { left: around(loop, index - 1).side, right: side, from: start.born, to };
};
