import type { Budget } from "./budget";

/** The pieces of one stock length, as indexes into the sizes, and the length left over. */
export interface BinFilling {
  readonly items: readonly number[];
  readonly slack: number;
}

export interface Remaining {
  readonly sizes: readonly number[];
  readonly counts: number[];
  /** The total size of all pieces. */
  readonly total: number;
}

/** Whether an uncut piece at this index or of a larger size lies between two sizes. */
const isFreeBetween = (
  sizes: readonly number[],
  free: readonly number[],
  from: number,
  least: number,
  most: number,
): boolean => {
  for (let larger = from; larger >= 0; larger--) {
    const size = sizes[larger] as number;
    if (size > most) return false;
    if (size >= least && (free[larger] as number) > 0) return true;
  }
  return false;
};

/**
 * The dominance test: whether one larger uncut piece can replace one or two pieces of the filling within its slack. A
 * dominated filling needs no search, since every plan stays a plan with the pieces exchanged.
 */
const isDominated = (
  sizes: readonly number[],
  free: readonly number[],
  items: readonly number[],
  slack: number,
): boolean => {
  // The first piece is the largest of all.
  for (let i = 1; i < items.length; i++) {
    const item = items[i] as number;
    const one = sizes[item] as number;
    if (item !== items[i - 1] && isFreeBetween(sizes, free, item - 1, one, one + slack)) return true;
    for (let j = i + 1; j < items.length; j++) {
      const two = one + (sizes[items[j] as number] as number);
      if (isFreeBetween(sizes, free, item, two, two + slack)) return true;
    }
  }
  return false;
};

/** The first index whose size is at most this. */
const firstWithin = (sizes: readonly number[], most: number): number => {
  let [from, to] = [0, sizes.length];
  while (from < to) {
    const middle = (from + to) >> 1;
    if ((sizes[middle] as number) > most) from = middle + 1;
    else to = middle;
  }
  return from;
};

/**
 * The undominated, maximal fillings of a stock that contain `first` and leave at most `mostSlack`, least slack first: the
 * completions of bin completion (Martello and Toth's dominance, from memory). Undefined where the budget ends. The counts
 * change during the search and are restored at the end.
 */
export const binFillings = (
  { sizes, counts, total }: Remaining,
  first: number,
  capacity: number,
  mostSlack: number,
  budget: Budget,
): BinFilling[] | undefined => {
  const items: number[] = [first];
  const found: BinFilling[] = [];
  let last = sizes.length - 1;
  while (counts[last] === 0) last -= 1;

  const smallestLeft = (): number => {
    for (let place = last; place >= first; place--)
      if ((counts[place] as number) > 0) return sizes[place] as number;
    return Infinity;
  };
  /** `rest` is the total size of the pieces from an index on. */
  const fill = (from: number, left: number, rest: number): boolean => {
    if (!budget.take()) return false;
    if (left < smallestLeft()) {
      if (left <= mostSlack && !isDominated(sizes, counts, items, left))
        found.push({ items: [...items], slack: left });
      return true;
    }
    const firstThatFits = firstWithin(sizes, left);
    for (let place = from; place <= last && left - rest <= mostSlack; place++) {
      const count = counts[place] as number;
      if (count === 0) continue;
      const size = sizes[place] as number;
      if (place >= firstThatFits) {
        counts[place] = count - 1;
        items.push(place);
        const isDone = fill(place, left - size, rest - size);
        items.pop();
        counts[place] = count;
        if (!isDone) return false;
      }
      rest -= size * count;
    }
    return true;
  };
  const firstSize = sizes[first] as number;
  const count = counts[first] as number;
  counts[first] = count - 1;
  const isExhausted = fill(first, capacity - firstSize, total - firstSize);
  counts[first] = count;
  return isExhausted ? found.sort((a, b) => a.slack - b.slack) : undefined;
};
