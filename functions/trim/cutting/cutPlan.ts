import { noAnswer } from "../../../shared/inputError";
import { Budget } from "./budget";
import { withLeftOver, type ChosenPlan, type CutPiece } from "./chosenPlan";
import { inchesOf } from "./marks";
import { leftOverIn, materialOf, type Material } from "./material";
import { planWithinLimits } from "./planWithinLimits";
import type { TrimJob } from "./trimJob";

export interface PlannedPiece {
  readonly run: number;
  readonly lengthIn: number;
}

/** One stock length and what is cut from it. */
export interface PlannedStock {
  /** Place in the job's stocks. */
  readonly stock: number;
  /** The longest first. */
  readonly pieces: readonly PlannedPiece[];
  readonly leftOverIn: number;
}

export interface CutPlan {
  /** In the order of the lowest run that each serves. */
  readonly stocks: readonly PlannedStock[];
  /** `proved fewest`, or how far from the bound. */
  readonly verdict: string;
}

const STEPS_FOR_LEFT_OVER = 20_000;

const wholeLengths = (job: TrimJob, { madeUp }: ChosenPlan): PlannedStock[] =>
  madeUp.flatMap(({ run, division }) =>
    division.whole.map((stock) => ({
      stock,
      pieces: [{ run, lengthIn: job.stocks[stock]?.lengthIn ?? 0 }],
      leftOverIn: 0,
    })),
  );

const cutLengths = ({ stocks, kerf }: Material, { pieces, packing }: ChosenPlan): PlannedStock[] => {
  const waiting = pieces.piecesOfSize.map((alike) => [...alike]);
  return packing.bins.map(({ stock, items }) => {
    const held = items.flatMap((item): CutPiece[] => waiting[item]?.splice(0, 1) ?? []);
    const left = held.reduce((sum, { marks }) => sum - marks - kerf, stocks[stock]?.capacity ?? 0);
    return {
      stock,
      pieces: held
        .map(({ run, marks }) => ({ run, lengthIn: inchesOf(marks) }))
        .sort((a, b) => b.lengthIn - a.lengthIn || a.run - b.run),
      leftOverIn: leftOverIn(left, kerf),
    };
  });
};

const lowestRun = ({ pieces }: PlannedStock): number => Math.min(...pieces.map(({ run }) => run));

/** Which pieces to cut from which stock lengths, and how good that is. */
export const cutPlan = (job: TrimJob): CutPlan => {
  const material = materialOf(job);
  const found = planWithinLimits(job, material);
  if (!found) throw noAnswer("no plan was found: limits leave too little stock for these runs");
  const plan = withLeftOver(found, new Budget(STEPS_FOR_LEFT_OVER));
  return {
    stocks: [...wholeLengths(job, plan), ...cutLengths(material, plan)].sort(
      (a, b) => lowestRun(a) - lowestRun(b),
    ),
    verdict: material.objective.verdict(plan.cost, plan.bound),
  };
};
