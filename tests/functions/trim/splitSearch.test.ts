import { Budget } from "../../../functions/trim/cutting/budget";
import { planForSplits, type SplitPlan, type ChosenSplit } from "../../../functions/trim/cutting/splitPlan";
import type { SplitOptions } from "../../../functions/trim/cutting/splitCosts";
import { materialOf, type Material } from "../../../functions/trim/cutting/material";
import { planWithinLimits, splitOptions } from "../../../functions/trim/cutting/planWithinLimits";
import type { TrimJob } from "../../../functions/trim/cutting/trimJob";
import { SplitSearch } from "../../../functions/trim/cutting/splitSearch";
import { randomFrom, wholeBetween, type Random } from "../../support/random";

/** Runs in whole inches that several stock lengths can split in several ways. */
const jobOf = (random: Random, runs: number, stocks: TrimJob["stocks"]): TrimJob => ({
  runs: Array.from({ length: runs }, (_, index) => ({
    number: index + 1,
    lengthFt: wholeBetween(random, 40, 420) / 12,
  })),
  stocks,
  lapIn: 2,
  kerfIn: 1 / 8,
  shortestIn: 6,
});

const endless = (lengthIn: number, price?: number) => ({
  lengthIn,
  limit: Infinity,
  ...(price !== undefined && { price }),
});

const FAMILIES = [
  ["stock of three lengths", [endless(96), endless(120), endless(144)]],
  ["stock of three prices", [endless(96, 7.4), endless(120, 9.1), endless(144, 11.9)]],
  ["a few offcuts", [{ lengthIn: 150, limit: 3 }, { lengthIn: 130, limit: 4 }, endless(120)]],
] as const;
const SEEDS = Array.from({ length: 20 }, (_, seed) => seed + 1);

interface Case {
  readonly material: Material;
  readonly runs: readonly SplitOptions[];
}

/** Few enough runs to try every split. */
const caseOf = (stocks: TrimJob["stocks"], seed: number): Case => {
  const job = jobOf(randomFrom(seed), 4, stocks);
  const material = materialOf(job);
  return { material, runs: splitOptions(job, material, Math.max(...stocks.map(({ lengthIn }) => lengthIn))) };
};

const everyChoice = ([first, ...others]: readonly SplitOptions[]): ChosenSplit[][] =>
  first
    ? everyChoice(others).flatMap((rest) => first.splits.map((split) => [{ run: first.run, split }, ...rest]))
    : [[]];

const sumOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);

const PLENTY = 10_000_000;

const costOfChoice = ({ material }: Case, chosen: readonly ChosenSplit[]): number =>
  planForSplits(material, chosen, new Budget(PLENTY))?.cost ?? Infinity;

const leastOfAll = (of: Case): number =>
  Math.min(...everyChoice(of.runs).map((chosen) => costOfChoice(of, chosen)));

/** The last split of each run, which is seldom a good one. */
const lastSplits = ({ runs }: Case): ChosenSplit[] =>
  runs.flatMap(({ run, splits }) => splits.slice(-1).map((split) => ({ run, split })));

describe.each(FAMILIES)("the splits of runs with %s", (_, stocks) => {
  const cases = SEEDS.map((seed) => caseOf(stocks, seed));
  const least = cases.map(leastOfAll);

  const searched = (of: Case): SplitPlan | undefined => {
    const search = new SplitSearch(of.material, of.runs, new Budget(PLENTY));
    search.searchAll();
    return search.found;
  };

  it("are searched to the cheapest of all, even past one that can't be cut", () => {
    expect(cases.map((of) => searched(of)?.cost)).toEqual(least);
  });

  it.each([300, 1_000, 3_000, 10_000])(
    "are bounded correctly where the search ends after %d steps",
    (steps) => {
      cases.forEach((of, index) => {
        const search = new SplitSearch(of.material, of.runs, new Budget(steps));
        search.try(lastSplits(of));
        search.learnDuals();
        search.searchAll();
        const { found } = search;
        expect(found?.cost ?? Infinity).toBeGreaterThanOrEqual(least[index] ?? NaN);
        expect(found?.bound ?? 0).toBeLessThanOrEqual(least[index] ?? NaN);
      });
    },
  );

  it("are improved until no change of one run lowers the cost", () => {
    for (const of of cases) {
      const search = new SplitSearch(of.material, of.runs, new Budget(PLENTY));
      search.try(lastSplits(of));
      search.improve();
      const { best } = search;
      if (!best) continue;
      const changed = of.runs.flatMap(({ run, splits }) =>
        splits.map((split) => best.chosen.map((each) => (each.run === run ? { run, split } : each))),
      );
      expect(best.cost).toBeLessThanOrEqual(Math.min(...changed.map((chosen) => costOfChoice(of, chosen))));
    }
  });
});

/** With the most steps allowed on average to search all splits: 2% more than when this was written. */
const ENDLESS = [
  [...FAMILIES[0], 10_960],
  [...FAMILIES[1], 19_120],
] as const;

it.each(ENDLESS)("the cheapest split with %s is proved in few steps", (_, stocks, mostSteps) => {
  let steps = 0;
  for (const seed of SEEDS) {
    const { material, runs } = caseOf(stocks, seed);
    const budget = new Budget(PLENTY);
    const search = new SplitSearch(material, runs, budget);
    search.searchAll();
    expect(search.found?.bound).toBe(search.found?.cost);
    steps += PLENTY - budget.left;
  }
  expect(steps / SEEDS.length).toBeLessThanOrEqual(mostSteps);
});

/** The total cost and bound of twenty jobs of eight runs: at least as good as when this was written. */
const LARGER = [
  [...FAMILIES[0], 1_296_542_526, 1_296_529_708],
  [...FAMILIES[1], 28_331, 26_912],
  [...FAMILIES[2], 1_416_653_814, 1_391_622_410],
] as const;

it.each(LARGER)(
  "jobs with %s that are too large to search stay as good as they were",
  (_, stocks, mostCost, leastBound) => {
    const plans = SEEDS.map((seed) => {
      const job = jobOf(randomFrom(seed), 8, stocks);
      return planWithinLimits(job, materialOf(job));
    });
    expect(sumOf(plans.map((plan) => plan?.cost ?? Infinity))).toBeLessThanOrEqual(mostCost);
    expect(sumOf(plans.map((plan) => plan?.bound ?? 0))).toBeGreaterThanOrEqual(leastBound);
  },
);
