/** A kind of stock. Its capacity counts one kerf more than its length, and every piece a kerf of its own. */
export interface Stock {
  readonly capacity: number;
  /** What is made least; whole numbers. */
  readonly cost: number;
  /** How many there are; Infinity where there is no end of them. */
  readonly limit: number;
}

/** Sizes to cut, all different and the largest first, how many of each, and what they may be cut from. */
export interface Problem {
  readonly sizes: readonly number[];
  readonly counts: readonly number[];
  readonly stocks: readonly Stock[];
}

/** One stock length with what is cut from it. */
export interface Bin {
  /** Which of the problem's stocks. */
  readonly stock: number;
  /** Places in the problem's sizes, a place twice where two pieces are of that size. */
  readonly items: readonly number[];
}

export const costOf = ({ stocks }: Problem, bins: readonly Bin[]): number =>
  bins.reduce((sum, { stock }) => sum + (stocks[stock]?.cost ?? NaN), 0);

export const totalSize = ({ sizes, counts }: Problem): number =>
  sizes.reduce((sum, size, index) => sum + size * (counts[index] ?? 0), 0);

/** What is left to cut after some bins. */
export const without = (problem: Problem, bins: readonly Bin[]): Problem => {
  const counts = [...problem.counts];
  const limits = problem.stocks.map(({ limit }) => limit);
  for (const { stock, items } of bins) {
    limits[stock] = (limits[stock] ?? 0) - 1;
    for (const item of items) counts[item] = (counts[item] ?? 0) - 1;
  }
  return {
    ...problem,
    counts,
    stocks: problem.stocks.map((stock, index) => ({ ...stock, limit: limits[index] ?? 0 })),
  };
};
