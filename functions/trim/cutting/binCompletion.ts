import type { Budget } from "./budget";
import { completions, type Completion } from "./binFillings";
import { coveringCost } from "./cover";
import { totalSize, type Bin, type Problem } from "./packingProblem";

/** A plan that costs no more than was asked; none, and that is proved; or the budget ended first. */
export type Outcome = readonly Bin[] | "none" | "undecided";

interface Choice extends Completion {
  readonly stock: number;
  /** What the slack costs, where stock is bought at its best price per length. */
  readonly loss: number;
}

/**
 * Looks for a plan of at most this cost: the largest piece first, every completion of a stock around it in turn, the
 * least loss first. What was found impossible once isn't tried again.
 */
export const planWithin = (problem: Problem, mostCost: number, budget: Budget): Outcome => {
  const { sizes, stocks } = problem;
  const counts = [...problem.counts];
  const limits = stocks.map(({ limit }) => limit);
  const capacities = stocks.map(({ capacity }) => capacity);
  const bestPrice = Math.min(...stocks.map(({ cost, capacity }) => cost / capacity));
  const isLimited = limits.some(Number.isFinite);
  const bins: Bin[] = [];
  /** The most cost left at which these pieces and limits were found impossible. */
  const impossible = new Map<string, number>();
  const key = (): string => String.fromCharCode.apply(null, isLimited ? [...counts, ...limits] : counts);
  const holding = new Map<number, number>();

  const costToHold = (size: number): number => {
    const known = holding.get(size);
    if (known !== undefined) return known;
    const cost = coveringCost(stocks, capacities, size);
    holding.set(size, cost);
    return cost;
  };

  const choicesFor = (first: number, left: number, costLeft: number): Choice[] | undefined => {
    const choices: Choice[] = [];
    for (const [stock, { capacity, cost }] of stocks.entries()) {
      if ((limits[stock] ?? 0) <= 0 || cost > costLeft || capacity < (sizes[first] ?? 0)) continue;
      const mostSlack = (costLeft - left * bestPrice - (cost - capacity * bestPrice)) / bestPrice;
      const found = completions(
        { sizes, counts, total: left },
        first,
        capacity,
        mostSlack + 1e-6 * capacity,
        budget,
      );
      if (!found) return undefined;
      for (const { items, slack } of found)
        choices.push({ items, slack, stock, loss: cost - (capacity - slack) * bestPrice });
    }
    return stocks.length > 1 ? choices.sort((a, b) => a.loss - b.loss) : choices;
  };

  const search = (from: number, left: number, costLeft: number): boolean | undefined => {
    if (left === 0) return true;
    if (costToHold(left) > costLeft) return false;
    if (!budget.take()) return undefined;
    if (impossible.size > 0 && costLeft <= (impossible.get(key()) ?? -1)) return false;
    let first = from;
    while ((counts[first] ?? 0) === 0) first += 1;
    const choices = choicesFor(first, left, costLeft);
    if (!choices) return undefined;
    for (const { stock, items, slack } of choices) {
      const { capacity, cost } = stocks[stock] as (typeof stocks)[number];
      for (const item of items) counts[item] = (counts[item] ?? 0) - 1;
      limits[stock] = (limits[stock] ?? 0) - 1;
      bins.push({ stock, items });
      const found = search(first, left - (capacity - slack), costLeft - cost);
      if (found !== false) return found;
      bins.pop();
      limits[stock] = (limits[stock] ?? 0) + 1;
      for (const item of items) counts[item] = (counts[item] ?? 0) + 1;
    }
    impossible.set(key(), costLeft);
    return false;
  };
  const found = search(0, totalSize(problem), mostCost);
  return found === true ? bins : found === false ? "none" : "undecided";
};
