import { twiceSignedArea, type Point } from "../../../shared/outline";
import { isWithin } from "../../../shared/outlineWithin";
import { distanceToSegment } from "../../../shared/segment";
import { outlineAt, type Wavefront } from "./wavefront";
import { around } from "./planVectors";

/** An area not covered yet: the wavefront around it, and those of the courtyards within it. */
export type OpenArea = readonly Wavefront[];

const clearance = (point: Point, ring: readonly Point[]): number =>
  Math.min(...ring.map((from, index) => distanceToSegment(point, from, around(ring, index + 1))));

/**
 * How far a ring reaches into another; negative where it lies outside. Measured at the corner or side midpoint that is
 * farthest from the other ring, since rings at one height may touch along whole sides, or all around.
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

/** Sorts wavefronts into areas: each counterclockwise one bounds an area; a clockwise one belongs to the area around it. */
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
