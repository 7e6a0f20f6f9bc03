import { planWithin } from "./binCompletion";
import type { Budget } from "./budget";
import { longestAddablePiece } from "./lowerBound";
import { costOf, type Bin, type PackingProblem } from "./packingProblem";

/** One question is whether a left-over of a given length is possible; most take far fewer steps. */
const STEPS_PER_QUESTION = 500;

const slackOf = ({ sizes, stocks }: PackingProblem, { stock, items }: Bin): number =>
  items.reduce((left, item) => left - (sizes[item] ?? 0), stocks[stock]?.capacity ?? 0);

const longestSlack = (problem: PackingProblem, bins: readonly Bin[]): number =>
  Math.max(0, ...bins.map((bin) => slackOf(problem, bin)));

const inserted = <T>(list: readonly T[], place: number, entry: T): T[] => [
  ...list.slice(0, place),
  entry,
  ...list.slice(place),
];
const removed = <T>(list: readonly T[], place: number): T[] => list.filter((_, index) => index !== place);

/** The problem with one more piece, and the index of its size. */
const withPiece = (
  problem: PackingProblem,
  size: number,
): { more: PackingProblem; place: number; isNew: boolean } => {
  const { sizes, counts } = problem;
  const found = sizes.findIndex((each) => each <= size);
  const place = found < 0 ? sizes.length : found;
  if (sizes[place] === size)
    return {
      more: { ...problem, counts: counts.map((count, index) => (index === place ? count + 1 : count)) },
      place,
      isNew: false,
    };
  return {
    more: { ...problem, sizes: inserted(sizes, place, size), counts: inserted(counts, place, 1) },
    place,
    isNew: true,
  };
};

/** A plan of at most this cost with a left-over at least this long: the left-over is packed as one more piece. */
const planLeaving = (
  problem: PackingProblem,
  size: number,
  mostCost: number,
  budget: Budget,
): readonly Bin[] | undefined => {
  const { more, place, isNew } = withPiece(problem, size);
  const plan = planWithin(more, mostCost, budget);
  if (typeof plan === "string") return undefined;
  const holder = plan.findIndex(({ items }) => items.includes(place));
  return plan.flatMap((bin, index) => {
    const held = index === holder ? removed(bin.items, bin.items.indexOf(place)) : bin.items;
    const items = isNew ? held.map((item) => (item > place ? item - 1 : item)) : held;
    return items.length > 0 ? [{ ...bin, items }] : [];
  });
};

/**
 * Among plans of the same cost, the one with the longest single left-over that the budget finds, since a long piece is
 * useful on another job. If a left-over of some length is possible, so is every shorter one: hence the binary search.
 */
export const withLongestLeftOver = (
  problem: PackingProblem,
  bins: readonly Bin[],
  budget: Budget,
): readonly Bin[] => {
  const cost = costOf(problem, bins);
  let best = bins;
  let least = longestSlack(problem, bins);
  let most = longestAddablePiece(problem, cost, Math.max(...problem.stocks.map((stock) => stock.capacity)));
  for (let size = most; least < most; size = Math.ceil((least + most) / 2)) {
    const ask = (part: Budget): readonly Bin[] | undefined => planLeaving(problem, size, cost, part);
    const plan = budget.lend(STEPS_PER_QUESTION, ask);
    if (plan) [best, least] = [plan, Math.max(size, longestSlack(problem, plan))];
    else most = size - 1;
  }
  return best;
};
