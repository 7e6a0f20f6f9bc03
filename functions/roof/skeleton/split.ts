import { cornerBetween, spotAt } from "./corner";
import { arcTo, type WavefrontEdge, type SkeletonArc, type Wavefront } from "./wavefront";
import { around } from "./planVectors";

/** The edges of a wavefront, starting at one. */
const from = (loop: Wavefront, index: number): Wavefront => [...loop.slice(index), ...loop.slice(0, index)];

/**
 * A split event: the corner at the start of edge `index` meets edge `hit`. Within one wavefront, it splits that in two;
 * between two (a courtyard and the ring around it), it joins them into one.
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
