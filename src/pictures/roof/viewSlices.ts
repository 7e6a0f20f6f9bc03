import type { Sight } from "./viewPoint";

const between = (a: Sight, b: Sight, away: number): Sight => {
  const share = (away - a.away) / (b.away - a.away);
  return {
    across: a.across + (b.across - a.across) * share,
    up: a.up + (b.up - a.up) * share,
    away,
  };
};

/** The part of a ring of sights on one side of a distance (after Sutherland and Hodgman 1974). */
const cut = (ring: readonly Sight[], keeps: (away: number) => boolean, at: number): Sight[] =>
  ring.flatMap((sight, index) => {
    const before = ring[(index + ring.length - 1) % ring.length] as Sight;
    const crosses = keeps(before.away) !== keeps(sight.away);
    return [...(crosses ? [between(before, sight, at)] : []), ...(keeps(sight.away) ? [sight] : [])];
  });

/** The part of a ring that stands between two distances; a line is a ring of two. */
export const slice = (ring: readonly Sight[], near: number, far: number): Sight[] =>
  cut(
    cut(ring, (away) => away >= near, near),
    (away) => away <= far,
    far,
  );

/** Nearer than this two distances are one. */
const SAME_FT = 1e-6;

/** The distances at which anything begins or ends, the farthest first. */
export const cutDistances = (sights: readonly Sight[]): number[] =>
  sights
    .map(({ away }) => away)
    .sort((a, b) => b - a)
    .filter((away, index, all) => index === 0 || (all[index - 1] as number) - away > SAME_FT);
