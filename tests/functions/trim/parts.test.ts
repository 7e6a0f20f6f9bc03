import fc from "fast-check";
import { Budget } from "../../../functions/trim/cutting/budget";
import { planForSplits, type SplitPlan } from "../../../functions/trim/cutting/splitPlan";
import { splitRun, type Split } from "../../../functions/trim/cutting/splits";
import { longestAddablePiece, lowerBound } from "../../../functions/trim/cutting/lowerBound";
import { inchesFromTicks } from "../../../functions/trim/cutting/ticks";
import type { Material } from "../../../functions/trim/cutting/material";
import { objectiveFor } from "../../../functions/trim/cutting/objective";
import { costByLength, costByDuals, type PieceCost } from "../../../functions/trim/cutting/pieceCost";
import { without, type PackingProblem, type Stock } from "../../../functions/trim/cutting/packingProblem";
import { stockCombinations } from "../../../functions/trim/cutting/stockCombinations";
import { trimJob, type StockLength, type TrimJob } from "../../../functions/trim/cutting/trimJob";
import {
  roundingFunction,
  countingFunction,
  thresholdFunction,
} from "../../../functions/trim/cutting/dualFeasibleFunctions";
import { dualBound } from "../../../functions/trim/cutting/dualBound";
import { endless, problemFrom } from "../../support/cutting";
import { everyPacking } from "../../support/everyPacking";

const CAPACITY = 60;
const enough = (): Budget => new Budget(1e6);

/** Pieces by size, largest first, to cut from stock of 60. */
const problemOf = (
  counts: Readonly<Record<number, number>>,
  stocks = [endless(CAPACITY)],
): PackingProblem => {
  const sizes = Object.keys(counts)
    .map(Number)
    .sort((a, b) => b - a);
  return { sizes, counts: sizes.map((size) => counts[size] ?? 0), stocks };
};

describe("a budget of steps", () => {
  it("gives as many steps as it holds", () => {
    const budget = new Budget(3);
    expect([budget.take(), budget.take(2), budget.left, budget.isSpent]).toEqual([true, true, 0, true]);
    expect([budget.take(), budget.left]).toEqual([false, 0]);
    expect(new Budget(1).isSpent).toBe(false);
  });

  it("lends at most what it holds, and takes back what wasn't used", () => {
    const budget = new Budget(10);
    expect(budget.lend(4, (part) => part.take(3))).toBe(true);
    expect(budget.left).toBe(7);
    expect(budget.lend(4, (part) => part.take(5))).toBe(false);
    expect(budget.left).toBe(3);
    expect(budget.lend(4, (part) => part.left)).toBe(3);
    expect(budget.left).toBe(3);
  });
});

describe("the objective of a plan", () => {
  const stock = (lengthIn: number, price?: number): StockLength =>
    price === undefined ? { lengthIn, limit: Infinity } : { lengthIn, limit: Infinity, price };

  it("is the number of stock lengths, and then the shortest total", () => {
    expect(objectiveFor([stock(120)]).costs).toEqual([1]);
    const [long = 0, short = 0] = objectiveFor([stock(400), stock(1)]).costs;
    expect(short).toBeLessThan(long);
    expect(5000 * long).toBeLessThan(5001 * short);
  });

  it("is the price where there are prices, in the smallest whole numbers", () => {
    expect(objectiveFor([stock(120, 10), stock(144, 12.5)]).costs).toEqual([4, 5]);
  });

  it("reports a proof, or the distance from the bound", () => {
    const [fewest, cheapest] = [objectiveFor([stock(120)]), objectiveFor([stock(120, 10), stock(144, 12.5)])];
    expect([fewest.verdict(3, 3), fewest.verdict(5, 3)]).toEqual(["proved fewest", "within 2 of the bound"]);
    expect([cheapest.verdict(9, 9), cheapest.verdict(9, 8)]).toEqual([
      "proved cheapest",
      "within 2.50 of the bound",
    ]);
  });
});

describe("tight lower bounds", () => {
  const pieces = fc.array(fc.integer({ min: 3, max: CAPACITY }), { minLength: 1, maxLength: 8 });

  it("use the best of the three dual feasible functions at every threshold", () => {
    fc.assert(
      fc.property(pieces, (some) => {
        const thresholds = some
          .flatMap((size) => [size, CAPACITY - size + 1])
          .filter((size) => 2 * size <= CAPACITY);
        const dualFeasibleFunctions = [
          (size: number) => size,
          ...Array.from({ length: 20 }, (_, index) => roundingFunction(CAPACITY, index + 1)),
          ...thresholds.flatMap((size) => [
            thresholdFunction(CAPACITY, size),
            countingFunction(CAPACITY, size),
          ]),
        ];
        const bounds = dualFeasibleFunctions.map((dff) =>
          Math.ceil(some.reduce((sum, size) => sum + dff(size), 0) / dff(CAPACITY)),
        );
        expect(lowerBound(problemFrom(some, [endless(CAPACITY)]))).toBe(Math.max(...bounds));
      }),
      { numRuns: 500 },
    );
  });

  it.each<[number, Record<number, number>, number[]]>([
    [1, { 20: 3 }, [1]],
    [3, { 31: 3 }, [1]],
    [2, { 40: 2, 20: 2 }, [2, 1]],
    [2, { 40: 2, 20: 2 }, [2, -5]],
    [0, { 40: 2, 20: 2 }, [0, -1]],
  ])("from duals: %d stock lengths for %j with duals %j", (bound, counts, duals) => {
    expect(dualBound(problemOf(counts), duals, enough())).toBe(bound);
  });

  it("from duals, with stock that holds a piece and stock that doesn't", () => {
    const stocks = [endless(100, 3), endless(CAPACITY, 1)];
    expect(dualBound(problemOf({ 70: 2 }, stocks), [1], enough())).toBe(6);
    expect(dualBound(problemOf({ 70: 2 }, stocks), [1], new Budget(0))).toBe(0);
  });

  it("the longest left-over is never above its bound, which length alone sets next to one piece", () => {
    expect(longestAddablePiece(problemOf({ 40: 1 }), 1, CAPACITY)).toBe(20);
    expect(longestAddablePiece(problemOf({ 31: 2 }), 2, CAPACITY)).toBe(29);
    expect(longestAddablePiece(problemOf({ 31: 2 }), 3, CAPACITY)).toBe(CAPACITY);
    fc.assert(
      fc.property(pieces, (some) => {
        const { stocks, leftOver } = everyPacking(some, CAPACITY);
        expect(
          longestAddablePiece(problemFrom(some, [endless(CAPACITY)]), stocks, CAPACITY),
        ).toBeGreaterThanOrEqual(leftOver);
      }),
    );
  });
});

describe("the least cost of a piece", () => {
  const materialOf = (...stocks: Stock[]): Material => ({ stocks, kerf: 0, objective: objectiveFor([]) });
  const planOf = (material: Material, cut: readonly number[]): SplitPlan => {
    const plan = planForSplits(material, [{ run: 1, split: { whole: [], cut } }], enough());
    if (!plan) throw new Error("no plan");
    return plan;
  };

  it("is its share by length of the stock with the best price", () => {
    expect(costByLength(materialOf(endless(100), endless(60)))(50)).toBe(0.5);
  });

  it("is by duals a whole stock where no two fit in one, and 0 for a piece shorter than all", () => {
    const material = materialOf(endless(120, 10));
    const cost = costByDuals(material, planOf(material, [90, 62]), enough());
    expect([120, 90, 70, 62, 61].map((size) => cost?.(size))).toEqual([10, 10, 10, 10, 0]);
  });

  it("is undefined where the budget ends first", () => {
    const material = materialOf(endless(120));
    expect(costByDuals(material, planOf(material, [90, 62]), new Budget(0))).toBeUndefined();
  });

  it("adds up to no more than the stock in any stock, and no more than the plan in any plan", () => {
    const cuts = fc.array(fc.integer({ min: 6, max: 120 }), { minLength: 1, maxLength: 8 });
    const costOf = (cost: PieceCost, sizes: readonly number[]): number =>
      sizes.reduce((sum, size) => sum + cost(size), 0);
    fc.assert(
      fc.property(cuts, cuts, (cut, other) => {
        const material = materialOf(endless(120, 10), endless(80, 8));
        const plan = planOf(material, cut);
        const byDuals = costByDuals(material, plan, enough());
        for (const cost of [costByLength(material), byDuals ?? (() => NaN)]) {
          expect(costOf(cost, cut)).toBeLessThanOrEqual(plan.cost * (1 + 1e-9));
          expect(costOf(cost, other)).toBeLessThanOrEqual(planOf(material, other).cost * (1 + 1e-9));
        }
      }),
    );
  });
});

describe("the splits of a run", () => {
  const jobOf = (lengthsIn: readonly number[], shortestIn = 0): TrimJob =>
    trimJob([], lengthsIn, 0, 0, shortestIn, undefined, undefined);
  const splitsOf = (
    job: TrimJob,
    runIn: number,
    leastIn = Math.max(...job.stocks.map((each) => each.lengthIn)),
  ) => {
    const { splits, isComplete } = splitRun(job, { number: 1, lengthFt: runIn / 12 }, leastIn);
    const inInches = ({ whole, cut }: Split): Split => ({
      whole,
      cut: cut.map((ticks) => Math.round(inchesFromTicks(ticks) * 1e6) / 1e6),
    });
    return { splits: splits.map(inInches), isComplete };
  };

  it("leave no remainder longer than the longest stock", () => {
    expect(splitsOf(jobOf([120, 96]), 230)).toEqual({
      splits: [{ whole: [0], cut: [110] }],
      isComplete: true,
    });
    expect(splitsOf(jobOf([120, 96]), 210).splits).toEqual([
      { whole: [0], cut: [90] },
      { whole: [1], cut: [114] },
    ]);
  });

  it("are one empty split for a run of length 0", () => {
    expect(splitsOf(jobOf([120]), 0)).toEqual({ splits: [{ whole: [], cut: [] }], isComplete: true });
  });

  it("cut no piece below the shortest, even if that makes two pieces of one", () => {
    expect(splitsOf(jobOf([120, 80], 60), 100, 80).splits).toEqual([{ whole: [], cut: [100] }]);
    expect(splitsOf(jobOf([120, 80], 60), 120, 80).splits).toEqual([
      { whole: [], cut: [120] },
      { whole: [], cut: [60, 60] },
    ]);
  });

  it("are incomplete where there are too many to search", () => {
    const many = jobOf([120, 119, 118, 117, 116, 60]);
    const all = splitsOf(many, 8 * 119);
    expect(all.isComplete).toBe(false);
    expect(all.splits.length).toBeLessThanOrEqual(200);
    expect(splitsOf(many, 2 * 119).isComplete).toBe(true);
    // All splits into two pieces are known, but not into up to eight.
    expect(splitsOf(jobOf([480, 120, 119, 118, 117, 116, 115]), 900, 115).isComplete).toBe(false);
  });

  it("stay within the limits of the stock", () => {
    const [one, endlessly]: StockLength[] = [
      { lengthIn: 120, limit: 1 },
      { lengthIn: 96, limit: Infinity },
    ] as const;
    expect([...stockCombinations([[0, one as StockLength]], 2)]).toEqual([]);
    expect([
      ...stockCombinations(
        [
          [0, one as StockLength],
          [1, endlessly as StockLength],
        ],
        2,
      ),
    ]).toEqual([
      [0, 1],
      [1, 1],
    ]);
  });
});

it("the problem left after some bins has fewer pieces and less stock", () => {
  const problem = problemOf({ 40: 2, 20: 3 }, [{ capacity: CAPACITY, cost: 1, limit: 3 }]);
  expect(without(problem, [{ stock: 0, items: [0, 1] }])).toEqual(
    problemOf({ 40: 1, 20: 2 }, [{ capacity: CAPACITY, cost: 1, limit: 2 }]),
  );
});
