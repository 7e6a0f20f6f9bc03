import type { Wavefront } from "./wavefront";
import {
  edgeBefore,
  edgeAt,
  isWithin,
  splitEventHeight,
  edgeEventHeight,
  type EdgePlace,
} from "./eventHeights";
import { areOutOfStep, isInner } from "./roofSide";

/**
 * What happens next as the fronts climb: a front shrinks to nothing; the inner corner at a front's start runs into
 * another front and splits it; or, of two fronts in line, the flatter one runs on over the steeper.
 */
export type RoofEvent =
  | { readonly kind: "edge" | "overrun"; readonly height: number; readonly at: EdgePlace }
  | { readonly kind: "split"; readonly height: number; readonly at: EdgePlace; readonly hit: EdgePlace };

const firstEdgeEvent = (places: readonly EdgePlace[], now: number): RoofEvent | undefined => {
  let first: RoofEvent | undefined;
  for (const at of places) {
    const height = edgeEventHeight(at, now);
    if (height !== undefined && !(first && first.height <= height)) first = { kind: "edge", height, at };
  }
  return first;
};

/** The lowest split that comes before the lowest shrinking. */
const firstSplitEvent = (
  places: readonly EdgePlace[],
  now: number,
  toleranceFt: number,
  shrink: RoofEvent | undefined,
): RoofEvent | undefined => {
  let first = shrink;
  for (const at of places) {
    const [before, corner] = [edgeBefore(at), edgeAt(at)];
    if (!isInner(before.side, corner.side)) continue;
    for (const hit of places) {
      const target = edgeAt(hit);
      if (target === corner || target === before) continue;
      const height = splitEventHeight(corner, target, now, toleranceFt);
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
  loops: readonly Wavefront[],
  now: number,
  toleranceFt: number,
): RoofEvent | undefined => {
  const places = loops.flatMap((loop) => loop.map((_, index): EdgePlace => ({ loop, index })));
  const first = firstSplitEvent(places, now, toleranceFt, firstEdgeEvent(places, now));
  if (first && first.height <= now + toleranceFt) return first;
  const at = places.find((place) => areOutOfStep(edgeBefore(place).side, edgeAt(place).side));
  return at ? { kind: "overrun", height: now, at } : first;
};
