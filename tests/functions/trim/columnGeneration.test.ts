import fc from "fast-check";
import { bestFitDecreasing } from "../../../functions/trim/cutting/bestFitDecreasing";
import { Budget } from "../../../functions/trim/cutting/budget";
import {
  boundByPieces,
  boundByStock,
  boundOverSplits,
  splitCost,
  type SplitOptions,
} from "../../../functions/trim/cutting/splitCosts";
import type { Split } from "../../../functions/trim/cutting/splits";
import type { Material } from "../../../functions/trim/cutting/material";
import { objectiveFor } from "../../../functions/trim/cutting/objective";
import {
  costOf,
  type Bin,
  type PackingProblem,
  type Stock,
} from "../../../functions/trim/cutting/packingProblem";
import { solveRelaxation, type Relaxation } from "../../../functions/trim/cutting/columnGeneration";

const endless = (capacity: number, cost: number): Stock => ({ capacity, cost, limit: Infinity });
const enough = (): Budget => new Budget(1e6);

/** Pieces by size, the largest first. */
const problemOf = (counts: Readonly<Record<number, number>>, stocks: readonly Stock[]): PackingProblem => {
  const sizes = Object.keys(counts)
    .map(Number)
    .sort((a, b) => b - a);
  return { sizes, counts: sizes.map((size) => counts[size] ?? 0), stocks };
};

const anyProblem = (stocks: readonly Stock[]): fc.Arbitrary<PackingProblem> =>
  fc
    .array(fc.tuple(fc.integer({ min: 8, max: 60 }), fc.integer({ min: 1, max: 6 })), {
      minLength: 1,
      maxLength: 5,
    })
    .map((pieces) => problemOf(Object.fromEntries(pieces), stocks));

/** Every choice of the pieces there are, as how many of each size. */
const everyFilling = ({ sizes, counts }: PackingProblem, capacity: number): number[][] => {
  const fill = (from: number, left: number): number[][] => {
    const size = sizes[from];
    if (size === undefined) return [[]];
    const most = Math.min(counts[from] ?? 0, Math.floor(left / size));
    return Array.from({ length: most + 1 }, (_, taken) =>
      fill(from + 1, left - taken * size).map((rest) => [taken, ...rest]),
    ).flat();
  };
  return fill(0, capacity);
};
const dot = (a: readonly number[], b: readonly number[]): number =>
  a.reduce((sum, value, index) => sum + value * (b[index] ?? 0), 0);
const timesIn = ({ sizes }: PackingProblem, { items }: Bin): number[] =>
  sizes.map((_, size) => items.filter((item) => item === size).length);
const costOfUses = (problem: PackingProblem, { uses }: Relaxation): number =>
  uses.reduce((sum, { bin, times }) => sum + costOf(problem, [bin]) * times, 0);

/** No filling is worth more than its stock costs: what the pieces are worth in all is then under every plan. */
const expectDualFeasible = (problem: PackingProblem, duals: readonly number[]): void => {
  for (const { capacity, cost, limit } of problem.stocks)
    if (limit > 0)
      for (const filling of everyFilling(problem, capacity))
        expect(dot(filling, duals)).toBeLessThanOrEqual(cost * (1 + 1e-7));
};

describe("the relaxation of a cutting plan", () => {
  const stocks = [endless(60, 10), endless(40, 7), { capacity: 60, cost: 1, limit: 0 }];

  it("costs the least that broken numbers of fillings can: as much as its pieces are worth, and no filling is worth more", () => {
    fc.assert(
      fc.property(anyProblem(stocks), fc.boolean(), (problem, isKnown) => {
        const pool: Bin[] = [];
        if (isKnown) solveRelaxation(problem, pool, false, enough());
        const relaxed = solveRelaxation(problem, pool, false, enough());
        if (!relaxed) throw new Error("the budget ended");
        expectDualFeasible(problem, relaxed.duals);
        const worth = dot(problem.counts, relaxed.duals);
        expect(costOfUses(problem, relaxed)).toBeCloseTo(worth, 5);
        problem.sizes.forEach((_, size) => {
          const held = relaxed.uses.reduce(
            (sum, { bin, times }) => sum + times * (timesIn(problem, bin)[size] ?? 0),
            0,
          );
          expect(held).toBeGreaterThanOrEqual((problem.counts[size] ?? 0) - 1e-6);
        });
        expect(relaxed.uses.filter(({ bin }) => bin.stock === 2)).toEqual([]);
        for (const { bin } of relaxed.uses)
          expect(dot(timesIn(problem, bin), problem.sizes)).toBeLessThanOrEqual(
            problem.stocks[bin.stock]?.capacity ?? 0,
          );
      }),
    );
  });

  it("costs no less where a piece may be replaced by a smaller one, and then a larger one is never worth less", () => {
    fc.assert(
      fc.property(anyProblem(stocks), (problem) => {
        const relaxed = solveRelaxation(problem, [], true, enough());
        if (!relaxed) throw new Error("the budget ended");
        expectDualFeasible(problem, relaxed.duals);
        expect(costOfUses(problem, relaxed)).toBeCloseTo(dot(problem.counts, relaxed.duals), 5);
        relaxed.duals.slice(1).forEach((worth, index) => {
          expect(worth).toBeLessThanOrEqual((relaxed.duals[index] ?? 0) + 1e-6);
        });
      }),
    );
  });

  it("ends once its worths reach the bound that is asked for", () => {
    fc.assert(
      fc.property(anyProblem(stocks), fc.double({ min: 0.1, max: 0.999, noNaN: true }), (problem, share) => {
        const best = dot(problem.counts, solveRelaxation(problem, [], false, enough())?.duals ?? []);
        const relaxed = solveRelaxation(problem, [], false, enough(), { bound: share * best, cost: 0 });
        expectDualFeasible(problem, relaxed?.duals ?? []);
        expect(dot(problem.counts, relaxed?.duals ?? [])).toBeGreaterThanOrEqual(share * best * (1 - 1e-7));
      }),
    );
  });

  it("goes by the fillings that it knows, of those whose pieces there are", () => {
    const pool: Bin[] = [];
    const problem = problemOf({ 31: 4, 23: 5, 17: 6, 11: 7 }, stocks);
    solveRelaxation(problem, pool, false, enough());
    const known = pool.length;
    expect(known).toBeGreaterThan(0);
    solveRelaxation(problem, pool, false, enough());
    expect(pool).toHaveLength(known);
    const homogeneousFilling = problemOf({ 30: 1 }, stocks);
    expect(
      dot(
        [1],
        solveRelaxation(homogeneousFilling, [{ stock: 0, items: [0, 0] }], false, enough())?.duals ?? [],
      ),
    ).toBeCloseTo(7, 9);
  });

  it("isn't there where a piece goes into no stock, or the budget ends", () => {
    expect(solveRelaxation(problemOf({ 70: 1, 20: 1 }, stocks), [], false, enough())).toBeUndefined();
    const problem = problemOf({ 31: 4, 23: 5, 17: 6, 11: 7 }, stocks);
    for (const steps of [0, 1, 4, 8])
      expect(solveRelaxation(problem, [], false, new Budget(steps))).toBeUndefined();
  });
});

describe("plans by best fit", () => {
  const plans = (problem: PackingProblem): (readonly [number, readonly number[]])[][] =>
    bestFitDecreasing(problem).map((bins) =>
      bins.map(({ stock, items }) => [stock, items.map((item) => problem.sizes[item] ?? 0)] as const),
    );

  it("put the largest piece first, each where it leaves least", () => {
    expect(plans(problemOf({ 40: 1, 30: 1, 20: 1 }, [endless(60, 1)]))).toEqual([
      [
        [0, [40, 20]],
        [0, [30]],
      ],
    ]);
    expect(plans(problemOf({ 45: 1, 40: 1, 15: 1 }, [endless(60, 1)]))).toEqual([
      [
        [0, [45, 15]],
        [0, [40]],
      ],
    ]);
  });

  it("look among all that are begun", () => {
    expect(plans(problemOf({ 35: 1, 33: 1, 26: 1, 1: 1 }, [endless(60, 1)]))).toEqual([
      [
        [0, [35]],
        [0, [33, 26, 1]],
      ],
    ]);
  });

  it("begin with each stock in turn, and swap it for a cheaper one that does", () => {
    const stocks = [endless(100, 3), endless(60, 1)];
    expect(plans(problemOf({ 50: 1 }, stocks))).toEqual([[[1, [50]]], [[1, [50]]]]);
    expect(plans(problemOf({ 50: 2 }, stocks))).toEqual([
      [[0, [50, 50]]],
      [
        [1, [50]],
        [1, [50]],
      ],
    ]);
    expect(plans(problemOf({ 60: 1, 40: 1 }, stocks))).toEqual([
      [[0, [60, 40]]],
      [
        [1, [60]],
        [1, [40]],
      ],
    ]);
  });

  it("take the cheapest stock where the one in turn is too short or runs out", () => {
    expect(
      plans(problemOf({ 70: 1 }, [endless(60, 1), endless(100, 4), endless(90, 3), endless(80, 5)])),
    ).toEqual(Array.from({ length: 4 }, () => [[2, [70]]]));
    const scarce = [{ capacity: 100, cost: 1, limit: 1 }, endless(60, 2)];
    expect(plans(problemOf({ 55: 2 }, scarce))).toEqual([
      [
        [0, [55]],
        [1, [55]],
      ],
      [
        [0, [55]],
        [1, [55]],
      ],
    ]);
  });

  it("are none where the limits leave too little", () => {
    expect(plans(problemOf({ 55: 2 }, [{ capacity: 60, cost: 1, limit: 1 }]))).toEqual([]);
    expect(plans(problemOf({ 55: 1 }, [{ capacity: 60, cost: 1, limit: 1 }]))).toEqual([[[0, [55]]]]);
  });

  it("hold every piece once, in stock that there is", () => {
    const stocks = [
      endless(60, 10),
      { capacity: 80, cost: 9, limit: 2 },
      { capacity: 60, cost: 1, limit: 0 },
    ];
    fc.assert(
      fc.property(anyProblem(stocks), (problem) => {
        const found = bestFitDecreasing(problem);
        expect(found).toHaveLength(3);
        for (const bins of found) {
          expect(bins.filter(({ stock }) => stock === 1).length).toBeLessThanOrEqual(2);
          expect(bins.filter(({ stock }) => stock === 2)).toEqual([]);
          const held = bins.flatMap(({ items }) => items);
          expect(problem.sizes.map((_, size) => held.filter((item) => item === size).length)).toEqual(
            problem.counts,
          );
          for (const bin of bins)
            expect(dot(timesIn(problem, bin), problem.sizes)).toBeLessThanOrEqual(
              stocks[bin.stock]?.capacity ?? 0,
            );
        }
      }),
    );
  });
});

describe("bounds under all ways to make up the runs", () => {
  /** Stock of 120 with its kerf of 5, at 10. */
  const material: Material = { stocks: [endless(125, 10)], kerf: 5, objective: objectiveFor([]) };
  const scarce: Material = { ...material, stocks: [{ capacity: 125, cost: 10, limit: 1 }] };
  const way = (whole: readonly number[], ...cut: readonly number[]): Split => ({ whole, cut });
  const run = (isComplete: boolean, ...choices: readonly Split[]): SplitOptions => ({
    run: 1,
    leastSize: 65,
    splits: choices,
    isComplete,
  });
  const bySize = (size: number): number => size;

  it("weigh what each run takes at the least", () => {
    const half = run(true, way([], 60));
    // 60 and its kerf are over half of the stock.
    expect(boundOverSplits(material, [half, half, half])).toBe(30);
    expect(boundOverSplits(material, [run(true, way([0], 60)), run(true, way([0], 60))])).toBe(40);
    expect(
      boundOverSplits(
        material,
        Array.from({ length: 4 }, () => run(true, way([], 100), way([], 20))),
      ),
    ).toBe(10);
  });

  it("know that a piece goes beside none of the larger ones", () => {
    expect(
      boundOverSplits(material, [run(true, way([], 75)), run(true, way([], 75)), run(true, way([], 45))]),
    ).toBe(30);
  });

  it("go by length alone where not all ways of a run are known", () => {
    expect(
      boundOverSplits(material, [run(true, way([], 60)), run(false, way([], 60)), run(true, way([], 60))]),
    ).toBe(20);
  });

  it("add up what pieces cost", () => {
    expect(splitCost(material, way([0, 0], 30), bySize)).toBe(55);
    const chosen = [{ run: 1, split: way([0], 30) }];
    expect(boundByPieces(material, chosen, [run(true, way([], 50), way([], 30))], bySize)).toBe(80);
    expect(boundByPieces(material, chosen, [run(true, way([], 30.25))], bySize)).toBe(81);
  });

  it("buy the stock that goes on whole, and what the rest takes by length", () => {
    const chosen = [{ run: 1, split: way([0], 60) }];
    expect(boundByStock(material, chosen, [run(true, way([], 90), way([], 60))])).toBe(30);
    expect(boundByStock(scarce, chosen, [])).toBe(Infinity);
    expect(boundByStock(scarce, [{ run: 1, split: way([0, 0]) }], [])).toBe(Infinity);
    expect(boundByStock(scarce, [{ run: 1, split: way([0]) }], [])).toBe(10);
  });
});
