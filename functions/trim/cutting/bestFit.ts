import type { Bin, Problem } from "./packingProblem";

interface OpenBin {
  stock: number;
  items: number[];
  left: number;
}

/** The cheapest stock, of those still there, that what is in a bin goes into. */
const cheapestFor = (problem: Problem, size: number, limits: readonly number[]): number => {
  let best = -1;
  problem.stocks.forEach(({ capacity, cost }, index) => {
    const isThere = (limits[index] ?? 0) > 0 && capacity >= size;
    if (isThere && (best < 0 || cost < (problem.stocks[best]?.cost ?? 0))) best = index;
  });
  return best;
};

/** A bin may be swapped for a cheaper stock that its pieces go into as well. */
const tightened = (problem: Problem, bins: readonly OpenBin[], limits: number[]): Bin[] =>
  bins.map(({ stock, items, left }) => {
    const size = (problem.stocks[stock]?.capacity ?? 0) - left;
    limits[stock] = (limits[stock] ?? 0) + 1;
    const cheapest = cheapestFor(problem, size, limits);
    limits[cheapest] = (limits[cheapest] ?? 0) - 1;
    return { stock: cheapest, items };
  });

/** Largest first, each where it leaves least; a new bin is of the stock preferred, or else the cheapest that it fits. */
const bestFit = (problem: Problem, preferred: number): Bin[] | undefined => {
  const limits = problem.stocks.map(({ limit }) => limit);
  const bins: OpenBin[] = [];
  for (const [item, size] of problem.sizes.entries())
    for (let copy = 0; copy < (problem.counts[item] ?? 0); copy++) {
      let best: OpenBin | undefined;
      for (const bin of bins) if (bin.left >= size && (!best || bin.left < best.left)) best = bin;
      if (!best) {
        const isPreferred =
          (problem.stocks[preferred]?.capacity ?? 0) >= size && (limits[preferred] ?? 0) > 0;
        const stock = isPreferred ? preferred : cheapestFor(problem, size, limits);
        if (stock < 0) return undefined;
        limits[stock] = (limits[stock] ?? 0) - 1;
        best = { stock, items: [], left: problem.stocks[stock]?.capacity ?? 0 };
        bins.push(best);
      }
      best.items.push(item);
      best.left -= size;
    }
  return tightened(problem, bins, limits);
};

/** Best-fit-decreasing once with each stock preferred: plans to begin with. None where the limits stop it. */
export const bestFits = (problem: Problem): Bin[][] =>
  problem.stocks.flatMap((_, preferred) => {
    const bins = bestFit(problem, preferred);
    return bins ? [bins] : [];
  });
