import { bestFits } from "./bestFit";
import { planWithin } from "./binCompletion";
import type { Budget } from "./budget";
import { costOf, totalSize, without, type Bin, type Problem } from "./packingProblem";
import { relax, type Relaxation } from "./relaxation";

/** With so little left to cut a search decides faster than another relaxation. */
const SEARCHED_STOCKS = 20;
const STEPS_A_SEARCH = 50_000;
/** What floating point may take from a whole number. */
const WHOLE_TOLERANCE = 1e-6;

/** A filling of what is there: a piece of which there is no more gives way to the largest smaller one. */
const available = ({ sizes }: Problem, { stock, items }: Bin, counts: number[]): Bin => {
  const held: number[] = [];
  for (const item of items) {
    let taken = item;
    while (taken < sizes.length && (counts[taken] ?? 0) === 0) taken += 1;
    if (taken === sizes.length) continue;
    counts[taken] = (counts[taken] ?? 0) - 1;
    held.push(taken);
  }
  return { stock, items: held };
};

/** The fillings that the relaxation uses a whole number of times, or else the one at a place among the most used. */
const fillingsToKeep = (problem: Problem, { uses }: Relaxation, place: number): Bin[] => {
  const limits = problem.stocks.map(({ limit }) => limit);
  const counts = [...problem.counts];
  const kept: Bin[] = [];
  for (const { bin, times } of uses)
    for (let copy = 1; copy <= times + WHOLE_TOLERANCE; copy++) {
      if ((limits[bin.stock] ?? 0) <= 0) break;
      limits[bin.stock] = (limits[bin.stock] ?? 0) - 1;
      const filling = available(problem, bin, counts);
      if (filling.items.length > 0) kept.push(filling);
    }
  if (kept.length > 0) return kept;
  const ranked = [...uses].sort((a, b) => b.times - a.times);
  return [(ranked[place % ranked.length] as (typeof ranked)[number]).bin];
};

/** Where a dive sets out from. */
export interface Dive {
  readonly problem: Problem;
  readonly relaxation: Relaxation;
  /** Fillings known from relaxations before; more are added. */
  readonly pool: Bin[];
  /** Its binary digits say at which steps to keep the second most used filling: dives of other ranks end elsewhere. */
  readonly rank: number;
}

/** What is left by a search, or else by best fit. */
const finish = (left: Problem, mostCost: number, budget: Budget): readonly Bin[] | undefined => {
  const found = budget.lend(STEPS_A_SEARCH, (part) => planWithin(left, mostCost, part));
  return typeof found === "string" ? bestFits(left).find((bins) => costOf(left, bins) <= mostCost) : found;
};

/**
 * Looks for a plan of at most this cost from the relaxation down: keeps the fillings that it is surest of, relaxes
 * what is left, and searches once little is left.
 */
export const diveWithin = (dive: Dive, mostCost: number, budget: Budget): readonly Bin[] | undefined => {
  const { problem, pool } = dive;
  const capacity = Math.max(...problem.stocks.map((stock) => stock.capacity));
  const kept: Bin[] = [];
  let [left, relaxation] = [problem, dive.relaxation];
  for (let digits = dive.rank; ; digits >>= 1) {
    kept.push(...fillingsToKeep(left, relaxation, digits & 1));
    left = without(problem, kept);
    const costLeft = mostCost - costOf(problem, kept);
    if (totalSize(left) <= SEARCHED_STOCKS * capacity) {
      const rest = finish(left, costLeft, budget);
      return rest && [...kept, ...rest];
    }
    const next = relax(left, pool, false, budget);
    const leastCost = next?.uses.reduce((sum, { bin, times }) => sum + costOf(problem, [bin]) * times, 0);
    if (!next || leastCost === undefined || leastCost > costLeft * (1 + WHOLE_TOLERANCE)) return undefined;
    relaxation = next;
  }
};
