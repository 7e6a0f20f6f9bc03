import type { Point } from "./outline";

/** How far a point lies from the segment between two others. */
export const distanceToSegment = (point: Point, from: Point, to: Point): number => {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const lengthSquared = dx * dx + dy * dy;
  const share = ((point.x - from.x) * dx + (point.y - from.y) * dy) / lengthSquared;
  const held = lengthSquared > 0 ? Math.min(1, Math.max(0, share)) : 0;
  return Math.hypot(point.x - from.x - held * dx, point.y - from.y - held * dy);
};
