import type { Stock } from "./packingProblem";

/** Beyond this many steps the fractional bound is the answer. */
const MOST_STEPS = 10_000;

/** The LP bound of the covering knapsack: stocks may be bought in part. */
const fractionalCost = (stocks: readonly ValuedStock[], from: number, demand: number): number => {
  let [left, cost] = [demand, 0];
  for (let index = from; index < stocks.length && left > 0; index++) {
    const { value, cost: each, limit } = stocks[index] as ValuedStock;
    if (left <= limit * value) return cost + (left / value) * each;
    left -= limit * value;
    cost += limit * each;
  }
  return left > 0 ? Infinity : cost;
};

interface ValuedStock extends Stock {
  readonly value: number;
}

/** The whole cost at or above one that may be slightly too large by rounding error. */
const wholeCost = (cost: number): number => Math.ceil(cost - 1e-9 * Math.max(1, cost));

/** Most jobs have one stock length, and call this very often. */
const costOfOnly = ({ cost, limit }: Stock, value: number, demand: number): number => {
  if (demand <= 0) return 0;
  const needed = Math.ceil(demand / value);
  return needed <= limit ? needed * cost : Infinity;
};

/**
 * The covering (minimum) knapsack: the least cost of whole stocks whose values add up to at least the demand, by branch
 * and bound. It bounds a plan from below wherever the pieces are valued so that no stock holds more than its own value.
 * Infinity where there is not enough stock.
 */
export const knapsackCoverCost = (
  stocks: readonly Stock[],
  values: readonly number[],
  demand: number,
): number => {
  const [only] = stocks;
  if (only && stocks.length === 1) return costOfOnly(only, values[0] ?? 0, demand);
  const valued = stocks
    .map((stock, index) => ({ ...stock, value: values[index] ?? 0 }))
    .filter(({ value, limit }) => value > 0 && limit > 0)
    .sort((a, b) => a.cost / a.value - b.cost / b.value);
  const root = wholeCost(fractionalCost(valued, 0, demand));
  let [best, steps] = [Infinity, 0];
  const search = (from: number, left: number, cost: number): void => {
    if (left <= 0) best = Math.min(best, cost);
    const stock = valued[from];
    if (left <= 0 || !stock || best <= root) return;
    const most = Math.min(stock.limit, Math.ceil(left / stock.value));
    for (let taken = most; taken >= 0 && steps < MOST_STEPS; taken--) {
      steps += 1;
      const [leftAfter, costAfter] = [left - taken * stock.value, cost + taken * stock.cost];
      const costOfRest = fractionalCost(valued, from + 1, leftAfter);
      if (costOfRest === Infinity) break;
      if (wholeCost(costAfter + costOfRest) < best) search(from + 1, leftAfter, costAfter);
    }
  };
  search(0, demand, 0);
  return steps < MOST_STEPS ? best : root;
};
