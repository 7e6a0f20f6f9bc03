import type { Budget } from "./budget";
import { binFillings, type BinFilling } from "./binFillings";
import { knapsackCoverCost } from "./knapsackCover";
import { totalSize, type Bin, type PackingProblem } from "./packingProblem";

/** A plan within the cost; "none", which is proved; or "undecided", where the budget ended first. */
export type Outcome = readonly Bin[] | "none" | "undecided";

interface StockFilling extends BinFilling {
  readonly stock: number;
  /** The cost of the slack, at the best price per length of all stock. */
  readonly loss: number;
}

/**
 * Bin completion: searches for a plan of at most this cost. It takes the largest piece and tries the fillings of a stock
 * around it, the least loss first. It remembers which remainders are impossible.
 */
export const planWithin = (problem: PackingProblem, mostCost: number, budget: Budget): Outcome => {
  const { sizes, stocks } = problem;
  const counts = [...problem.counts];
  const limits = stocks.map(({ limit }) => limit);
  const capacities = stocks.map(({ capacity }) => capacity);
  const bestPrice = Math.min(...stocks.map(({ cost, capacity }) => cost / capacity));
  const isLimited = limits.some(Number.isFinite);
  const bins: Bin[] = [];
  /** The highest remaining cost at which these pieces and limits were proved impossible. */
  const impossible = new Map<string, number>();
  const key = (): string => String.fromCharCode.apply(null, isLimited ? [...counts, ...limits] : counts);
  const coverCosts = new Map<number, number>();

  const costToCover = (size: number): number => {
    const known = coverCosts.get(size);
    if (known !== undefined) return known;
    const cost = knapsackCoverCost(stocks, capacities, size);
    coverCosts.set(size, cost);
    return cost;
  };

  const fillingsFor = (first: number, left: number, costLeft: number): StockFilling[] | undefined => {
    const fillings: StockFilling[] = [];
    for (const [stock, { capacity, cost }] of stocks.entries()) {
      if ((limits[stock] ?? 0) <= 0 || cost > costLeft || capacity < (sizes[first] ?? 0)) continue;
      const mostSlack = (costLeft - left * bestPrice - (cost - capacity * bestPrice)) / bestPrice;
      const found = binFillings(
        { sizes, counts, total: left },
        first,
        capacity,
        mostSlack + 1e-6 * capacity,
        budget,
      );
      if (!found) return undefined;
      for (const { items, slack } of found)
        fillings.push({ items, slack, stock, loss: cost - (capacity - slack) * bestPrice });
    }
    return stocks.length > 1 ? fillings.sort((a, b) => a.loss - b.loss) : fillings;
  };

  const search = (from: number, left: number, costLeft: number): boolean | undefined => {
    if (left === 0) return true;
    if (costToCover(left) > costLeft) return false;
    if (!budget.take()) return undefined;
    if (impossible.size > 0 && costLeft <= (impossible.get(key()) ?? -1)) return false;
    let first = from;
    while ((counts[first] ?? 0) === 0) first += 1;
    const fillings = fillingsFor(first, left, costLeft);
    if (!fillings) return undefined;
    for (const { stock, items, slack } of fillings) {
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
