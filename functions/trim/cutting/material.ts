import { inchesFromTicks, ticksRoundedDown, ticksRoundedUp } from "./ticks";
import { objectiveFor, type Objective } from "./objective";
import type { Stock } from "./packingProblem";
import type { TrimJob } from "./trimJob";

/** A job's stock lengths in ticks, and what a plan minimizes. */
export interface Material {
  /** In the job's order. */
  readonly stocks: readonly Stock[];
  readonly kerf: number;
  readonly objective: Objective;
}

/**
 * The saw takes a kerf with every piece except perhaps the last. Counting one kerf with each piece and adding one kerf
 * to the stock gives the same result.
 */
export const materialOf = ({ stocks, kerfIn }: TrimJob): Material => {
  const kerf = ticksRoundedUp(kerfIn);
  const objective = objectiveFor(stocks);
  return {
    kerf,
    objective,
    stocks: stocks.map(({ lengthIn, limit }, index) => ({
      capacity: ticksRoundedDown(lengthIn) + kerf,
      cost: objective.costs[index] ?? 0,
      limit,
    })),
  };
};

/** The left-over, in inches, where the pieces and their kerfs leave so many ticks; the last cut may use it up. */
export const leftOverIn = (ticksLeft: number, kerf: number): number =>
  inchesFromTicks(Math.max(0, ticksLeft - kerf));
