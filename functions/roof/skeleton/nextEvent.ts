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
 * The events of the wavefront. Edge event: an edge shrinks to nothing. Split event: the reflex corner at the start of an
 * edge runs into another edge and splits it. Overrun: of two edges in line, the flatter one runs on over the steeper.
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

/** The lowest split event below the lowest edge event, or else that edge event. */
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
 * The lowest event of the wavefronts around one area; undefined where nothing moves any more. An overrun waits for all
 * other events at its height: an edge that meets another face to face there is not overrun.
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
