import { inchesOf, marksAtHand, marksNeeded } from "./marks";
import { objectiveFor, type Objective } from "./objective";
import type { Stock } from "./packingProblem";
import type { TrimJob } from "./trimJob";

/** A job's stock in marks, and what a plan of it is to have least of. */
export interface Material {
  /** In the job's order. */
  readonly stocks: readonly Stock[];
  readonly kerf: number;
  readonly objective: Objective;
}

/**
 * The saw takes a kerf with every piece but perhaps the last: counting one with each piece, and one more as part of
 * the stock, comes to the same.
 */
export const materialOf = ({ stocks, kerfIn }: TrimJob): Material => {
  const kerf = marksNeeded(kerfIn);
  const objective = objectiveFor(stocks);
  return {
    kerf,
    objective,
    stocks: stocks.map(({ lengthIn, limit }, index) => ({
      capacity: marksAtHand(lengthIn) + kerf,
      cost: objective.costs[index] ?? 0,
      limit,
    })),
  };
};

/** The left-over of a stock where the pieces and their kerfs leave so many marks; the saw may take the last of it. */
export const leftOverIn = (marksLeft: number, kerf: number): number =>
  inchesOf(Math.max(0, marksLeft - kerf));
