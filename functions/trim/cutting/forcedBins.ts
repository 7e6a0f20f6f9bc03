import type { Budget } from "./budget";
import { completions } from "./binFillings";
import { totalSize, type Bin, type Problem } from "./packingProblem";

/** Beside a piece that leaves room for more of the smallest, ways are too many to look at all. */
const MOST_BESIDE = 5;

/** What goes beside a piece of more than half a stock, where one way is as good as any other. */
const forcedBeside = (problem: Problem, item: number, capacity: number, budget: Budget): Bin | undefined => {
  const { sizes, counts } = problem;
  const room = capacity - (sizes[item] ?? 0);
  if (room < 0) return undefined;
  const exact = sizes.indexOf(room);
  if ((counts[exact] ?? 0) > 0) return { stock: 0, items: [item, exact] };
  const smallest = sizes.findLast((_, place) => (counts[place] ?? 0) > 0) ?? 0;
  if (room >= (MOST_BESIDE + 1) * smallest) return undefined;
  const ways = completions(
    { sizes, counts: [...counts], total: totalSize(problem) },
    item,
    capacity,
    capacity,
    budget,
  );
  const [only] = ways ?? [];
  return only && ways?.length === 1 ? { stock: 0, items: only.items } : undefined;
};

/**
 * Bins that some best plan has, whatever else it has: a piece of more than half a stock with what fills it exactly, or
 * with the one completion that no other betters (reduction in the manner of Martello and Toth, from memory). They are
 * looked for where there is one kind of stock, and no end of it.
 */
export const forcedBins = (problem: Problem, budget: Budget): Bin[] => {
  const [stock, another] = problem.stocks;
  if (!stock || another || stock.limit !== Infinity) return [];
  const counts = [...problem.counts];
  const left = { ...problem, counts };
  const forced: Bin[] = [];
  let before: number;
  do {
    before = forced.length;
    for (let item = 0; 2 * (problem.sizes[item] ?? 0) > stock.capacity; item++)
      while ((counts[item] ?? 0) > 0) {
        const bin = forcedBeside(left, item, stock.capacity, budget);
        if (!bin) break;
        for (const held of bin.items) counts[held] = (counts[held] ?? 0) - 1;
        forced.push(bin);
      }
  } while (forced.length > before);
  return forced;
};
