import type { Budget } from "./budget";
import type { SplitPlan } from "./splitPlan";
import type { Material } from "./material";
import { solveRelaxation } from "./columnGeneration";
import { integerDuals } from "./dualBound";
import { bestFilling } from "./bestFilling";

/**
 * The least that a piece, with its kerf, costs from any stock. No stock length holds pieces that cost more than it does,
 * so the pieces of a plan never cost more than the plan: the costs are a feasible solution of the dual program.
 */
export type PieceCost = (size: number) => number;

/** By length, at the best price per length of all stock. */
export const costByLength = ({ stocks }: Material): PieceCost => {
  const bestPrice = Math.min(...stocks.map(({ cost, capacity }) => cost / capacity));
  return (size) => bestPrice * size;
};

/**
 * By the duals of a plan's LP relaxation. A size that the plan doesn't cut takes the dual of the next smaller size that
 * it does. Undefined where the budget ends.
 */
export const costByDuals = (
  { stocks }: Material,
  { pieces: { problem, unit }, packing }: SplitPlan,
  budget: Budget,
): PieceCost | undefined => {
  const relaxation = solveRelaxation(problem, [...packing.bins], true, budget);
  const duals = relaxation && integerDuals(relaxation.duals);
  if (!duals) return undefined;
  // Largest first, so from the end: a larger piece never has a smaller dual than a smaller piece.
  for (let size = duals.length - 2; size >= 0; size--)
    duals[size] = Math.max(duals[size] ?? 0, duals[size + 1] ?? 0);
  const unlimited = { ...problem, counts: problem.sizes.map(() => Infinity) };
  let highestRatio = 0;
  for (const { capacity, cost } of stocks) {
    const filling = bestFilling(unlimited, duals, capacity / unit, 0, budget);
    if (filling === "undecided") return undefined;
    highestRatio = Math.max(highestRatio, (filling?.value ?? 0) / cost);
  }
  return (size) => {
    const place = problem.sizes.findIndex((each) => each * unit <= size);
    return place < 0 || highestRatio === 0 ? 0 : (duals[place] ?? 0) / highestRatio;
  };
};
