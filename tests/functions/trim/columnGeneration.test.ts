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
import { endless, timesIn } from "../../support/cutting";

const enough = (): Budget => new Budget(1e6);

/** Pieces by size, largest first. */
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

/** Every choice of the available pieces, as a count of each size. */
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
const costOfUses = (problem: PackingProblem, { uses }: Relaxation): number =>
  uses.reduce((sum, { bin, times }) => sum + costOf(problem, [bin]) * times, 0);

/** Dual feasibility: no filling has a value above the cost of its stock, so the value of all pieces bounds every plan. */
const expectDualFeasible = (problem: PackingProblem, duals: readonly number[]): void => {
  for (const { capacity, cost, limit } of problem.stocks)
    if (limit > 0)
      for (const filling of everyFilling(problem, capacity))
        expect(dot(filling, duals)).toBeLessThanOrEqual(cost * (1 + 1e-7));
};

describe("the LP relaxation of a cutting plan", () => {
  const stocks = [endless(60, 10), endless(40, 7), { capacity: 60, cost: 1, limit: 0 }];

  it("has the least cost of fractional fillings: it equals the dual value of the pieces, and the duals are feasible", () => {
    fc.assert(
      fc.property(anyProblem(stocks), fc.boolean(), (problem, isKnown) => {
        const pool: Bin[] = [];
        if (isKnown) solveRelaxation(problem, pool, false, enough());
        const relaxed = solveRelaxation(problem, pool, false, enough());
        if (!relaxed) throw new Error("the budget ended");
        expectDualFeasible(problem, relaxed.duals);
        const value = dot(problem.counts, relaxed.duals);
        expect(costOfUses(problem, relaxed)).toBeCloseTo(value, 5);
        problem.sizes.forEach((_, size) => {
          const held = relaxed.uses.reduce(
            (sum, { bin, times }) => sum + times * (timesIn(problem, bin.items)[size] ?? 0),
            0,
          );
          expect(held).toBeGreaterThanOrEqual((problem.counts[size] ?? 0) - 1e-6);
        });
        expect(relaxed.uses.filter(({ bin }) => bin.stock === 2)).toEqual([]);
        for (const { bin } of relaxed.uses)
          expect(dot(timesIn(problem, bin.items), problem.sizes)).toBeLessThanOrEqual(
            problem.stocks[bin.stock]?.capacity ?? 0,
          );
      }),
    );
  });

  it("has the same cost with exchange columns, and then a larger piece never has a smaller dual", () => {
    fc.assert(
      fc.property(anyProblem(stocks), (problem) => {
        const relaxed = solveRelaxation(problem, [], true, enough());
        if (!relaxed) throw new Error("the budget ended");
        expectDualFeasible(problem, relaxed.duals);
        expect(costOfUses(problem, relaxed)).toBeCloseTo(dot(problem.counts, relaxed.duals), 5);
        relaxed.duals.slice(1).forEach((dual, index) => {
          expect(dual).toBeLessThanOrEqual((relaxed.duals[index] ?? 0) + 1e-6);
        });
      }),
    );
  });

  it("stops once its duals reach the bound asked for", () => {
    fc.assert(
      fc.property(anyProblem(stocks), fc.double({ min: 0.1, max: 0.999, noNaN: true }), (problem, share) => {
        const best = dot(problem.counts, solveRelaxation(problem, [], false, enough())?.duals ?? []);
        const relaxed = solveRelaxation(problem, [], false, enough(), { bound: share * best, cost: 0 });
        expectDualFeasible(problem, relaxed?.duals ?? []);
        expect(dot(problem.counts, relaxed?.duals ?? [])).toBeGreaterThanOrEqual(share * best * (1 - 1e-7));
      }),
    );
  });

  it("reuses the fillings in its pool whose pieces are available", () => {
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

  it("is undefined where a piece fits no stock, or the budget ends", () => {
    expect(solveRelaxation(problemOf({ 70: 1, 20: 1 }, stocks), [], false, enough())).toBeUndefined();
    const problem = problemOf({ 31: 4, 23: 5, 17: 6, 11: 7 }, stocks);
    for (const steps of [0, 1, 4, 8])
      expect(solveRelaxation(problem, [], false, new Budget(steps))).toBeUndefined();
  });
});

describe("best-fit decreasing", () => {
  const plans = (problem: PackingProblem): (readonly [number, readonly number[]])[][] =>
    bestFitDecreasing(problem).map((bins) =>
      bins.map(({ stock, items }) => [stock, items.map((item) => problem.sizes[item] ?? 0)] as const),
    );

  it("places the largest piece first, each where it leaves least", () => {
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

  it("considers every open stock", () => {
    expect(plans(problemOf({ 35: 1, 33: 1, 26: 1, 1: 1 }, [endless(60, 1)]))).toEqual([
      [
        [0, [35]],
        [0, [33, 26, 1]],
      ],
    ]);
  });

  it("prefers each stock in turn, and swaps it for a cheaper one that fits", () => {
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

  it("uses the cheapest stock where the preferred one is too short or runs out", () => {
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

  it("gives no plan where the limits leave too little", () => {
    expect(plans(problemOf({ 55: 2 }, [{ capacity: 60, cost: 1, limit: 1 }]))).toEqual([]);
    expect(plans(problemOf({ 55: 1 }, [{ capacity: 60, cost: 1, limit: 1 }]))).toEqual([[[0, [55]]]]);
  });

  it("holds every piece once, in available stock", () => {
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
            expect(dot(timesIn(problem, bin.items), problem.sizes)).toBeLessThanOrEqual(
              stocks[bin.stock]?.capacity ?? 0,
            );
        }
      }),
    );
  });
});

describe("lower bounds over all splits of the runs", () => {
  /** Stock of 120 with its kerf of 5, at 10. */
  const material: Material = { stocks: [endless(125, 10)], kerf: 5, objective: objectiveFor([]) };
  const scarce: Material = { ...material, stocks: [{ capacity: 125, cost: 10, limit: 1 }] };
  const split = (whole: readonly number[], ...cut: readonly number[]): Split => ({ whole, cut });
  const run = (isComplete: boolean, ...choices: readonly Split[]): SplitOptions => ({
    run: 1,
    leastSize: 65,
    splits: choices,
    isComplete,
  });
  const bySize = (size: number): number => size;

  it("add up the least that each run takes", () => {
    const half = run(true, split([], 60));
    // 60 and its kerf are over half of the stock.
    expect(boundOverSplits(material, [half, half, half])).toBe(30);
    expect(boundOverSplits(material, [run(true, split([0], 60)), run(true, split([0], 60))])).toBe(40);
    expect(
      boundOverSplits(
        material,
        Array.from({ length: 4 }, () => run(true, split([], 100), split([], 20))),
      ),
    ).toBe(10);
  });

  it("know that a piece fits next to none of the larger ones", () => {
    expect(
      boundOverSplits(material, [
        run(true, split([], 75)),
        run(true, split([], 75)),
        run(true, split([], 45)),
      ]),
    ).toBe(30);
  });

  it("use length alone where not all splits of a run are known", () => {
    expect(
      boundOverSplits(material, [
        run(true, split([], 60)),
        run(false, split([], 60)),
        run(true, split([], 60)),
      ]),
    ).toBe(20);
  });

  it("add up the cost of the pieces", () => {
    expect(splitCost(material, split([0, 0], 30), bySize)).toBe(55);
    const chosen = [{ run: 1, split: split([0], 30) }];
    expect(boundByPieces(material, chosen, [run(true, split([], 50), split([], 30))], bySize)).toBe(80);
    expect(boundByPieces(material, chosen, [run(true, split([], 30.25))], bySize)).toBe(81);
  });

  it("add the stock used whole to what the rest takes by length", () => {
    const chosen = [{ run: 1, split: split([0], 60) }];
    expect(boundByStock(material, chosen, [run(true, split([], 90), split([], 60))])).toBe(30);
    expect(boundByStock(scarce, chosen, [])).toBe(Infinity);
    expect(boundByStock(scarce, [{ run: 1, split: split([0, 0]) }], [])).toBe(Infinity);
    expect(boundByStock(scarce, [{ run: 1, split: split([0]) }], [])).toBe(10);
  });
});
