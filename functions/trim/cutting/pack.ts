import { planWithin } from "./binCompletion";
import { bestFits } from "./bestFit";
import type { Budget } from "./budget";
import { diveWithin } from "./dive";
import { forcedBins } from "./forcedBins";
import { lowerBound } from "./lowerBound";
import { costOf, without, type Bin, type Problem } from "./packingProblem";
import { relax } from "./relaxation";
import { worthBound } from "./dualBound";

export interface Packing {
  readonly bins: readonly Bin[];
  readonly cost: number;
  /** No plan costs less; equal to the cost where that is proved least. */
  readonly bound: number;
}

/** Enough for nearly every roof; what it doesn't decide, a relaxation mostly does. */
const STEPS_OF_FIRST_SEARCH = 1500;
const MOST_DIVES = 16;
const MOST_PIECES_SEARCHED = 600;
const STEPS_TO_FORCE = 2000;
/** What a bound in floating point must exceed a whole number by to prove the next in whole numbers. */
const WHOLE_TOLERANCE = 1e-6;

const isSearched = ({ counts }: Problem): boolean =>
  counts.reduce((sum, count) => sum + count, 0) <= MOST_PIECES_SEARCHED;

const packUnforced = (problem: Problem, budget: Budget): Packing | undefined => {
  let bound = lowerBound(problem);
  if (bound === Infinity) return undefined;
  let best: readonly Bin[] | undefined;
  let cost = problem.stocks.reduce((sum, stock) => sum + stock.cost * stock.limit, 0) + 1;
  const keep = (bins: readonly Bin[]): void => {
    const itsCost = costOf(problem, bins);
    if (itsCost < cost || !best) [best, cost] = [bins, itsCost];
  };
  bestFits(problem).forEach(keep);

  /** Betters the plan until the bound is met, nothing cheaper is left, or the steps end. */
  const search = (part: Budget): void => {
    while (cost > bound) {
      const outcome = planWithin(problem, cost - 1, part);
      if (outcome === "undecided") return;
      if (outcome === "none") bound = cost;
      else keep(outcome);
    }
  };
  /** The first dive sets out from the relaxation that is found soonest, the others from one without pieces cut down. */
  const dive = (): void => {
    const pool = best ? [...best] : [];
    let relaxation = relax(problem, pool, true, budget, {
      bound: (cost - 1) * (1 + WHOLE_TOLERANCE),
      cost: bound,
    });
    if (relaxation) bound = Math.max(bound, worthBound(problem, relaxation.worths, budget));
    for (let rank = 0; rank < MOST_DIVES && cost > bound && relaxation; rank++) {
      const found = diveWithin({ problem, relaxation, pool, rank }, cost - 1, budget);
      if (found) keep(found);
      if (rank === 0 && cost > bound) relaxation = relax(problem, pool, false, budget);
    }
  };
  if (isSearched(problem)) {
    budget.lend(STEPS_OF_FIRST_SEARCH, search);
    if (cost > bound) dive();
    if (cost > bound) search(budget);
  }
  return best && { bins: best, cost, bound };
};

/** The cheapest plan found in the budget, and how cheap one could be. Undefined where the stock allowed has none. */
export const pack = (problem: Problem, budget: Budget): Packing | undefined => {
  const forced = isSearched(problem) ? budget.lend(STEPS_TO_FORCE, (part) => forcedBins(problem, part)) : [];
  const rest = packUnforced(without(problem, forced), budget);
  const forcedCost = costOf(problem, forced);
  return (
    rest && {
      bins: [...forced, ...rest.bins],
      cost: forcedCost + rest.cost,
      bound: forcedCost + rest.bound,
    }
  );
};
