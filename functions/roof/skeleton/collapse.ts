import { cornerAt, cornerBetween, spotAt } from "./corner";
import { arcTo, lengthAt, type WavefrontEdge, type SkeletonArc, type Wavefront } from "./wavefront";
import { along, around, atHeight, type RoofPoint } from "./planVectors";
import { bearing } from "./roofSide";

/** A wavefront after a change, and the arcs that the change has finished. */
export interface WavefrontChange {
  readonly loop: Wavefront;
  readonly joints: readonly SkeletonArc[];
}

/** Removes an edge; its neighbors then meet at `place`. */
const without = (loop: Wavefront, index: number, place: RoofPoint): Wavefront => {
  const gone = (index + loop.length) % loop.length;
  const next = (gone + 1) % loop.length;
  const before = around(loop, gone - 1).side;
  return loop.flatMap((front, k): WavefrontEdge[] => {
    if (k === gone) return [];
    return k === next ? [{ side: front.side, start: cornerBetween(before, front.side, place) }] : [front];
  });
};

/** An edge event: the edge has shrunk to nothing, and both its corners end there. */
export const collapseEdge = (loop: Wavefront, index: number, height: number): WavefrontChange => {
  const start = cornerAt(around(loop, index).start, height);
  const end = cornerAt(around(loop, index + 1).start, height);
  const place = atHeight(along(start, { x: end.x - start.x, y: end.y - start.y }, 0.5), height);
  return {
    loop: without(loop, index, place),
    joints: [arcTo(loop, index, place), arcTo(loop, index + 1, place)],
  };
};

/**
 * Two parallel edges that share a corner have met along their whole line, so the corner runs along it at once and traces
 * a level arc. Between opposite edges that is a ridge, as long as the shorter edge. Between edges in line at unequal
 * speeds, the flatter plane runs on above the steeper one: a level pitch break, as long as the steeper edge.
 */
export const runAlong = (loop: Wavefront, index: number, height: number): WavefrontChange => {
  const [before, after] = [around(loop, index - 1).side, around(loop, index).side];
  const takesBefore =
    bearing(before, after) === "opposite"
      ? lengthAt(loop, index - 1, height) <= lengthAt(loop, index, height)
      : before.runPerRise < after.runPerRise;
  const gone = takesBefore ? index - 1 : index;
  const farCorner = takesBefore ? index - 1 : index + 1;
  const place = spotAt(around(loop, index).start, height);
  const farPlace = spotAt(around(loop, farCorner).start, height);
  return {
    loop: without(loop, gone, farPlace),
    joints: [
      arcTo(loop, index, place),
      { left: before, right: after, from: place, to: farPlace },
      arcTo(loop, farCorner, farPlace),
    ],
  };
};

/** The last two edges, face to face: their corners end, and a ridge lies between them. */
const closePair = (loop: Wavefront, height: number): WavefrontChange => {
  const [first, second] = [spotAt(around(loop, 0).start, height), spotAt(around(loop, 1).start, height)];
  const [left, right] = [around(loop, 1).side, around(loop, 0).side];
  return {
    loop: [],
    joints: [arcTo(loop, 0, first), arcTo(loop, 1, second), { left, right, from: first, to: second }],
  };
};

const facesItsNeighbor = (loop: Wavefront, index: number): boolean =>
  bearing(around(loop, index - 1).side, around(loop, index).side) === "opposite";

const nextChange = (loop: Wavefront, height: number, toleranceFt: number): WavefrontChange | undefined => {
  if (loop.length === 2) return closePair(loop, height);
  const shrunk = loop.findIndex((_, index) => lengthAt(loop, index, height) <= toleranceFt);
  if (shrunk >= 0) return collapseEdge(loop, shrunk, height);
  const folded = loop.findIndex((_, index) => facesItsNeighbor(loop, index));
  return folded >= 0 ? runAlong(loop, folded, height) : undefined;
};

/** Removes, at one height, every edge that can't move on. Each step removes an edge, so the loop ends. */
export const collapse = (loop: Wavefront, height: number, toleranceFt: number): WavefrontChange => {
  const joints: SkeletonArc[] = [];
  let settled = loop;
  for (;;) {
    const change = settled.length > 0 ? nextChange(settled, height, toleranceFt) : undefined;
    if (!change) return { loop: settled, joints };
    joints.push(...change.joints);
    settled = change.loop;
  }
};
