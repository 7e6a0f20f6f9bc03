import type { Budget } from "./budget";

/** What may go into one stock beside its largest piece. */
export interface Completion {
  readonly items: readonly number[];
  readonly slack: number;
}

export interface Remaining {
  readonly sizes: readonly number[];
  readonly counts: number[];
  /** What all the pieces come to. */
  readonly total: number;
}

/** Whether a piece still to be cut, at this place or of a larger size, is between two sizes. */
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
 * Whether some pieces of the completion could give way to one larger piece that is still to be cut, which then takes
 * no more than the slack. Such a completion needs no trying: with the pieces exchanged, any plan stays a plan.
 */
const isDominated = (
  sizes: readonly number[],
  free: readonly number[],
  items: readonly number[],
  slack: number,
): boolean => {
  // The first piece is the largest there is.
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

/** The first place whose size is at most so much. */
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
 * Every way to fill a stock of this capacity that begins with `first`, to which nothing can be added, that leaves at
 * most `mostSlack` and that no other dominates; the least slack first. Undefined where the budget ends. Pieces are taken
 * from the counts and put back.
 */
export const completions = (
  { sizes, counts, total }: Remaining,
  first: number,
  capacity: number,
  mostSlack: number,
  budget: Budget,
): Completion[] | undefined => {
  const items: number[] = [first];
  const found: Completion[] = [];
  let last = sizes.length - 1;
  while (counts[last] === 0) last -= 1;

  const smallestLeft = (): number => {
    for (let place = last; place >= first; place--)
      if ((counts[place] as number) > 0) return sizes[place] as number;
    return Infinity;
  };
  /** `rest` is what the pieces from a place on come to. */
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
        const goesOn = fill(place, left - size, rest - size);
        items.pop();
        counts[place] = count;
        if (!goesOn) return false;
      }
      rest -= size * count;
    }
    return true;
  };
  const firstSize = sizes[first] as number;
  const count = counts[first] as number;
  counts[first] = count - 1;
  const isWhole = fill(first, capacity - firstSize, total - firstSize);
  counts[first] = count;
  return isWhole ? found.sort((a, b) => a.slack - b.slack) : undefined;
};
