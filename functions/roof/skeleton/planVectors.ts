import type { Point } from "../../../shared/outline";

/** A point in space: plan x and y, and height above the top of the walls, all in ft. */
export interface RoofPoint extends Point {
  readonly z: number;
}

export const dot = (a: Point, b: Point): number => a.x * b.x + a.y * b.y;
/** Positive where b turns left from a. */
export const cross = (a: Point, b: Point): number => a.x * b.y - a.y * b.x;
export const minus = (a: Point, b: Point): Point => ({ x: a.x - b.x, y: a.y - b.y });
export const along = (from: Point, by: Point, times: number): Point => ({
  x: from.x + by.x * times,
  y: from.y + by.y * times,
});
export const distance = (a: Point, b: Point): number => Math.hypot(a.x - b.x, a.y - b.y);
export const atHeight = ({ x, y }: Point, z: number): RoofPoint => ({ x, y, z });

/** The item at an index of a ring, which wraps around at both ends. */
export const around = <T>(ring: readonly T[], index: number): T =>
  ring[(index + ring.length) % ring.length] as T;
