import { cornerAfter, type Outline, type Point } from "../../shared/outline";
import type { Random } from "./random";

/** Corners around a center at random distances: spikes and bays, some very sharp. */
export const starRing = (random: Random, sides: number): Outline =>
  Array.from({ length: sides }, (_, index) => {
    const angle = ((index + 0.15 + 0.7 * random()) / sides) * 2 * Math.PI;
    const radiusFt = 8 + 30 * random();
    return { x: radiusFt * Math.cos(angle), y: radiusFt * Math.sin(angle) };
  });

/** Twice the area of the triangle a, b, c: positive where c lies to the left of a -> b. */
export const leftOf = (a: Point, b: Point, c: Point): number =>
  (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);

/** The first two sides that cross, counted from 0. */
const crossing = (ring: Outline): readonly [number, number] | undefined => {
  for (const [i, a] of ring.entries())
    for (let j = i + 2; j < ring.length - (i === 0 ? 1 : 0); j++) {
      const [b, c, d] = [cornerAfter(ring, i), ring[j] as Point, cornerAfter(ring, j)];
      if (leftOf(a, b, c) * leftOf(a, b, d) < 0 && leftOf(c, d, a) * leftOf(c, d, b) < 0) return [i, j];
    }
  return undefined;
};

/** Corners anywhere, joined so that no two sides cross: crossing sides are swapped until none is left. */
export const tangledRing = (random: Random, sides: number): Outline => {
  let ring: Outline = Array.from({ length: sides }, () => ({ x: 60 * random(), y: 60 * random() }));
  for (let found = crossing(ring); found; found = crossing(ring)) {
    const [i, j] = found;
    ring = [...ring.slice(0, i + 1), ...ring.slice(i + 1, j + 1).reverse(), ...ring.slice(j + 1)];
  }
  return ring;
};
