import type { Budget } from "./budget";
import type { Problem } from "./packingProblem";

/** Pieces of one stock, by their place in the sizes. */
export interface Filling {
  readonly items: readonly number[];
  readonly worth: number;
}

/** What floating point may add to a bound. */
const ALLOWANCE = 1e-10;

/**
 * The filling of a stock that is worth most, where each size is worth something and there are only so many of it:
 * the best worth for its size first, and back as soon as the best of what is left can't make up for it. Undefined
 * where none is worth more than `moreThan`, "undecided" where the budget ends.
 */
export const worthiestFilling = (
  { sizes, counts }: Problem,
  worths: readonly number[],
  capacity: number,
  moreThan: number,
  budget: Budget,
): Filling | undefined | "undecided" => {
  const order = sizes
    .map((_, index) => index)
    .filter(
      (index) => (worths[index] ?? 0) > 0 && (counts[index] ?? 0) > 0 && (sizes[index] ?? 0) <= capacity,
    )
    .sort((a, b) => (worths[b] ?? 0) / (sizes[b] ?? 1) - (worths[a] ?? 0) / (sizes[a] ?? 1) || a - b);
  const size = order.map((index) => sizes[index] ?? 0);
  const worth = order.map((index) => worths[index] ?? 0);
  const count = order.map((index) => counts[index] ?? 0);
  /** The smallest size from each place on. */
  const leastFrom = [...size];
  for (let place = leastFrom.length - 2; place >= 0; place--)
    leastFrom[place] = Math.min(leastFrom[place] as number, leastFrom[place + 1] as number);
  const items: number[] = [];
  let bestItems: number[] | undefined;
  let best = moreThan;
  /** What the places from one on could be worth at the most: the best first, the last of them in part. */
  const mostFrom = (from: number, capacityLeft: number): number => {
    let [left, most] = [capacityLeft, 0];
    for (let place = from; place < order.length; place++) {
      const each = size[place] as number;
      const all = (count[place] as number) * each;
      if (all >= left) return most + (left / each) * (worth[place] as number);
      left -= all;
      most += (count[place] as number) * (worth[place] as number);
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
      const itsWorth = worth[place] as number;
      if (each > left) continue;
      if (value + mostFrom(place, left) <= best * (1 + ALLOWANCE)) return true;
      const most = Math.min(count[place] as number, Math.floor(left / each));
      for (let taken = 0; taken < most; taken++) items.push(order[place] as number);
      for (let taken = most; taken > 0; taken--) {
        if (!fill(place + 1, left - taken * each, value + taken * itsWorth)) return false;
        items.pop();
      }
    }
    return true;
  };
  if (!fill(0, capacity, 0)) return "undecided";
  return bestItems && { items: bestItems, worth: best };
};
