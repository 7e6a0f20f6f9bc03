import { bestFitDecreasing } from "./bestFitDecreasing";
import { planWithin } from "./binCompletion";
import type { Budget } from "./budget";
import { costOf, totalSize, without, type Bin, type PackingProblem } from "./packingProblem";
import { solveRelaxation, type Relaxation } from "./columnGeneration";

/** With so few stock lengths left, a search is faster than another relaxation. */
const SEARCHED_STOCKS = 20;
const STEPS_PER_SEARCH = 50_000;
/** Rounding error allowed in a whole number. */
const WHOLE_TOLERANCE = 1e-6;

/** The filling with the pieces that are left: a piece that has run out is replaced by the next smaller one. */
const available = ({ sizes }: PackingProblem, { stock, items }: Bin, counts: number[]): Bin => {
  const held: number[] = [];
  for (const item of items) {
    let used = item;
    while (used < sizes.length && (counts[used] ?? 0) === 0) used += 1;
    if (used === sizes.length) continue;
    counts[used] = (counts[used] ?? 0) - 1;
    held.push(used);
  }
  return { stock, items: held };
};

/** Rounds down: the fillings that the relaxation uses at least once, or else the one at this rank among the most used. */
const fillingsToFix = (problem: PackingProblem, { uses }: Relaxation, usageRank: number): Bin[] => {
  const limits = problem.stocks.map(({ limit }) => limit);
  const counts = [...problem.counts];
  const fixed: Bin[] = [];
  for (const { bin, times } of uses)
    for (let copy = 1; copy <= times + WHOLE_TOLERANCE; copy++) {
      if ((limits[bin.stock] ?? 0) <= 0) break;
      limits[bin.stock] = (limits[bin.stock] ?? 0) - 1;
      const filling = available(problem, bin, counts);
      if (filling.items.length > 0) fixed.push(filling);
    }
  if (fixed.length > 0) return fixed;
  const ranked = [...uses].sort((a, b) => b.times - a.times);
  return [(ranked[usageRank % ranked.length] as (typeof ranked)[number]).bin];
};

/** The start of a dive. */
export interface DiveStart {
  readonly problem: PackingProblem;
  readonly relaxation: Relaxation;
  /** Fillings known from earlier relaxations; the dive adds more. */
  readonly pool: Bin[];
  /** Its binary digits say at which steps to fix the second most used filling, so that dives of different ranks diverge. */
  readonly rank: number;
}

/** Packs what is left, by a search or else by best-fit decreasing. */
const finish = (left: PackingProblem, mostCost: number, budget: Budget): readonly Bin[] | undefined => {
  const found = budget.lend(STEPS_PER_SEARCH, (part) => planWithin(left, mostCost, part));
  return typeof found === "string"
    ? bestFitDecreasing(left).find((bins) => costOf(left, bins) <= mostCost)
    : found;
};

/**
 * A diving heuristic for a plan of at most this cost: fixes the fillings that the LP relaxation uses most, relaxes the
 * rest again, and searches once little is left.
 */
export const diveWithin = (dive: DiveStart, mostCost: number, budget: Budget): readonly Bin[] | undefined => {
  const { problem, pool } = dive;
  const capacity = Math.max(...problem.stocks.map((stock) => stock.capacity));
  const fixed: Bin[] = [];
  let [left, relaxation] = [problem, dive.relaxation];
  for (let digits = dive.rank; ; digits >>= 1) {
    fixed.push(...fillingsToFix(left, relaxation, digits & 1));
    left = without(problem, fixed);
    const costLeft = mostCost - costOf(problem, fixed);
    if (totalSize(left) <= SEARCHED_STOCKS * capacity) {
      const rest = finish(left, costLeft, budget);
      return rest && [...fixed, ...rest];
    }
    const next = solveRelaxation(left, pool, false, budget);
    const leastCost = next?.uses.reduce((sum, { bin, times }) => sum + costOf(problem, [bin]) * times, 0);
    if (!next || leastCost === undefined || leastCost > costLeft * (1 + WHOLE_TOLERANCE)) return undefined;
    relaxation = next;
  }
};
