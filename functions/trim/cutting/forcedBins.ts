import type { Budget } from "./budget";
import { binFillings } from "./binFillings";
import { totalSize, type Bin, type PackingProblem } from "./packingProblem";

/** Next to a piece that leaves room for more of the smallest size, there are too many fillings to look at. */
const MOST_BESIDE = 5;

/** The filling around a piece of more than half a stock, where one filling dominates all others. */
const forcedBeside = (
  problem: PackingProblem,
  item: number,
  capacity: number,
  budget: Budget,
): Bin | undefined => {
  const { sizes, counts } = problem;
  const room = capacity - (sizes[item] ?? 0);
  if (room < 0) return undefined;
  const exact = sizes.indexOf(room);
  if ((counts[exact] ?? 0) > 0) return { stock: 0, items: [item, exact] };
  const smallest = sizes.findLast((_, place) => (counts[place] ?? 0) > 0) ?? 0;
  if (room >= (MOST_BESIDE + 1) * smallest) return undefined;
  const fillings = binFillings(
    { sizes, counts: [...counts], total: totalSize(problem) },
    item,
    capacity,
    capacity,
    budget,
  );
  const [only] = fillings ?? [];
  return only && fillings?.length === 1 ? { stock: 0, items: only.items } : undefined;
};

/**
 * Bins that some optimal plan contains: a piece of more than half a stock with the piece that fills it exactly, or with
 * its only undominated filling (a reduction after Martello and Toth, from memory). Only for one stock length without a
 * limit.
 */
export const forcedBins = (problem: PackingProblem, budget: Budget): Bin[] => {
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
