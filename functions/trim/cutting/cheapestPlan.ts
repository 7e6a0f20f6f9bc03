import { Budget } from "./budget";
import { divisionCost, type RunChoices } from "./choiceBound";
import { planFor, type ChosenPlan, type MadeUp } from "./chosenPlan";
import type { Division } from "./divisions";
import type { Material } from "./material";
import { costByLength } from "./pieceCost";
import { WaySearch } from "./waySearch";

/** A search that doesn't end takes about a second. */
const STEPS_IN_ALL = 2_000_000;

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
  const budget = new Budget(STEPS_IN_ALL);
  const ways = firstWays(material, runs);
  const isOneWay = runs.every(({ choices }) => choices.length === 1);
  if (isOneWay) return planFor(material, ways[0] ?? [], budget);
  const search = new WaySearch(material, runs, budget);
  for (const way of ways) search.try(way);
  search.learnWorths();
  search.improve();
  search.learnWorths();
  search.searchAll();
  return search.found;
};
