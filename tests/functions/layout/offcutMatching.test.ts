import fc from "fast-check";
import { matchPieces } from "../../../functions/layout/engine/offcutMatching";
import type { Reusable } from "../../../functions/layout/engine/piece";
import { canShare, mostPairs } from "../../support/mostPairs";

const ROOM_IN = 24;

const pieces = (maxLength: number): fc.Arbitrary<Reusable[]> =>
  fc.array(
    fc.record({
      blankIn: fc.integer({ min: 1, max: 104 }).map((quarters) => quarters / 4),
      keeps: fc.constantFrom("near", "far", "neither", "both"),
    }),
    { maxLength },
  );

/** Tries every possible pairing. */
const exhaustive = (left: readonly Reusable[]): number => {
  const [first, ...others] = left;
  if (!first) return 0;
  return others.reduce(
    (most, other, index) =>
      canShare(first, other, ROOM_IN)
        ? Math.max(most, 1 + exhaustive(others.filter((_, place) => place !== index)))
        : most,
    exhaustive(others),
  );
};

describe("reuse of offcuts", () => {
  it("makes as many pairs as an exhaustive search, for up to eight pieces", () => {
    fc.assert(
      fc.property(pieces(8), (some) => {
        expect(matchPieces(some, ROOM_IN)).toHaveLength(exhaustive(some));
      }),
      { numRuns: 3000 },
    );
  });

  it("makes as many pairs as a general maximum matching, for up to forty pieces", () => {
    fc.assert(
      fc.property(pieces(40), (some) => {
        expect(matchPieces(some, ROOM_IN)).toHaveLength(mostPairs(some, ROOM_IN));
      }),
      { numRuns: 1000 },
    );
  });

  it("pairs each piece once, and only pieces that fit in one panel", () => {
    fc.assert(
      fc.property(pieces(40), (some) => {
        const pairs = matchPieces(some, ROOM_IN);
        expect(new Set(pairs.flat()).size).toBe(2 * pairs.length);
        for (const [a, b] of pairs)
          expect(canShare(some[a] as Reusable, some[b] as Reusable, ROOM_IN)).toBe(true);
      }),
      { numRuns: 1000 },
    );
  });

  it("never flips a panel: two starters are never a pair, however short", () => {
    const starters: Reusable[] = [
      { blankIn: 4, keeps: "far" },
      { blankIn: 4, keeps: "far" },
    ];
    expect(matchPieces(starters, ROOM_IN)).toEqual([]);
  });

  it("counts a fit that floating-point error would miss", () => {
    const halves: Reusable[] = [
      { blankIn: 0.1 + 0.2, keeps: "far" },
      { blankIn: 23.7, keeps: "near" },
    ];
    expect(matchPieces(halves, ROOM_IN)).toHaveLength(1);
  });
});
