import { cornerBetween, spotAt } from "./corner";
import { drawnTo, type Front, type Joint, type Loop } from "./front";
import { around } from "./plan";

/** The fronts of a ring from one on, all the way round to it. */
const from = (loop: Loop, index: number): Loop => [...loop.slice(index), ...loop.slice(0, index)];

/**
 * The corner before front `index` meets front `hit`. On one ring, that parts the ring in two; on two rings (a
 * courtyard and what surrounds it) it joins them into one.
 */
export const split = (
  loop: Loop,
  index: number,
  hitLoop: Loop,
  hit: number,
  height: number,
): { readonly loops: readonly Loop[]; readonly joint: Joint } => {
  const place = spotAt(around(loop, index).start, height);
  const before = around(loop, index - 1).side;
  const { side: after } = around(loop, index);
  const target = around(hitLoop, hit);
  const afterHit: Front = { side: after, start: cornerBetween(target.side, after, place) };
  const hitAfter: Front = { side: target.side, start: cornerBetween(before, target.side, place) };
  const joint = drawnTo(loop, index, place);

  const [, ...rest] = from(loop, index);
  if (loop !== hitLoop) {
    const [, ...others] = from(hitLoop, hit);
    return { loops: [[afterHit, ...rest, hitAfter, ...others, target]], joint };
  }
  const hitPlace = (hit - index + loop.length) % loop.length;
  const ring = [afterHit, ...rest];
  return {
    loops: [ring.slice(0, hitPlace + 1), [hitAfter, ...ring.slice(hitPlace + 1)]],
    joint,
  };
};
