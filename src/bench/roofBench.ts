import { roofOver } from "../../functions/roof/roof";
import { twiceSignedArea, type Outline } from "../../shared/outline";
import { loadOracle } from "./oracle";
import { randomFrom } from "./random";
import { equalPitches, someGables, unequalPitches } from "./randomRoofs";
import { tangledRing } from "./randomRings";

/** One line of the growth table. */
export interface BenchRow {
  readonly name: string;
  readonly sides: number;
  /** Mean of one roof, warm. */
  readonly ms: number;
  /** Time against the oracle's in the same run, on the same rings; undefined where the oracle has none. */
  readonly ratio: number | undefined;
}

const SIDES = [4, 8, 12, 20, 30, 40, 60];
const RINGS = 30;
const ROUNDS = 3;

/** The best of a few rounds' mean, after one to warm up: what else the machine does can only make a round longer. */
const meanMs = (rings: readonly Outline[], run: (ring: Outline) => void): number => {
  rings.forEach(run);
  const rounds = Array.from({ length: ROUNDS }, () => {
    const start = performance.now();
    rings.forEach(run);
    return (performance.now() - start) / rings.length;
  });
  return Math.min(...rounds);
};

/** Turned so that it runs anticlockwise, as the oracle takes it. */
const anticlockwise = (ring: Outline): Outline => (twiceSignedArea(ring) > 0 ? ring : [...ring].reverse());

/** Growth of the roof engine with the number of sides, on rings of corners anywhere. */
export const roofBench = async (): Promise<BenchRow[]> => {
  const oracle = await loadOracle();
  return SIDES.flatMap((sides): BenchRow[] => {
    const rings = Array.from({ length: RINGS }, (_, index) =>
      anticlockwise(tangledRing(randomFrom(sides * 1000 + index), sides)),
    );
    const own = meanMs(rings, (ring) => roofOver([ring], equalPitches(ring)));
    const theirs = meanMs(rings, (ring) => oracle.skeleton([ring]));
    const mixed = meanMs(rings, (ring) => {
      const random = randomFrom(sides);
      roofOver([ring], someGables(random, ring, unequalPitches(random, ring)));
    });
    return [
      { name: "equal pitches", sides, ms: own, ratio: own / theirs },
      { name: "unequal pitches and gables", sides, ms: mixed, ratio: undefined },
    ];
  });
};
