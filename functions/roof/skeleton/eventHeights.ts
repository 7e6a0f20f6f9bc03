import { cornerAt } from "./corner";
import type { WavefrontEdge, Wavefront } from "./wavefront";
import { around, dot, minus } from "./planVectors";
import { insideFt } from "./roofSide";

/** A front of one of the loops: the event takes place on it, or at its start. */
export interface EdgePlace {
  readonly loop: Wavefront;
  readonly index: number;
}

export const edgeAt = ({ loop, index }: EdgePlace): WavefrontEdge => around(loop, index);
export const edgeBefore = ({ loop, index }: EdgePlace): WavefrontEdge => around(loop, index - 1);
const edgeAfter = ({ loop, index }: EdgePlace): WavefrontEdge => around(loop, index + 1);

/** When the front's two corners come together; undefined where they move apart. */
export const edgeEventHeight = (at: EdgePlace, now: number): number | undefined => {
  const [front, next] = [edgeAt(at), edgeAfter(at)];
  const { direction } = front.side;
  const rate = dot(direction, minus(next.start.move, front.start.move));
  if (!(rate < 0)) return undefined;
  const lengthFt = dot(direction, minus(cornerAt(next.start, now), cornerAt(front.start, now)));
  return now + Math.max(0, lengthFt) / -rate;
};

/** When the corner reaches the line of a front that it closes in on; undefined where it does not. */
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

/** Whether the corner meets the front itself, not only its line. */
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
