import type { MadeUp } from "./chosenPlan";
import { costOfWhole, stocksAfter } from "./chosenPlan";
import { coveringCost } from "./cover";
import type { Division } from "./divisions";
import { boundByWeighing } from "./lowerBound";
import type { Material } from "./material";
import type { Weighing } from "./weighings";

/** A run with the ways in which it can be made up. */
export interface RunChoices {
  readonly run: number;
  /** The same list for runs that are alike. */
  readonly choices: readonly Division[];
}

const sumOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);

/** What a division holds by a weighing. */
const weightOf = ({ stocks, kerf }: Material, { whole, cut }: Division, weigh: Weighing): number =>
  sumOf(whole.map((stock) => weigh(stocks[stock]?.capacity ?? 0))) +
  sumOf(cut.map((marks) => weigh(marks + kerf)));

const leastWeight = (material: Material, choices: readonly Division[], weigh: Weighing): number =>
  Math.min(...choices.map((division) => weightOf(material, division, weigh)));

/** What a division costs where every piece that is cut could be bought by length, at the best price of all. */
export const costByLength = ({ stocks, kerf }: Material, { whole, cut }: Division): number => {
  const bestPrice = Math.min(...stocks.map(({ cost, capacity }) => cost / capacity));
  return (
    sumOf(whole.map((stock) => stocks[stock]?.cost ?? 0)) +
    bestPrice * sumOf(cut.map((marks) => marks + kerf))
  );
};

const leastByLength = (material: Material, choices: readonly Division[]): number =>
  Math.min(...choices.map((division) => costByLength(material, division)));

/** What floating point may add. */
const wholeCost = (cost: number): number => Math.ceil(cost * (1 - 1e-12));

/** No plan costs less, whichever way each run is made up. */
export const choiceBound = (material: Material, runs: readonly RunChoices[]): number => {
  const sizes = runs.flatMap(({ choices }) =>
    choices.flatMap(({ cut }) => cut.map((marks) => marks + material.kerf)),
  );
  const byWeighing = boundByWeighing(material.stocks, [...new Set(sizes)], (weigh) =>
    sumOf(runs.map(({ choices }) => leastWeight(material, choices, weigh))),
  );
  return Math.max(byWeighing, wholeCost(sumOf(runs.map(({ choices }) => leastByLength(material, choices)))));
};

/** No plan costs less in which some runs are made up so. Infinity where the stock doesn't do. */
export const boundWith = (
  material: Material,
  madeUp: readonly MadeUp[],
  rest: readonly RunChoices[],
): number => {
  const left = stocksAfter(material.stocks, madeUp);
  if (!left) return Infinity;
  const length: Weighing = (size) => size;
  const demand =
    sumOf(madeUp.map(({ division }) => weightOf(material, { ...division, whole: [] }, length))) +
    sumOf(rest.map(({ choices }) => leastWeight(material, choices, length)));
  const capacities = material.stocks.map(({ capacity }) => capacity);
  const byLength =
    sumOf(madeUp.map(({ division }) => costByLength(material, division))) +
    sumOf(rest.map(({ choices }) => leastByLength(material, choices)));
  return Math.max(
    wholeCost(byLength),
    costOfWhole(material.stocks, madeUp) + coveringCost(left, capacities, demand),
  );
};
