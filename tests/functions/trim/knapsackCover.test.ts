import fc from "fast-check";
import { knapsackCoverCost } from "../../../functions/trim/cutting/knapsackCover";
import { longestAddablePiece } from "../../../functions/trim/cutting/lowerBound";
import type { Stock } from "../../../functions/trim/cutting/packingProblem";
import {
  roundingFunction,
  countingFunction,
  thresholdFunction,
} from "../../../functions/trim/cutting/dualFeasibleFunctions";
import { randomFrom, wholeBetween, type Random } from "../../support/random";
import { endless, problemFrom, SEEDS } from "../../support/cutting";

/** A kind of stock with its value, cost and limit. */
interface Kind {
  readonly value: number;
  readonly cost: number;
  readonly limit: number;
}

const costToCover = (kinds: readonly Kind[], demand: number): number =>
  knapsackCoverCost(
    kinds.map(({ cost, limit }): Stock => ({ capacity: 1, cost, limit })),
    kinds.map(({ value }) => value),
    demand,
  );

/** The least cost by dynamic programming over the kinds, for every demand up to a given one. */
const leastToCover = (kinds: readonly Kind[], demand: number): number => {
  let least = Array.from({ length: demand + 1 }, (_, needed) => (needed === 0 ? 0 : Infinity));
  for (const { value, cost, limit } of kinds)
    least = least.map((_, needed) => {
      const most = value > 0 ? Math.min(limit, Math.ceil(needed / value)) : 0;
      const costs = Array.from(
        { length: most + 1 },
        (__, taken) => taken * cost + (least[Math.max(0, needed - taken * value)] ?? NaN),
      );
      return Math.min(...costs);
    });
  return least[demand] ?? NaN;
};

describe("the covering knapsack", () => {
  it("has the cost of the best choice of all", () => {
    const kind = fc.record({
      value: fc.integer({ min: 0, max: 12 }),
      cost: fc.integer({ min: 1, max: 15 }),
      limit: fc.constantFrom(0, 1, 2, 3, Infinity),
    });
    fc.assert(
      fc.property(
        fc.array(kind, { minLength: 1, maxLength: 4 }),
        fc.integer({ min: 0, max: 60 }),
        (kinds, demand) => {
          expect(costToCover(kinds, demand)).toBe(leastToCover(kinds, demand));
        },
      ),
      { numRuns: 1000 },
    );
  });

  it("has it also where all prices per value are equal, in spite of rounding error", () => {
    const kind = fc.record({
      value: fc.integer({ min: 1, max: 99 }),
      limit: fc.constantFrom(1, 3, Infinity),
    });
    fc.assert(
      fc.property(
        fc.array(kind, { minLength: 2, maxLength: 4 }),
        fc.constantFrom(1, 7, 1_234_567, 98_765_432_101),
        fc.integer({ min: 1, max: 300 }),
        (kinds, price, demand) => {
          const priced = kinds.map((each) => ({ ...each, cost: each.value * price }));
          expect(costToCover(priced, demand)).toBe(leastToCover(priced, demand));
        },
      ),
      { numRuns: 300 },
    );
  });

  it("costs 0 for a demand of 0, even with stock of value 0", () => {
    expect(costToCover([{ value: 0, cost: 1, limit: Infinity }], 0)).toBe(0);
    expect(costToCover([{ value: 5, cost: 1, limit: Infinity }], -7)).toBe(0);
    expect(costToCover([{ value: 0, cost: 1, limit: Infinity }], 1)).toBe(Infinity);
  });

  it("stays within the limits", () => {
    expect(costToCover([{ value: 5, cost: 2, limit: 3 }], 15)).toBe(6);
    expect(costToCover([{ value: 5, cost: 2, limit: 3 }], 16)).toBe(Infinity);
  });

  /** Kinds of nearly the same price, the hardest to choose from. */
  const hard = (random: Random, count: number): { kinds: Kind[]; demand: number } => {
    const kinds = Array.from({ length: count }, () => {
      const value = wholeBetween(random, 200, 400);
      return { value, cost: value + wholeBetween(random, 0, 9), limit: wholeBetween(random, 1, 3) };
    });
    return { kinds, demand: kinds.reduce((sum, { value, limit }) => sum + value * limit, 0) >> 1 };
  };

  it("is solved for six kinds, however close their prices are", () => {
    for (const seed of SEEDS.slice(0, 20)) {
      const { kinds, demand } = hard(randomFrom(seed), 6);
      expect(costToCover(kinds, demand)).toBe(leastToCover(kinds, demand));
    }
  });

  it("is never overstated where there are too many kinds to try all choices", () => {
    for (const seed of SEEDS.slice(0, 6)) {
      const { kinds, demand } = hard(randomFrom(seed), 14);
      const cost = costToCover(kinds, demand);
      const least = leastToCover(kinds, demand);
      expect(cost).toBeLessThanOrEqual(least);
      // The fractional bound comes close.
      expect(cost).toBeGreaterThanOrEqual(0.98 * least);
    }
  });
});

describe("dual feasible functions", () => {
  it("threshold: sizes too large to share a stock count as the whole, smaller ones as 0", () => {
    expect([60, 41, 40, 39, 20, 19, 1].map(thresholdFunction(60, 20))).toEqual([60, 60, 40, 39, 20, 0, 0]);
  });

  it("rounding: down, except for exact multiples", () => {
    expect([60, 59, 31, 30, 29].map(roundingFunction(60, 1))).toEqual([60, 60, 60, 30, 0]);
    expect([60, 59, 41, 40, 39, 21, 20, 19].map(roundingFunction(60, 2))).toEqual([
      120, 120, 120, 80, 60, 60, 40, 0,
    ]);
  });

  it("counting: pieces that a small size holds, and pieces that a large size leaves no room for", () => {
    expect([60, 41, 40, 31, 30, 29, 20, 19].map(countingFunction(60, 20))).toEqual([6, 6, 4, 4, 3, 2, 2, 0]);
  });
});

it("the longest piece that can be added follows the longest stock", () => {
  const stocks = [endless(60, 2), endless(100, 3)];
  expect(longestAddablePiece(problemFrom([40], stocks), 3, 100)).toBe(60);
  expect(longestAddablePiece(problemFrom([40], [...stocks].reverse()), 3, 100)).toBe(60);
});
