import type { Bin, PackingProblem } from "./packingProblem";

interface OpenBin {
  stock: number;
  items: number[];
  left: number;
}

/** The cheapest available stock that holds this size. */
const cheapestFor = (problem: PackingProblem, size: number, limits: readonly number[]): number => {
  let best = -1;
  problem.stocks.forEach(({ capacity, cost }, index) => {
    const isUsable = (limits[index] ?? 0) > 0 && capacity >= size;
    if (isUsable && (best < 0 || cost < (problem.stocks[best]?.cost ?? 0))) best = index;
  });
  return best;
};

/** Swaps each bin's stock for the cheapest that also holds its pieces. */
const withCheapestStock = (problem: PackingProblem, bins: readonly OpenBin[], limits: number[]): Bin[] =>
  bins.map(({ stock, items, left }) => {
    const size = (problem.stocks[stock]?.capacity ?? 0) - left;
    limits[stock] = (limits[stock] ?? 0) + 1;
    const cheapest = cheapestFor(problem, size, limits);
    limits[cheapest] = (limits[cheapest] ?? 0) - 1;
    return { stock: cheapest, items };
  });

/** Largest first, each where it leaves least. A new bin is of the preferred stock, or else of the cheapest that fits. */
const bestFitPreferring = (problem: PackingProblem, preferred: number): Bin[] | undefined => {
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
  return withCheapestStock(problem, bins, limits);
};

/** Best-fit decreasing, once with each stock preferred: the first plans. Leaves out those that exceed the limits. */
export const bestFitDecreasing = (problem: PackingProblem): Bin[][] =>
  problem.stocks.flatMap((_, preferred) => {
    const bins = bestFitPreferring(problem, preferred);
    return bins ? [bins] : [];
  });
