import { InputError, noAnswer } from "../../../shared/inputError";
import { Budget } from "./budget";
import { cheapestPlan } from "./cheapestPlan";
import type { RunChoices } from "./choiceBound";
import { withLeftOver, type ChosenPlan, type CutPiece } from "./chosenPlan";
import { divisions, type Division } from "./divisions";
import { inchesOf } from "./marks";
import { leftOverIn, materialOf, type Material } from "./material";
import { MOST_PIECES } from "./objective";
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

/** The longest runs first, runs of the same length together. */
const runChoices = (job: TrimJob, leastIn: number): RunChoices[] => {
  const known = new Map<number, readonly Division[]>();
  return [...job.runs]
    .sort((a, b) => b.lengthFt - a.lengthFt || a.number - b.number)
    .map((run) => {
      const choices = known.get(run.lengthFt) ?? divisions(job, run, leastIn);
      known.set(run.lengthFt, choices);
      return { run: run.number, choices };
    });
};

const countPieces = (runs: readonly RunChoices[]): number =>
  runs.reduce((sum, { choices: [first] }) => sum + (first?.whole.length ?? 0) + (first?.cut.length ?? 0), 0);

/** The cheapest plan where the longest stock reaches, or else with more pieces of stock that doesn't run out. */
const planWithinLimits = (job: TrimJob, material: Material): ChosenPlan | undefined => {
  const lengths = job.stocks.map(({ lengthIn }) => lengthIn);
  const endless = job.stocks.flatMap(({ lengthIn, limit }) => (limit === Infinity ? [lengthIn] : []));
  const longest = Math.max(...lengths);
  const spare = endless.length > 0 ? Math.max(...endless) : Math.min(...lengths);
  const mayTakeMore = job.lapIn !== undefined && spare < longest;
  for (const leastIn of mayTakeMore ? [longest, spare] : [longest]) {
    const runs = runChoices(job, leastIn);
    const pieces = countPieces(runs);
    if (pieces > MOST_PIECES)
      throw new InputError(`lengths come to ${pieces} pieces: at most ${MOST_PIECES} are planned at once`);
    const isPossible = runs.every(({ choices }) => choices.length > 0);
    const found = isPossible ? cheapestPlan(material, runs) : undefined;
    if (found) return found;
  }
  return undefined;
};

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
