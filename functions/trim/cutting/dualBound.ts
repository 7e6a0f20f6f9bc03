import type { Budget } from "./budget";
import { knapsackCoverCost } from "./knapsackCover";
import type { PackingProblem } from "./packingProblem";
import { bestFilling } from "./bestFilling";

const LARGEST_INTEGER_DUAL = 2 ** 30;

/** Duals scaled to whole numbers, so that their sums are exact. Undefined where none is positive. */
export const integerDuals = (duals: readonly number[]): number[] | undefined => {
  const most = Math.max(...duals);
  return most > 0
    ? duals.map((dual) => Math.floor((Math.max(0, dual) / most) * LARGEST_INTEGER_DUAL))
    : undefined;
};

/**
 * The dual (LP) bound, proved in whole numbers. It holds for any duals: each stock is valued at its best filling, so the
 * stocks of a plan must have at least the value of all pieces between them. 0 where the budget ends.
 */
export const dualBound = (problem: PackingProblem, duals: readonly number[], budget: Budget): number => {
  const { counts, stocks } = problem;
  const whole = integerDuals(duals);
  if (!whole) return 0;
  const stockValues: number[] = [];
  for (const { capacity } of stocks) {
    const filling = bestFilling(problem, whole, capacity, 0, budget);
    if (filling === "undecided") return 0;
    stockValues.push(filling?.value ?? 0);
  }
  const demand = whole.reduce((sum, dual, index) => sum + dual * (counts[index] ?? 0), 0);
  return knapsackCoverCost(stocks, stockValues, demand);
};
