import { cornerAt } from "./corner";
import type { Front, Loop } from "./front";
import { around, dot, minus } from "./plan";
import { areOutOfStep, insideFt, isInner } from "./roofSide";

/** A front of one of the loops: the event takes place on it, or at its start. */
export interface Place {
  readonly loop: Loop;
  readonly index: number;
}

/**
 * What happens next as the fronts climb: a front shrinks to nothing; the inner corner at a front's start runs into
 * another front and splits it; or, of two fronts in line, the flatter one runs on over the steeper.
 */
export type RoofEvent =
  | { readonly kind: "shrink" | "overrun"; readonly height: number; readonly at: Place }
  | { readonly kind: "split"; readonly height: number; readonly at: Place; readonly hit: Place };

const frontOf = ({ loop, index }: Place): Front => around(loop, index);
const frontBefore = ({ loop, index }: Place): Front => around(loop, index - 1);
const frontAfter = ({ loop, index }: Place): Front => around(loop, index + 1);

/** When the front's two corners come together; undefined where they move apart. */
const shrinkHeight = (at: Place, now: number): number | undefined => {
  const [front, next] = [frontOf(at), frontAfter(at)];
  const { direction } = front.side;
  const rate = dot(direction, minus(next.start.move, front.start.move));
  if (!(rate < 0)) return undefined;
  const lengthFt = dot(direction, minus(cornerAt(next.start, now), cornerAt(front.start, now)));
  return now + Math.max(0, lengthFt) / -rate;
};

/** When the corner reaches the line of a front that it closes in on; undefined where it does not. */
const reachHeight = (
  { start }: Front,
  { side }: Front,
  now: number,
  toleranceFt: number,
): number | undefined => {
  const rate = dot(side.inward, start.move) - side.runPerRise;
  if (!(rate < 0)) return undefined;
  const gapFt = insideFt(side, cornerAt(start, now)) - side.runPerRise * now;
  return gapFt < -toleranceFt ? undefined : now + Math.max(0, gapFt) / -rate;
};

/** Whether the corner meets the front itself, not only its line. */
const isWithin = ({ start }: Front, hit: Place, height: number, toleranceFt: number): boolean => {
  const target = frontOf(hit);
  const { direction } = target.side;
  const place = dot(direction, cornerAt(start, height));
  return (
    place >= dot(direction, cornerAt(target.start, height)) - toleranceFt &&
    place <= dot(direction, cornerAt(frontAfter(hit).start, height)) + toleranceFt
  );
};

const firstShrink = (places: readonly Place[], now: number): RoofEvent | undefined => {
  let first: RoofEvent | undefined;
  for (const at of places) {
    const height = shrinkHeight(at, now);
    if (height !== undefined && !(first && first.height <= height)) first = { kind: "shrink", height, at };
  }
  return first;
};

/** The lowest split that comes before the lowest shrinking. */
const firstSplit = (
  places: readonly Place[],
  now: number,
  toleranceFt: number,
  shrink: RoofEvent | undefined,
): RoofEvent | undefined => {
  let first = shrink;
  for (const at of places) {
    const [before, corner] = [frontBefore(at), frontOf(at)];
    if (!isInner(before.side, corner.side)) continue;
    for (const hit of places) {
      const target = frontOf(hit);
      if (target === corner || target === before) continue;
      const height = reachHeight(corner, target, now, toleranceFt);
      if (height === undefined || (first && first.height <= height)) continue;
      if (isWithin(corner, hit, height, toleranceFt)) first = { kind: "split", height, at, hit };
    }
  }
  return first;
};

/**
 * The lowest event among loops that bound one area; undefined where nothing moves any more. An overrun waits for all
 * else at its height: a front that another meets face to face there is not run over.
 */
export const nextEvent = (
  loops: readonly Loop[],
  now: number,
  toleranceFt: number,
): RoofEvent | undefined => {
  const places = loops.flatMap((loop) => loop.map((_, index): Place => ({ loop, index })));
  const first = firstSplit(places, now, toleranceFt, firstShrink(places, now));
  if (first && first.height <= now + toleranceFt) return first;
  const at = places.find((place) => areOutOfStep(frontBefore(place).side, frontOf(place).side));
  return at ? { kind: "overrun", height: now, at } : first;
};
