import { roofOver } from "../../functions/roof/roof";
import type { SideBuild } from "../../functions/roof/roofSides";
import { InputError } from "../../shared/inputError";
import type { Outline } from "../../shared/outline";
import { oneOf, randomFrom, wholeBetween, type Random } from "./random";
import { equalPitches, someGables, unequalPitches } from "./randomRoofs";
import { steppedRing } from "./randomBuildings";
import { starRing, tangledRing } from "./randomRings";

/** Sides of the largest random ring; a stepped one has this many squares, and about as many sides. */
const MOST_SIDES = 30;

const SHAPES = [starRing, tangledRing, steppedRing];
const BUILDS: readonly ((random: Random, ring: Outline) => SideBuild[])[] = [
  (_, ring) => equalPitches(ring),
  unequalPitches,
  (random, ring) => someGables(random, ring, equalPitches(ring)),
  (random, ring) => someGables(random, ring, unequalPitches(random, ring)),
];

/** A footprint and its roof, the same for the same seed. */
export const randomRoof = (seed: number): { readonly ring: Outline; readonly builds: SideBuild[] } => {
  const random = randomFrom(seed);
  const ring = oneOf(random, SHAPES)(random, wholeBetween(random, 3, MOST_SIDES));
  return { ring, builds: oneOf(random, BUILDS)(random, ring) };
};

/** Roofs over random rings, one per seed: the seeds and messages of those that end in `#N/A`. The goal is none. */
export const refusedRoofs = (
  firstSeed: number,
  count: number,
): { readonly seed: number; readonly sentence: string }[] =>
  Array.from({ length: count }, (_, index) => firstSeed + index).flatMap((seed) => {
    const { ring, builds } = randomRoof(seed);
    try {
      roofOver([ring], builds);
      return [];
    } catch (refusal) {
      if (!(refusal instanceof InputError)) throw refusal;
      return [{ seed, sentence: refusal.message }];
    }
  });
