import { cornerAt } from "./corner";
import type { Front, Loop } from "./front";
import { around, dot, minus } from "./plan";
import { insideFt, isInner } from "./roofSide";

/** What happens next as the fronts climb. */
export type RoofEvent =
  | { readonly kind: "shrink"; readonly height: number; readonly loop: number; readonly front: number }
  | {
      /** An inner corner (the start of `front`) runs into another front. */
      readonly kind: "split";
      readonly height: number;
      readonly loop: number;
      readonly front: number;
      readonly hitLoop: number;
      readonly hitFront: number;
    };

/** When the front's two corners come together; undefined where they move apart. */
const shrinkHeight = (front: Front, next: Front, now: number): number | undefined => {
  const { direction } = front.side;
  const rate = dot(direction, minus(next.start.move, front.start.move));
  if (!(rate < 0)) return undefined;
  const lengthFt = dot(direction, minus(cornerAt(next.start, now), cornerAt(front.start, now)));
  return now + Math.max(0, lengthFt) / -rate;
};

/** When the corner reaches the line of a front that it closes in on; undefined where it does not. */
const reachHeight = (corner: Front, target: Front, now: number, toleranceFt: number): number | undefined => {
  const { side } = target;
  const rate = dot(side.inward, corner.start.move) - side.runPerRise;
  if (!(rate < 0)) return undefined;
  const gapFt = insideFt(side, cornerAt(corner.start, now)) - side.runPerRise * now;
  return gapFt < -toleranceFt ? undefined : now + Math.max(0, gapFt) / -rate;
};

/** Whether the corner meets the front itself, not only its line. */
const isWithin = (
  corner: Front,
  target: Front,
  next: Front,
  height: number,
  toleranceFt: number,
): boolean => {
  const { direction } = target.side;
  const place = dot(direction, cornerAt(corner.start, height));
  return (
    place >= dot(direction, cornerAt(target.start, height)) - toleranceFt &&
    place <= dot(direction, cornerAt(next.start, height)) + toleranceFt
  );
};

/** The lowest event among loops that bound one area; undefined where nothing moves any more. */
export const nextEvent = (
  loops: readonly Loop[],
  now: number,
  toleranceFt: number,
): RoofEvent | undefined => {
  let first: RoofEvent | undefined;
  loops.forEach((loop, loopIndex) => {
    loop.forEach((front, index) => {
      const height = shrinkHeight(front, around(loop, index + 1), now);
      if (height !== undefined && !(first && first.height <= height))
        first = { kind: "shrink", height, loop: loopIndex, front: index };
    });
  });
  loops.forEach((loop, loopIndex) => {
    loop.forEach((corner, index) => {
      const before = around(loop, index - 1);
      if (!isInner(before.side, corner.side)) return;
      loops.forEach((hitLoop, hitLoopIndex) => {
        hitLoop.forEach((target, hitIndex) => {
          if (target === corner || target === before) return;
          const height = reachHeight(corner, target, now, toleranceFt);
          if (height === undefined || (first && first.height <= height)) return;
          if (!isWithin(corner, target, around(hitLoop, hitIndex + 1), height, toleranceFt)) return;
          first = {
            kind: "split",
            height,
            loop: loopIndex,
            front: index,
            hitLoop: hitLoopIndex,
            hitFront: hitIndex,
          };
        });
      });
    });
  });
  return first;
};
