import { cornerAt } from "./corner";
import type { Front, Loop } from "./front";
import { around, dot, minus } from "./plan";
import { insideFt } from "./roofSide";

/** A front of one of the loops: the event takes place on it, or at its start. */
export interface FrontOfLoop {
  readonly loop: Loop;
  readonly index: number;
}

export const frontOf = ({ loop, index }: FrontOfLoop): Front => around(loop, index);
export const frontBefore = ({ loop, index }: FrontOfLoop): Front => around(loop, index - 1);
const frontAfter = ({ loop, index }: FrontOfLoop): Front => around(loop, index + 1);

/** When the front's two corners come together; undefined where they move apart. */
export const shrinkHeight = (at: FrontOfLoop, now: number): number | undefined => {
  const [front, next] = [frontOf(at), frontAfter(at)];
  const { direction } = front.side;
  const rate = dot(direction, minus(next.start.move, front.start.move));
  if (!(rate < 0)) return undefined;
  const lengthFt = dot(direction, minus(cornerAt(next.start, now), cornerAt(front.start, now)));
  return now + Math.max(0, lengthFt) / -rate;
};

/** When the corner reaches the line of a front that it closes in on; undefined where it does not. */
export const reachHeight = (
  { start }: Front,
  { side }: Front,
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
  { start }: Front,
  hit: FrontOfLoop,
  height: number,
  toleranceFt: number,
): boolean => {
  const target = frontOf(hit);
  const { direction } = target.side;
  const place = dot(direction, cornerAt(start, height));
  return (
    place >= dot(direction, cornerAt(target.start, height)) - toleranceFt &&
    place <= dot(direction, cornerAt(frontAfter(hit).start, height)) + toleranceFt
  );
};
