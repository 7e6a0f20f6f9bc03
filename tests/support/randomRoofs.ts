import type { SideBuild } from "../../functions/roof/roofSides";
import { twiceSignedArea, type Outline } from "../../shared/outline";
import { oneOf, type Random } from "./random";

const PITCHES = [3, 4, 5, 6, 8, 12];

export const equalPitches = (ring: Outline, pitch = 6): SideBuild[] =>
  ring.map(() => ({ pitch, overhangFt: 0 }));

export const unequalPitches = (random: Random, ring: Outline): SideBuild[] =>
  ring.map(() => ({ pitch: oneOf(random, PITCHES), overhangFt: 0 }));

/** For each side, whether it starts at an inner corner of the building. */
const innerCorners = (ring: Outline): boolean[] => {
  const way = Math.sign(twiceSignedArea(ring));
  return ring.map((corner, index) => {
    const [before, after] = [ring.at(index - 1), ring[(index + 1) % ring.length]] as [
      typeof corner,
      typeof corner,
    ];
    const turn = (corner.x - before.x) * (after.y - corner.y) - (corner.y - before.y) * (after.x - corner.x);
    return turn * way < 0;
  });
};

/** Gables at random where a gable is possible: between outer corners, and no two on adjacent sides. */
export const someGables = (random: Random, ring: Outline, builds: readonly SideBuild[]): SideBuild[] => {
  const inner = innerCorners(ring);
  const result = [...builds];
  ring.forEach((_, index) => {
    const after = (index + 1) % ring.length;
    const neighbors = [result.at(index - 1), result[after]];
    if (inner[index] || inner[after] || neighbors.some((side) => side?.pitch === "gable")) return;
    if (random() < 0.35) result[index] = { pitch: "gable", overhangFt: 0 };
  });
  return result;
};
