import { cornerAt } from "./corner";
import type { WavefrontEdge, Wavefront } from "./wavefront";
import { around, dot, minus } from "./planVectors";
import { insideFt } from "./roofSide";

/** An edge of one of the wavefronts: the event is on it, or at its start. */
export interface EdgePlace {
  readonly loop: Wavefront;
  readonly index: number;
}

export const edgeAt = ({ loop, index }: EdgePlace): WavefrontEdge => around(loop, index);
export const edgeBefore = ({ loop, index }: EdgePlace): WavefrontEdge => around(loop, index - 1);
const edgeAfter = ({ loop, index }: EdgePlace): WavefrontEdge => around(loop, index + 1);

/** The height of an edge event, where the two corners of an edge meet; undefined where they move apart. */
export const edgeEventHeight = (at: EdgePlace, now: number): number | undefined => {
  const [front, next] = [edgeAt(at), edgeAfter(at)];
  const { direction } = front.side;
  const rate = dot(direction, minus(next.start.move, front.start.move));
  if (!(rate < 0)) return undefined;
  const lengthFt = dot(direction, minus(cornerAt(next.start, now), cornerAt(front.start, now)));
  return now + Math.max(0, lengthFt) / -rate;
};

/** The height of a split event, where a corner reaches the line of another edge; undefined where it never does. */
export const splitEventHeight = (
  { start }: WavefrontEdge,
  { side }: WavefrontEdge,
  now: number,
  toleranceFt: number,
): number | undefined => {
  const rate = dot(side.inward, start.move) - side.runPerRise;
  if (!(rate < 0)) return undefined;
  const gapFt = insideFt(side, cornerAt(start, now)) - side.runPerRise * now;
  return gapFt < -toleranceFt ? undefined : now + Math.max(0, gapFt) / -rate;
};

/** Whether the corner meets the edge itself, not only its line. */
export const isWithin = (
  { start }: WavefrontEdge,
  hit: EdgePlace,
  height: number,
  toleranceFt: number,
): boolean => {
  const target = edgeAt(hit);
  const { direction } = target.side;
  const place = dot(direction, cornerAt(start, height));
  return (
    place >= dot(direction, cornerAt(target.start, height)) - toleranceFt &&
    place <= dot(direction, cornerAt(edgeAfter(hit).start, height)) + toleranceFt
  );
};
