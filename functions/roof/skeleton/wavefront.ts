import type { Point } from "../../../shared/outline";
import { cornerAt, type Corner } from "./corner";
import { around, dot, minus, type RoofPoint } from "./planVectors";
import type { RoofSide } from "./roofSide";

/** An arc of the skeleton, traced by a corner of the wavefront: the planes of `left` and `right` meet along it. */
export interface SkeletonArc {
  readonly left: RoofSide;
  readonly right: RoofSide | undefined;
  readonly from: RoofPoint;
  readonly to: RoofPoint;
}

/** An edge of the wavefront: the part of a side that still moves, from `start` to the start of the next edge. */
export interface WavefrontEdge {
  readonly side: RoofSide;
  readonly start: Corner;
}

/** The edges in order around an area that the roof has not covered yet, with the area on their left. */
export type Wavefront = readonly WavefrontEdge[];

/** The outline of the wavefront at a height. */
export const outlineAt = (loop: Wavefront, height: number): Point[] =>
  loop.map(({ start }) => cornerAt(start, height));

/** Length of an edge at a height; negative where its ends have passed each other. */
export const lengthAt = (loop: Wavefront, index: number, height: number): number => {
  const { side, start } = around(loop, index);
  const end = around(loop, index + 1).start;
  return dot(side.direction, minus(cornerAt(end, height), cornerAt(start, height)));
};

/** The arc that a corner has traced when it reaches `to`. */
export const arcTo = (loop: Wavefront, index: number, to: RoofPoint): SkeletonArc => {
  const { side, start } = around(loop, index);
  return { left: around(loop, index - 1).side, right: side, from: start.born, to };
};
