import type { Budget } from "./budget";

/** What may go into one stock beside its largest piece. */
export interface Completion {
  readonly items: readonly number[];
  readonly slack: number;
}

export interface Remaining {
  readonly sizes: readonly number[];
  readonly counts: readonly number[];
}

/**
 * Whether some pieces of the completion could give way to one larger piece that is still to be cut, which then takes
 * no more than the slack. Such a completion needs no trying: with the pieces exchanged, any plan stays a plan.
 */
const isDominated = (
  { sizes }: Remaining,
  free: readonly number[],
  items: readonly number[],
  slack: number,
) => {
  const canTake = (size: number, isSingle: boolean): boolean => {
    for (let larger = 0; larger < sizes.length; larger++) {
      const larges = sizes[larger] ?? 0;
      if (larges < size || (isSingle && larges === size)) return false;
      if ((free[larger] ?? 0) > 0 && larges <= size + slack) return true;
    }
    return false;
  };
  // The first piece is the largest there is.
  for (let i = 1; i < items.length; i++) {
    const one = sizes[items[i] ?? 0] ?? 0;
    if (items[i] !== items[i - 1] && canTake(one, true)) return true;
    for (let j = i + 1; j < items.length; j++) {
      if (canTake(one + (sizes[items[j] ?? 0] ?? 0), false)) return true;
    }
  }
  return false;
};

/**
 * Every way to fill a stock of this capacity that begins with `first`, to which nothing can be added, that leaves at
 * most `mostSlack` and that no other dominates; the least slack first. Undefined where the budget ends.
 */
export const completions = (
  remaining: Remaining,
  first: number,
  capacity: number,
  mostSlack: number,
  budget: Budget,
): Completion[] | undefined => {
  const { sizes } = remaining;
  const free = [...remaining.counts];
  let last = sizes.length - 1;
  while (last >= 0 && (free[last] ?? 0) === 0) last -= 1;
  const items: number[] = [];
  const found: Completion[] = [];
  /** The largest sum of pieces from `index` on is not known; their total is. */
  const sumFrom = new Array<number>(sizes.length + 1).fill(0);
  for (let index = sizes.length - 1; index >= 0; index--)
    sumFrom[index] = (sumFrom[index + 1] ?? 0) + (sizes[index] ?? 0) * (free[index] ?? 0);

  const smallestFree = (): number => {
    for (let index = last; index >= 0; index--) if ((free[index] ?? 0) > 0) return sizes[index] ?? 0;
    return Infinity;
  };
  const fill = (from: number, left: number): boolean => {
    if (!budget.take()) return false;
    if (left <= mostSlack && left < smallestFree() && !isDominated(remaining, free, items, left))
      found.push({ items: [...items], slack: left });
    for (let index = from; index <= last; index++) {
      if (left - (sumFrom[index] ?? 0) > mostSlack) break;
      const size = sizes[index] ?? 0;
      if ((free[index] ?? 0) === 0 || size > left) continue;
      free[index] = (free[index] ?? 0) - 1;
      items.push(index);
      const goesOn = fill(index, left - size);
      items.pop();
      free[index] = (free[index] ?? 0) + 1;
      if (!goesOn) return false;
    }
    return true;
  };
  free[first] = (free[first] ?? 0) - 1;
  items.push(first);
  const isWhole = fill(first, capacity - (sizes[first] ?? 0));
  return isWhole ? found.sort((a, b) => a.slack - b.slack) : undefined;
};
