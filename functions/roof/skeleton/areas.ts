import { twiceSignedArea, type Point } from "../../../shared/outline";
import { isWithin } from "../../../shared/outlineWithin";
import { distanceToSegment } from "../../../shared/segment";
import { outlineAt, type Wavefront } from "./wavefront";
import { around } from "./planVectors";

/** An area not covered yet: the ring around it, and the rings of courtyards within. */
export type OpenArea = readonly Wavefront[];

const clearance = (point: Point, ring: readonly Point[]): number =>
  Math.min(...ring.map((from, index) => distanceToSegment(point, from, around(ring, index + 1))));

/**
 * How far a ring reaches into another; less than 0 where it lies outside. It is measured at a corner or a side's
 * middle, the one farthest from the other ring: at one height rings may touch along whole sides, or all round.
 */
const depthWithin = (ring: readonly Point[], other: readonly Point[]): number => {
  const middles = ring.map((from, index) => {
    const to = around(ring, index + 1);
    return { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  });
  const depths = [...ring, ...middles].map((point) =>
    isWithin(other, point) ? clearance(point, other) : -clearance(point, other),
  );
  return depths.reduce((most, depth) => (Math.abs(depth) > Math.abs(most) ? depth : most));
};

/** Sorts rings into areas: each ring that runs counterclockwise is an area's, and a clockwise one the area's around it. */
export const openAreas = (loops: readonly Wavefront[], height: number): OpenArea[] => {
  const rings = loops.map((loop) => {
    const outline = outlineAt(loop, height);
    return { loop, outline, twiceArea: twiceSignedArea(outline) };
  });
  const areas = rings
    .filter(({ twiceArea }) => twiceArea > 0)
    .sort((a, b) => a.twiceArea - b.twiceArea)
    .map((outer) => ({ ...outer, loops: [outer.loop] }));
  if (areas.length < 2) return loops.length > 0 ? [loops] : [];
  for (const inner of rings.filter(({ twiceArea }) => !(twiceArea > 0))) {
    const depths = areas.map(({ outline }) => depthWithin(inner.outline, outline));
    const smallestAround = depths.findIndex((depth) => depth > 0);
    const nearest = depths.indexOf(Math.max(...depths));
    areas[smallestAround >= 0 ? smallestAround : nearest]?.loops.push(inner.loop);
  }
  return areas.map((area) => area.loops);
};
