import type { Budget } from "./budget";
import type { ChosenPlan } from "./chosenPlan";
import type { Material } from "./material";
import { relax } from "./relaxation";
import { wholeWorths } from "./dualBound";
import { worthiestFilling } from "./bestFilling";

/**
 * What a piece with its kerf costs at the least, whatever it is cut from: such that no stock holds pieces that cost more
 * than itself. The pieces of a plan then cost no more than the plan.
 */
export type PieceCost = (size: number) => number;

/** By length, at the best price of all. */
export const costByLength = ({ stocks }: Material): PieceCost => {
  const bestPrice = Math.min(...stocks.map(({ cost, capacity }) => cost / capacity));
  return (size) => bestPrice * size;
};

/**
 * By what the relaxation of a plan finds pieces worth. A size that the plan doesn't cut is worth what the next smaller
 * one is that it does. Undefined where the budget ends.
 */
export const costByWorth = (
  { stocks }: Material,
  { pieces: { problem, unit }, packing }: ChosenPlan,
  budget: Budget,
): PieceCost | undefined => {
  const relaxation = relax(problem, [...packing.bins], true, budget);
  const worths = relaxation && wholeWorths(relaxation.worths);
  if (!worths) return undefined;
  // The largest first, so from the end: a larger piece is never worth less than a smaller one.
  for (let size = worths.length - 2; size >= 0; size--)
    worths[size] = Math.max(worths[size] ?? 0, worths[size + 1] ?? 0);
  const anyNumber = { ...problem, counts: problem.sizes.map(() => Infinity) };
  let dearest = 0;
  for (const { capacity, cost } of stocks) {
    const filling = worthiestFilling(anyNumber, worths, capacity / unit, 0, budget);
    if (filling === "undecided") return undefined;
    dearest = Math.max(dearest, (filling?.worth ?? 0) / cost);
  }
  return (size) => {
    const place = problem.sizes.findIndex((each) => each * unit <= size);
    return place < 0 || dearest === 0 ? 0 : (worths[place] ?? 0) / dearest;
  };
};
