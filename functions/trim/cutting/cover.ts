import type { Stock } from "./packingProblem";

/** Above this many steps the fractional bound has to do. */
const MOST_STEPS = 10_000;

/** The least cost of part and whole stocks that together are worth the demand. */
const fractionalCost = (stocks: readonly WorthyStock[], from: number, demand: number): number => {
  let [left, cost] = [demand, 0];
  for (let index = from; index < stocks.length && left > 0; index++) {
    const { worth, cost: each, limit } = stocks[index] as WorthyStock;
    if (left <= limit * worth) return cost + (left / worth) * each;
    left -= limit * worth;
    cost += limit * each;
  }
  return left > 0 ? Infinity : cost;
};

interface WorthyStock extends Stock {
  readonly worth: number;
}

/** A whole number at least as large, where floating point may have made the cost a little too large. */
const wholeCost = (cost: number): number => Math.ceil(cost - 1e-9 * Math.max(1, cost));

/** Most jobs have one kind of stock, and ask very often. */
const costOfOnly = ({ cost, limit }: Stock, worth: number, demand: number): number => {
  if (demand <= 0) return 0;
  const needed = Math.ceil(demand / worth);
  return needed <= limit ? needed * cost : Infinity;
};

/**
 * The least cost of whole stocks that together are worth at least the demand: a bound for every dual feasible function of pieces
 * under which no stock holds more than its worth. Infinity where there are not enough of them.
 */
export const coveringCost = (stocks: readonly Stock[], worths: readonly number[], demand: number): number => {
  const [only] = stocks;
  if (only && stocks.length === 1) return costOfOnly(only, worths[0] ?? 0, demand);
  const worthy = stocks
    .map((stock, index) => ({ ...stock, worth: worths[index] ?? 0 }))
    .filter(({ worth, limit }) => worth > 0 && limit > 0)
    .sort((a, b) => a.cost / a.worth - b.cost / b.worth);
  const root = wholeCost(fractionalCost(worthy, 0, demand));
  let [best, steps] = [Infinity, 0];
  const search = (from: number, left: number, cost: number): void => {
    if (left <= 0) best = Math.min(best, cost);
    const stock = worthy[from];
    if (left <= 0 || !stock || best <= root) return;
    const most = Math.min(stock.limit, Math.ceil(left / stock.worth));
    for (let taken = most; taken >= 0 && steps < MOST_STEPS; taken--) {
      steps += 1;
      const [leftAfter, costAfter] = [left - taken * stock.worth, cost + taken * stock.cost];
      const costOfRest = fractionalCost(worthy, from + 1, leftAfter);
      if (costOfRest === Infinity) break;
      if (wholeCost(costAfter + costOfRest) < best) search(from + 1, leftAfter, costAfter);
    }
  };
  search(0, demand, 0);
  return steps < MOST_STEPS ? best : root;
};
