import { cornerAfter, type Outline, type Point } from "./outline";

/** Relative to the product of the two sides' lengths: below it three points are in one line. */
const IN_LINE = 1e-12;

/** Which side of the line a-b point c is on: 1 left, -1 right, 0 on it. */
const sideOf = (a: Point, b: Point, c: Point): number => {
  const cross = (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
  const scale = Math.hypot(b.x - a.x, b.y - a.y) * Math.hypot(c.x - a.x, c.y - a.y);
  return Math.abs(cross) <= IN_LINE * scale ? 0 : Math.sign(cross);
};

/** Whether all corners stand on one line, so that there is nothing inside. */
export const areCollinear = (outline: Outline): boolean => {
  const [first, ...others] = outline;
  const second = others.find(({ x, y }) => x !== first?.x || y !== first.y);
  return !first || !second || others.every((corner) => sideOf(first, second, corner) === 0);
};

const between = (a: number, b: number, value: number): boolean =>
  value >= Math.min(a, b) && value <= Math.max(a, b);
const inBox = (a: Point, b: Point, c: Point): boolean => between(a.x, b.x, c.x) && between(a.y, b.y, c.y);

/** Whether the segments a-b and c-d share a point, ends included. */
export const segmentsMeet = (a: Point, b: Point, c: Point, d: Point): boolean => {
  const [cSide, dSide, aSide, bSide] = [sideOf(a, b, c), sideOf(a, b, d), sideOf(c, d, a), sideOf(c, d, b)];
  if (cSide * dSide < 0 && aSide * bSide < 0) return true;
  return (
    (cSide === 0 && inBox(a, b, c)) ||
    (dSide === 0 && inBox(a, b, d)) ||
    (aSide === 0 && inBox(c, d, a)) ||
    (bSide === 0 && inBox(c, d, b))
  );
};

/** Whether the side b-c turns straight back over the side a-b. */
const foldsBack = (a: Point, b: Point, c: Point): boolean =>
  sideOf(a, b, c) === 0 && (b.x - a.x) * (c.x - b.x) + (b.y - a.y) * (c.y - b.y) < 0;

/** The first two sides (counted from 1) that meet anywhere but at a common corner; undefined for a sound outline. */
export const sidesThatCross = (outline: Outline): readonly [number, number] | undefined => {
  const count = outline.length;
  for (let i = 0; i < count; i++) {
    const from = outline[i] as Point;
    const to = cornerAfter(outline, i);
    if (foldsBack(from, to, cornerAfter(outline, (i + 1) % count))) return [i + 1, ((i + 1) % count) + 1];
    for (let j = i + 2; j < count; j++) {
      const areNeighbors = i === 0 && j === count - 1;
      if (!areNeighbors && segmentsMeet(from, to, outline[j] as Point, cornerAfter(outline, j)))
        return [i + 1, j + 1];
    }
  }
  return undefined;
};
