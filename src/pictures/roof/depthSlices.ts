import type { ProjectedPoint } from "./projection";

const pointAt = (a: ProjectedPoint, b: ProjectedPoint, depth: number): ProjectedPoint => {
  const share = (depth - a.depth) / (b.depth - a.depth);
  return {
    x: a.x + (b.x - a.x) * share,
    y: a.y + (b.y - a.y) * share,
    depth,
  };
};

/** The part of a ring on one side of a depth (Sutherland and Hodgman 1974). */
const clip = (
  ring: readonly ProjectedPoint[],
  keeps: (depth: number) => boolean,
  depth: number,
): ProjectedPoint[] =>
  ring.flatMap((point, index) => {
    const before = ring[(index + ring.length - 1) % ring.length] as ProjectedPoint;
    const crosses = keeps(before.depth) !== keeps(point.depth);
    return [...(crosses ? [pointAt(before, point, depth)] : []), ...(keeps(point.depth) ? [point] : [])];
  });

/** The part of a ring between two depths; a line is a ring of two points. */
export const slice = (ring: readonly ProjectedPoint[], near: number, far: number): ProjectedPoint[] =>
  clip(
    clip(ring, (depth) => depth >= near, near),
    (depth) => depth <= far,
    far,
  );

/** Depths closer together than this count as one. */
const SAME_FT = 1e-6;

/** The depths at which anything begins or ends, the farthest first. */
export const sliceDepths = (points: readonly ProjectedPoint[]): number[] =>
  points
    .map(({ depth }) => depth)
    .sort((a, b) => b - a)
    .filter((depth, index, all) => index === 0 || (all[index - 1] as number) - depth > SAME_FT);
