/** One stock length. Its capacity includes one extra kerf, since every piece is counted with a kerf of its own. */
export interface Stock {
  readonly capacity: number;
  /** What the plan minimizes; a whole number. */
  readonly cost: number;
  /** How many are available; Infinity for no limit. */
  readonly limit: number;
}

/**
 * A one-dimensional cutting-stock problem: the distinct sizes, largest first, the number of pieces of each, and the
 * stock lengths to cut them from.
 */
export interface PackingProblem {
  readonly sizes: readonly number[];
  readonly counts: readonly number[];
  readonly stocks: readonly Stock[];
}

/** One stock length with the pieces cut from it: a cutting pattern put to use. */
export interface Bin {
  /** Index into the problem's stocks. */
  readonly stock: number;
  /** Indexes into the problem's sizes, repeated where several pieces have that size. */
  readonly items: readonly number[];
}

export const costOf = ({ stocks }: PackingProblem, bins: readonly Bin[]): number =>
  bins.reduce((sum, { stock }) => sum + (stocks[stock]?.cost ?? NaN), 0);

export const totalSize = ({ sizes, counts }: PackingProblem): number =>
  sizes.reduce((sum, size, index) => sum + size * (counts[index] ?? 0), 0);

/** The problem that is left after some bins are cut. */
export const without = (problem: PackingProblem, bins: readonly Bin[]): PackingProblem => {
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
