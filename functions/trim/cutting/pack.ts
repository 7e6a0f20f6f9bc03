import { planWithin } from "./binCompletion";
import { bestFitDecreasing } from "./bestFitDecreasing";
import type { Budget } from "./budget";
import { diveWithin } from "./divingHeuristic";
import { forcedBins } from "./forcedBins";
import { lowerBound } from "./lowerBound";
import { costOf, without, type Bin, type PackingProblem } from "./packingProblem";
import { solveRelaxation } from "./columnGeneration";
import { dualBound } from "./dualBound";

export interface Packing {
  readonly bins: readonly Bin[];
  readonly cost: number;
  /** A lower bound on the cost of every plan; equal to the cost where the plan is proved optimal. */
  readonly bound: number;
}

/** Enough for nearly every roof; the LP relaxation settles most of the rest. */
const STEPS_OF_FIRST_SEARCH = 1500;
const MOST_DIVES = 16;
const MOST_PIECES_SEARCHED = 600;
const STEPS_TO_FORCE = 2000;
/** How far a floating-point bound must exceed a whole number before the next one can be proved. */
const WHOLE_TOLERANCE = 1e-6;

const isSearched = ({ counts }: PackingProblem): boolean =>
  counts.reduce((sum, count) => sum + count, 0) <= MOST_PIECES_SEARCHED;

const packRest = (problem: PackingProblem, budget: Budget): Packing | undefined => {
  let bound = lowerBound(problem);
  if (bound === Infinity) return undefined;
  let best: readonly Bin[] | undefined;
  let cost = problem.stocks.reduce((sum, stock) => sum + stock.cost * stock.limit, 0) + 1;
  const keep = (bins: readonly Bin[]): void => {
    const newCost = costOf(problem, bins);
    if (newCost < cost || !best) [best, cost] = [bins, newCost];
  };
  bestFitDecreasing(problem).forEach(keep);

  /** Improves the plan until it meets the bound, is proved optimal, or the steps end. */
  const search = (part: Budget): void => {
    while (cost > bound) {
      const outcome = planWithin(problem, cost - 1, part);
      if (outcome === "undecided") return;
      if (outcome === "none") bound = cost;
      else keep(outcome);
    }
  };
  /** The first dive starts from the relaxation with exchange columns, which is the fastest; the others from one without. */
  const dive = (): void => {
    const pool = best ? [...best] : [];
    let relaxation = solveRelaxation(problem, pool, true, budget, {
      bound: (cost - 1) * (1 + WHOLE_TOLERANCE),
      cost: bound,
    });
    if (relaxation) bound = Math.max(bound, dualBound(problem, relaxation.duals, budget));
    for (let rank = 0; rank < MOST_DIVES && cost > bound && relaxation; rank++) {
      const found = diveWithin({ problem, relaxation, pool, rank }, cost - 1, budget);
      if (found) keep(found);
      if (rank === 0 && cost > bound) relaxation = solveRelaxation(problem, pool, false, budget);
    }
  };
  if (isSearched(problem)) {
    budget.lend(STEPS_OF_FIRST_SEARCH, search);
    if (cost > bound) dive();
    if (cost > bound) search(budget);
  }
  return best && { bins: best, cost, bound };
};

/** The cheapest plan found in the budget, and a lower bound. Undefined where no plan within the stock limits was found. */
export const pack = (problem: PackingProblem, budget: Budget): Packing | undefined => {
  const forced = isSearched(problem) ? budget.lend(STEPS_TO_FORCE, (part) => forcedBins(problem, part)) : [];
  const rest = packRest(without(problem, forced), budget);
  const forcedCost = costOf(problem, forced);
  return (
    rest && {
      bins: [...forced, ...rest.bins],
      cost: forcedCost + rest.cost,
      bound: forcedCost + rest.bound,
    }
  );
};
