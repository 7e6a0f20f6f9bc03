import { Budget } from "./budget";
import { splitCost, type SplitOptions } from "./splitCosts";
import { planForSplits, type SplitPlan, type ChosenSplit } from "./splitPlan";
import type { Split } from "./splits";
import type { Material } from "./material";
import { costByLength } from "./pieceCost";
import { SplitSearch } from "./splitSearch";

/** Large jobs with only one split per run are proved within a second. */
const STEPS_WITHOUT_CHOICE = 2_000_000;
/** Most searches over all splits are too large to finish; this many steps took at most about 0.3 s. */
const STEPS_OVER_ALL_SPLITS = 40_000;

const least = <T>(items: readonly T[], valueOf: (item: T) => number): T =>
  items.reduce((a, b) => (valueOf(b) < valueOf(a) ? b : a));

/** The first choices of splits: each run at its least cost by length, then each with as much as possible of one stock. */
const initialSplits = (material: Material, runs: readonly SplitOptions[]): ChosenSplit[][] => {
  const splitsBy = (valueOf: (split: Split) => number): ChosenSplit[] =>
    runs.map(({ run, splits }) => ({ run, split: least(splits, valueOf) }));
  const byLength = costByLength(material);
  return [
    splitsBy((split) => splitCost(material, split, byLength)),
    ...material.stocks.map((_, preferred) =>
      splitsBy(({ whole }) => -whole.filter((stock) => stock === preferred).length),
    ),
  ];
};

/**
 * The cheapest plan found over all splits of the runs, and a lower bound on every plan. Undefined where no plan within
 * the limits was found.
 */
export const cheapestPlan = (material: Material, runs: readonly SplitOptions[]): SplitPlan | undefined => {
  const initial = initialSplits(material, runs);
  const hasNoChoice = runs.every(({ splits }) => splits.length === 1);
  if (hasNoChoice) return planForSplits(material, initial[0] ?? [], new Budget(STEPS_WITHOUT_CHOICE));
  const search = new SplitSearch(material, runs, new Budget(STEPS_OVER_ALL_SPLITS));
  for (const chosen of initial) search.try(chosen);
  search.learnDuals();
  search.improve();
  search.learnDuals();
  search.searchAll();
  return search.found;
};
