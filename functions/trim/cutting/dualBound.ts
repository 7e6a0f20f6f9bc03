import type { Budget } from "./budget";
import { coveringCost } from "./cover";
import type { Problem } from "./packingProblem";
import { worthiestFilling } from "./bestFilling";

const WHOLE_WORTH = 2 ** 30;

/** Worths as whole numbers up to a large one, so that sums of them are exact. Undefined where nothing is worth anything. */
export const wholeWorths = (worths: readonly number[]): number[] | undefined => {
  const most = Math.max(...worths);
  return most > 0 ? worths.map((worth) => Math.floor((Math.max(0, worth) / most) * WHOLE_WORTH)) : undefined;
};

/**
 * A bound proved in whole numbers from worths that may be anything: no filling of a stock is worth more than the
 * worthiest, so the stocks of a plan must between them be worth all the pieces. 0 where the budget ends.
 */
export const worthBound = (problem: Problem, worths: readonly number[], budget: Budget): number => {
  const { counts, stocks } = problem;
  const whole = wholeWorths(worths);
  if (!whole) return 0;
  const held: number[] = [];
  for (const { capacity } of stocks) {
    const filling = worthiestFilling(problem, whole, capacity, 0, budget);
    if (filling === "undecided") return 0;
    held.push(filling?.worth ?? 0);
  }
  const demand = whole.reduce((sum, worth, index) => sum + worth * (counts[index] ?? 0), 0);
  return coveringCost(stocks, held, demand);
};
