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

describe("bins that some optimal plan contains", () => {
  it("hold a piece with the one that fills its stock exactly", () => {
    expect(forcedSizes([41, 19, 12, 11, 10, 9, 8, 7])).toContainEqual([41, 19]);
  });

  it("hold such a pair however many small pieces there are", () => {
    expect(forcedSizes([31, 29, 3, 3])).toContainEqual([31, 29]);
  });

  it("leave out a piece with two fillings of which neither dominates the other", () => {
    expect(forcedSizes([31, 20, 15, 14])).toEqual([]);
  });

  it("hold a piece with the longest that fits where only one more fits", () => {
    expect(forcedSizes([45, 40, 14, 13, 13])[0]).toEqual([45, 14]);
  });

  it("leave out a piece with room for six or more of the smallest", () => {
    expect(forcedSizes([41, 4])).toEqual([[41, 4]]);
    expect(forcedSizes([42, 3])).toEqual([]);
    // The smallest is gone: it fills the stock of another piece.
    expect(forcedSizes([57, 41, 10, 3])).toEqual([
      [57, 3],
      [41, 10],
    ]);
  });

  it("are searched again once others leave a piece only one filling", () => {
    expect(forcedSizes([40, 34, 15, 11, 8])).toEqual([
      [34, 15, 11],
      [40, 8],
    ]);
  });

  it("leave out a piece that fits no stock, which has no plan", () => {
    expect(forcedSizes([CAPACITY + 1])).toEqual([]);
    expect(pack(problemWith([CAPACITY + 1]), budget())).toBeUndefined();
    expect(pack(problemWith([CAPACITY + 1, 30, 20]), budget())).toBeUndefined();
  });

  it("are none where stock is limited, or has two lengths", () => {
    const problem = problemWith([45, 15]);
    const [stock] = problem.stocks;
    if (!stock) throw new Error("no stock");
    expect(forcedBins({ ...problem, stocks: [{ ...stock, limit: 2 }] }, budget())).toEqual([]);
    expect(forcedBins({ ...problem, stocks: [stock, { ...stock, cost: 2 }] }, budget())).toEqual([]);
  });

  it("never cost a stock length: a search without them finds no better plan", () => {
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
