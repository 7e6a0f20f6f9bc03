import { twiceSignedArea, type Point } from "../../../shared/outline";
import { isWithin } from "../../../shared/outlineWithin";
import { outlineAt, type Loop } from "./front";
import { distance } from "./plan";

/** An area not covered yet: the ring around it, and the rings of courtyards within. */
export type OpenArea = readonly Loop[];

/** The corner of a ring that stands farthest from another ring's corners: no touch of the two can mislead it. */
const clearCorner = (ring: readonly Point[], other: readonly Point[]): Point => {
  const clearance = (point: Point): number => Math.min(...other.map((each) => distance(point, each)));
  return ring.reduce((best, point) => (clearance(point) > clearance(best) ? point : best));
};

/** Sorts rings into areas: each ring that runs anticlockwise is an area's, and a clockwise one the area's around it. */
export const openAreas = (loops: readonly Loop[], height: number): OpenArea[] => {
  if (loops.length < 2) return loops.map((loop) => [loop]);
  const rings = loops.map((loop) => {
    const outline = outlineAt(loop, height);
    return { loop, outline, twiceArea: twiceSignedArea(outline) };
  });
  const outer = rings.filter(({ twiceArea }) => twiceArea > 0).sort((a, b) => a.twiceArea - b.twiceArea);
  const areas = new Map(outer.map((ring) => [ring, [ring.loop]]));
  for (const inner of rings.filter(({ twiceArea }) => !(twiceArea > 0))) {
    const home = outer.find(({ outline }) => isWithin(outline, clearCorner(inner.outline, outline)));
    if (home) areas.get(home)?.push(inner.loop);
  }
  return [...areas.values()];
};
