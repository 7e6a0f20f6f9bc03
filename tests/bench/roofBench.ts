import { roofOver } from "../../functions/roof/roof";
import { twiceSignedArea, type Outline } from "../../shared/outline";
import { medianMs, type BenchRow } from "./measure";
import { loadOracle, type Oracle } from "../support/skeletonOracle";
import { randomFrom } from "../support/random";
import { equalPitches, someGables, unequalPitches } from "../support/randomRoofs";
import { tangledRing } from "../support/randomRings";

const SIDES = [4, 8, 12, 20, 30, 40, 60];
const LIMITS_MS = new Map([
  [12, 2],
  [60, 25],
]);
const RINGS = 30;

/** The median over all rounds of the mean time per ring. */
const meanMs = (rings: readonly Outline[], run: (ring: Outline) => void): number =>
  medianMs(
    () => {
      rings.forEach(run);
    },
    3,
    7,
  ) / rings.length;

/** The ring counterclockwise, as the oracle needs it. */
const counterclockwise = (ring: Outline): Outline => (twiceSignedArea(ring) > 0 ? ring : [...ring].reverse());

interface Sample {
  readonly sides: number;
  readonly equalMs: number;
  readonly mixedMs: number;
  readonly oracleMs: number;
}

const sample = (oracle: Oracle, sides: number): Sample => {
  const rings = Array.from({ length: RINGS }, (_, index) =>
    counterclockwise(tangledRing(randomFrom(sides * 1000 + index), sides)),
  );
  return {
    sides,
    equalMs: meanMs(rings, (ring) => roofOver([ring], equalPitches(ring))),
    mixedMs: meanMs(rings, (ring) => {
      const random = randomFrom(sides);
      roofOver([ring], someGables(random, ring, unequalPitches(random, ring)));
    }),
    oracleMs: meanMs(rings, (ring) => oracle.skeleton([ring])),
  };
};

/** How the roof engine's time grows with the number of sides, on random rings. */
export const roofBench = async (): Promise<BenchRow[]> => {
  const oracle = await loadOracle();
  const samples = SIDES.map((sides) => sample(oracle, sides));
  const [first] = samples;
  return samples.flatMap(({ sides, equalMs, mixedMs, oracleMs }): BenchRow[] => {
    const row = (name: string, ms: number, firstMs: number): BenchRow => {
      const limitMs = LIMITS_MS.get(sides);
      const ratio = ms / sides / (firstMs / (first?.sides ?? NaN));
      return {
        name: `${name}, ${sides} sides`,
        size: sides,
        ms,
        ratio,
        ...(limitMs !== undefined && { limitMs }),
      };
    };
    return [
      { ...row("ROOFPLANES: one pitch", equalMs, first?.equalMs ?? NaN), oracleRatio: equalMs / oracleMs },
      row("ROOFPLANES: pitches and gables", mixedMs, first?.mixedMs ?? NaN),
    ];
  });
};
