import fc from "fast-check";
import { planWithin } from "../../../functions/trim/cutting/binCompletion";
import { Budget } from "../../../functions/trim/cutting/budget";
import { forcedBins } from "../../../functions/trim/cutting/forcedBins";
import { pack } from "../../../functions/trim/cutting/pack";
import type { PackingProblem } from "../../../functions/trim/cutting/packingProblem";
import { packingProblemOf } from "../../../functions/trim/cutting/packingProblemOf";

const CAPACITY = 60;
const problemWith = (sizes: readonly number[]): PackingProblem =>
  packingProblemOf(sizes, (size) => size, [{ capacity: CAPACITY, cost: 1, limit: Infinity }]).problem;
const budget = (): Budget => new Budget(200_000);

const forcedSizes = (sizes: readonly number[]): number[][] => {
  const problem = problemWith(sizes);
  return forcedBins(problem, budget()).map(({ items }) => items.map((item) => problem.sizes[item] ?? 0));
};

describe("bins that some best plan has anyway", () => {
  it("a piece with what fills its stock exactly", () => {
    expect(forcedSizes([41, 19, 12, 11, 10, 9, 8, 7])).toContainEqual([41, 19]);
  });

  it("a piece with what fills its stock exactly, however many small ones there are", () => {
    expect(forcedSizes([31, 29, 3, 3])).toContainEqual([31, 29]);
  });

  it("none of a piece with two ways, neither of which betters the other", () => {
    expect(forcedSizes([31, 20, 15, 14])).toEqual([]);
  });

  it("a piece beside which only one other fits takes the longest that does", () => {
    expect(forcedSizes([45, 40, 14, 13, 13])[0]).toEqual([45, 14]);
  });

  it("none beside a piece that leaves room for six of the smallest or more", () => {
    expect(forcedSizes([41, 4])).toEqual([[41, 4]]);
    expect(forcedSizes([42, 3])).toEqual([]);
    // The smallest is gone with the piece that it fills the stock of.
    expect(forcedSizes([57, 41, 10, 3])).toEqual([
      [57, 3],
      [41, 10],
    ]);
  });

  it("are looked for again once others have left a piece one way only", () => {
    expect(forcedSizes([40, 34, 15, 11, 8])).toEqual([
      [34, 15, 11],
      [40, 8],
    ]);
  });

  it("are none of a piece that no stock holds, and it has no plan", () => {
    expect(forcedSizes([CAPACITY + 1])).toEqual([]);
    expect(pack(problemWith([CAPACITY + 1]), budget())).toBeUndefined();
    expect(pack(problemWith([CAPACITY + 1, 30, 20]), budget())).toBeUndefined();
  });

  it("are none where stock may run out, or is of two kinds", () => {
    const problem = problemWith([45, 15]);
    const [stock] = problem.stocks;
    if (!stock) throw new Error("no stock");
    expect(forcedBins({ ...problem, stocks: [{ ...stock, limit: 2 }] }, budget())).toEqual([]);
    expect(forcedBins({ ...problem, stocks: [stock, { ...stock, cost: 2 }] }, budget())).toEqual([]);
  });

  it("never cost a stock length: a search without them finds no plan of fewer", () => {
    const sizes = fc.array(fc.integer({ min: 3, max: CAPACITY }), { minLength: 1, maxLength: 16 });
    fc.assert(
      fc.property(sizes, (typed) => {
        const problem = problemWith(typed);
        const packing = pack(problem, budget());
        expect(packing?.bound).toBe(packing?.cost);
        expect(planWithin(problem, (packing?.cost ?? 0) - 1, budget())).toBe("none");
        const held =
          packing?.bins.flatMap(({ items }) => items.map((item) => problem.sizes[item] ?? 0)) ?? [];
        const unit = problem.sizes[0] ? Math.max(...typed) / problem.sizes[0] : 1;
        expect(held.map((size) => size * unit).sort((a, b) => a - b)).toEqual(
          [...typed].sort((a, b) => a - b),
        );
      }),
      { numRuns: 500 },
    );
  });
});
