import { noAnswer } from "../../../shared/inputError";
import { Budget } from "./budget";
import { withLeftOver, type SplitPlan, type CutPiece } from "./splitPlan";
import { inchesFromTicks } from "./ticks";
import { leftOverIn, materialOf, type Material } from "./material";
import { planWithinLimits } from "./planWithinLimits";
import type { TrimJob } from "./trimJob";

export interface PlannedPiece {
  readonly run: number;
  readonly lengthIn: number;
}

/** One stock length and the pieces cut from it. */
export interface PlannedStock {
  /** Index into the job's stocks. */
  readonly stock: number;
  /** Longest first. */
  readonly pieces: readonly PlannedPiece[];
  readonly leftOverIn: number;
}

export interface CutPlan {
  /** Ordered by the lowest run number in each. */
  readonly stocks: readonly PlannedStock[];
  /** `proved fewest` or `proved cheapest`, or the distance from the lower bound. */
  readonly verdict: string;
}

const STEPS_FOR_LEFT_OVER = 20_000;

const wholeLengths = (job: TrimJob, { chosen }: SplitPlan): PlannedStock[] =>
  chosen.flatMap(({ run, split }) =>
    split.whole.map((stock) => ({
      stock,
      pieces: [{ run, lengthIn: job.stocks[stock]?.lengthIn ?? 0 }],
      leftOverIn: 0,
    })),
  );

const cutLengths = ({ stocks, kerf }: Material, { pieces, packing }: SplitPlan): PlannedStock[] => {
  const uncut = pieces.piecesOfSize.map((alike) => [...alike]);
  return packing.bins.map(({ stock, items }) => {
    const held = items.flatMap((item): CutPiece[] => uncut[item]?.splice(0, 1) ?? []);
    const left = held.reduce((sum, { ticks }) => sum - ticks - kerf, stocks[stock]?.capacity ?? 0);
    return {
      stock,
      pieces: held
        .map(({ run, ticks }) => ({ run, lengthIn: inchesFromTicks(ticks) }))
        .sort((a, b) => b.lengthIn - a.lengthIn || a.run - b.run),
      leftOverIn: leftOverIn(left, kerf),
    };
  });
};

const lowestRun = ({ pieces }: PlannedStock): number => Math.min(...pieces.map(({ run }) => run));

/** Which pieces to cut from which stock lengths, and whether the plan is proved to be the best. */
export const cutPlan = (job: TrimJob): CutPlan => {
  const material = materialOf(job);
  const found = planWithinLimits(job, material);
  if (!found) throw noAnswer("no plan found: limits leave too little stock for these runs");
  const plan = withLeftOver(found, new Budget(STEPS_FOR_LEFT_OVER));
  return {
    stocks: [...wholeLengths(job, plan), ...cutLengths(material, plan)].sort(
      (a, b) => lowestRun(a) - lowestRun(b),
    ),
    verdict: material.objective.verdict(plan.cost, plan.bound),
  };
};
