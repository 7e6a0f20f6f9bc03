import type { Budget } from "./budget";
import type { PackingProblem } from "./packingProblem";

/** A cutting pattern: the pieces of one stock, as indexes into the sizes, and their total value. */
export interface Filling {
  readonly items: readonly number[];
  readonly value: number;
}

/** Rounding error allowed in a bound. */
const ALLOWANCE = 1e-10;

/**
 * The filling of a stock with the highest value: a bounded knapsack, and the pricing problem of column generation. Branch
 * and bound in order of value per size, with the bound of the fractional knapsack. Undefined where no filling has a
 * value above `moreThan`; "undecided" where the budget ends.
 */
export const bestFilling = (
  { sizes, counts }: PackingProblem,
  values: readonly number[],
  capacity: number,
  moreThan: number,
  budget: Budget,
): Filling | undefined | "undecided" => {
  const order = sizes
    .map((_, index) => index)
    .filter(
      (index) => (values[index] ?? 0) > 0 && (counts[index] ?? 0) > 0 && (sizes[index] ?? 0) <= capacity,
    )
    .sort((a, b) => (values[b] ?? 0) / (sizes[b] ?? 1) - (values[a] ?? 0) / (sizes[a] ?? 1) || a - b);
  const size = order.map((index) => sizes[index] ?? 0);
  const valueOf = order.map((index) => values[index] ?? 0);
  const count = order.map((index) => counts[index] ?? 0);
  /** The smallest size from each position on. */
  const leastFrom = [...size];
  for (let place = leastFrom.length - 2; place >= 0; place--)
    leastFrom[place] = Math.min(leastFrom[place] as number, leastFrom[place + 1] as number);
  const items: number[] = [];
  let bestItems: number[] | undefined;
  let best = moreThan;
  /** The bound of the fractional knapsack over the positions from one on. */
  const mostFrom = (from: number, capacityLeft: number): number => {
    let [left, most] = [capacityLeft, 0];
    for (let place = from; place < order.length; place++) {
      const each = size[place] as number;
      const all = (count[place] as number) * each;
      if (all >= left) return most + (left / each) * (valueOf[place] as number);
      left -= all;
      most += (count[place] as number) * (valueOf[place] as number);
    }
    return most;
  };
  const fill = (from: number, left: number, value: number): boolean => {
    if (!budget.take()) return false;
    if (value > best) {
      best = value;
      bestItems = [...items];
    }
    for (let place = from; place < order.length && left >= (leastFrom[place] as number); place++) {
      const each = size[place] as number;
      const itsValue = valueOf[place] as number;
      if (each > left) continue;
      if (value + mostFrom(place, left) <= best * (1 + ALLOWANCE)) return true;
      const most = Math.min(count[place] as number, Math.floor(left / each));
      for (let taken = 0; taken < most; taken++) items.push(order[place] as number);
      for (let taken = most; taken > 0; taken--) {
        if (!fill(place + 1, left - taken * each, value + taken * itsValue)) return false;
        items.pop();
      }
    }
    return true;
  };
  if (!fill(0, capacity, 0)) return "undecided";
  return bestItems && { items: bestItems, value: best };
};
