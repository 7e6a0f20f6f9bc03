import { Budget } from "./budget";
import { divisionCost, type RunChoices } from "./choiceBound";
import { planFor, type ChosenPlan, type MadeUp } from "./chosenPlan";
import type { Division } from "./divisions";
import type { Material } from "./material";
import { costByLength } from "./pieceCost";
import { WaySearch } from "./waySearch";

/** Large sets that are made up in one way only are proved within a second. */
const STEPS_OF_ONE_WAY = 2_000_000;
/** Ways are so many that most searches over them never end: so many steps took at most about 0.3 s. */
const STEPS_OF_ALL_WAYS = 40_000;

const least = <T>(items: readonly T[], valueOf: (item: T) => number): T =>
  items.reduce((a, b) => (valueOf(b) < valueOf(a) ? b : a));

/** Ways to begin with: each run as cheap as by length it could be, and with as much as may be of one stock. */
const firstWays = (material: Material, runs: readonly RunChoices[]): MadeUp[][] => {
  const wayBy = (valueOf: (division: Division) => number): MadeUp[] =>
    runs.map(({ run, choices }) => ({ run, division: least(choices, valueOf) }));
  const byLength = costByLength(material);
  return [
    wayBy((division) => divisionCost(material, division, byLength)),
    ...material.stocks.map((_, preferred) =>
      wayBy(({ whole }) => -whole.filter((stock) => stock === preferred).length),
    ),
  ];
};

/**
 * The cheapest plan of all ways to make up the runs, and the least that any could cost. Undefined where the limits
 * leave none, or none was found.
 */
export const cheapestPlan = (material: Material, runs: readonly RunChoices[]): ChosenPlan | undefined => {
  const ways = firstWays(material, runs);
  const isOneWay = runs.every(({ choices }) => choices.length === 1);
  if (isOneWay) return planFor(material, ways[0] ?? [], new Budget(STEPS_OF_ONE_WAY));
  const search = new WaySearch(material, runs, new Budget(STEPS_OF_ALL_WAYS));
  for (const way of ways) search.try(way);
  search.learnWorths();
  search.improve();
  search.learnWorths();
  search.searchAll();
  return search.found;
};
