import { cornerBetween, spotAt } from "./corner";
import { arcTo, type WavefrontEdge, type SkeletonArc, type Wavefront } from "./wavefront";
import { around } from "./planVectors";

/** The fronts of a ring from one on, all the way round to it. */
const from = (loop: Wavefront, index: number): Wavefront => [...loop.slice(index), ...loop.slice(0, index)];

/**
 * The corner before front `index` meets front `hit`. On one ring, that parts the ring in two; on two rings (a
 * courtyard and what surrounds it) it joins them into one.
 */
export const split = (
  loop: Wavefront,
  index: number,
  hitLoop: Wavefront,
  hit: number,
  height: number,
): { readonly loops: readonly Wavefront[]; readonly joint: SkeletonArc } => {
  const place = spotAt(around(loop, index).start, height);
  const before = around(loop, index - 1).side;
  const { side: after } = around(loop, index);
  const target = around(hitLoop, hit);
  const afterHit: WavefrontEdge = { side: after, start: cornerBetween(target.side, after, place) };
  const hitAfter: WavefrontEdge = { side: target.side, start: cornerBetween(before, target.side, place) };
  const joint = arcTo(loop, index, place);

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
