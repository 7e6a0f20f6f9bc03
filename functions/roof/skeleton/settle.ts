import { cornerAt, cornerBetween, spotAt } from "./corner";
import { drawnTo, lengthAt, type Front, type Joint, type Loop } from "./front";
import { along, around, atHeight, type RoofPoint } from "./plan";
import { bearing } from "./roofSide";

/** A loop after a change, and the joints that the change has finished. */
export interface Change {
  readonly loop: Loop;
  readonly joints: readonly Joint[];
}

/** Takes a front out; its neighbors then meet at `place`. */
const without = (loop: Loop, index: number, place: RoofPoint): Loop => {
  const gone = (index + loop.length) % loop.length;
  const next = (gone + 1) % loop.length;
  const before = around(loop, gone - 1).side;
  return loop.flatMap((front, k): Front[] => {
    if (k === gone) return [];
    return k === next ? [{ side: front.side, start: cornerBetween(before, front.side, place) }] : [front];
  });
};

/** A front that has shrunk to nothing: both its corners end where it stood. */
export const dropFront = (loop: Loop, index: number, height: number): Change => {
  const start = cornerAt(around(loop, index).start, height);
  const end = cornerAt(around(loop, index + 1).start, height);
  const place = atHeight(along(start, { x: end.x - start.x, y: end.y - start.y }, 0.5), height);
  return {
    loop: without(loop, index, place),
    joints: [drawnTo(loop, index, place), drawnTo(loop, index + 1, place)],
  };
};

/**
 * Two parallel fronts that share a corner have met along their whole line, so the corner runs along it at once and
 * draws a level joint. Opposite ways, that is a ridge, as long as the shorter front. In line but at unequal speeds,
 * the flatter plane runs on above the steeper one: a level pitch break, as long as the steeper front.
 */
export const runAlong = (loop: Loop, index: number, height: number): Change => {
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
      drawnTo(loop, index, place),
      { left: before, right: after, from: place, to: farPlace },
      drawnTo(loop, farCorner, farPlace),
    ],
  };
};

/** Two fronts that are left face to face: their corners end, and what lies between is a ridge. */
const closePair = (loop: Loop, height: number): Change => {
  const [first, second] = [spotAt(around(loop, 0).start, height), spotAt(around(loop, 1).start, height)];
  const [left, right] = [around(loop, 1).side, around(loop, 0).side];
  return {
    loop: [],
    joints: [drawnTo(loop, 0, first), drawnTo(loop, 1, second), { left, right, from: first, to: second }],
  };
};

const facesItsNeighbor = (loop: Loop, index: number): boolean =>
  bearing(around(loop, index - 1).side, around(loop, index).side) === "opposite";

const nextChange = (loop: Loop, height: number, toleranceFt: number): Change | undefined => {
  if (loop.length === 2) return closePair(loop, height);
  const shrunk = loop.findIndex((_, index) => lengthAt(loop, index, height) <= toleranceFt);
  if (shrunk >= 0) return dropFront(loop, shrunk, height);
  const folded = loop.findIndex((_, index) => facesItsNeighbor(loop, index));
  return folded >= 0 ? runAlong(loop, folded, height) : undefined;
};

/** Removes from a loop, at one height, all that can't climb on. Every step takes a front out, so it ends. */
export const settle = (loop: Loop, height: number, toleranceFt: number): Change => {
  const joints: Joint[] = [];
  let settled = loop;
  for (;;) {
    const change = settled.length > 0 ? nextChange(settled, height, toleranceFt) : undefined;
    if (!change) return { loop: settled, joints };
    joints.push(...change.joints);
    settled = change.loop;
  }
};
