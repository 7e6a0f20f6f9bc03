import { InputError } from "../inputError";
import { cornerAfter, type Outline, type Point } from "../outline";
import { segmentsMeet } from "../outlineCrossing";
import { isWithin } from "../outlineWithin";

/** A ring with the number of its first side. */
export interface NumberedRing {
  readonly ring: Outline;
  readonly first: number;
}

/** The first sides, counted from 0, of two rings that touch. */
const ringsMeet = (ring: Outline, other: Outline): readonly [number, number] | undefined => {
  for (const [i, a] of ring.entries())
    for (const [j, c] of other.entries())
      if (segmentsMeet(a, cornerAfter(ring, i), c, cornerAfter(other, j))) return [i, j];
  return undefined;
};

/** Rejects a courtyard that meets another ring, is outside the first, or is within another courtyard. */
export const checkCourtyards = (rings: readonly NumberedRing[], label: string): void => {
  rings.forEach(({ ring, first }, index) => {
    for (const other of rings.slice(0, index)) {
      const meeting = ringsMeet(ring, other.ring);
      if (meeting)
        throw new InputError(
          `${label} crosses itself: side ${other.first + meeting[1]} meets side ${first + meeting[0]}`,
        );
    }
    const around = rings
      .slice(1)
      .filter((other) => other.ring !== ring && isWithin(other.ring, ring[0] as Point));
    if (index > 0 && (around.length > 0 || !isWithin(rings[0]?.ring ?? [], ring[0] as Point)))
      throw new InputError(
        `${label} has a courtyard (sides ${first} to ${first + ring.length - 1}) that isn't inside the building`,
      );
  });
};
