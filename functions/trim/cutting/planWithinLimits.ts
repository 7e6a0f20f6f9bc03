import { InputError } from "../../../shared/inputError";
import { feetToInches } from "../../../shared/units";
import { cheapestPlan } from "./cheapestPlan";
import type { SplitOptions } from "./splitCosts";
import type { SplitPlan } from "./splitPlan";
import { splitRun, type RunSplits } from "./splits";
import { ticksRoundedDown } from "./ticks";
import type { Material } from "./material";
import { MOST_PIECES } from "./objective";
import type { TrimJob } from "./trimJob";

/** The splits of every run, longest runs first, runs of the same length together. */
export const splitOptions = (job: TrimJob, { kerf }: Material, leastIn: number): SplitOptions[] => {
  const known = new Map<number, RunSplits>();
  return [...job.runs]
    .sort((a, b) => b.lengthFt - a.lengthFt || a.number - b.number)
    .map((run) => {
      const splits = known.get(run.lengthFt) ?? splitRun(job, run, leastIn);
      known.set(run.lengthFt, splits);
      const leastSize = run.lengthFt > 0 ? ticksRoundedDown(feetToInches(run.lengthFt)) + kerf : 0;
      return { run: run.number, leastSize, ...splits };
    });
};

const countPieces = (runs: readonly SplitOptions[]): number =>
  runs.reduce((sum, { splits: [first] }) => sum + (first?.whole.length ?? 0) + (first?.cut.length ?? 0), 0);

/** The cheapest plan. Where the longest stock runs out, runs may be split into more pieces, of stock without a limit. */
export const planWithinLimits = (job: TrimJob, material: Material): SplitPlan | undefined => {
  const lengths = job.stocks.map(({ lengthIn }) => lengthIn);
  const unlimited = job.stocks.flatMap(({ lengthIn, limit }) => (limit === Infinity ? [lengthIn] : []));
  const longest = Math.max(...lengths);
  const spare = unlimited.length > 0 ? Math.max(...unlimited) : Math.min(...lengths);
  const mayTakeMore = job.lapIn !== undefined && spare < longest;
  for (const leastIn of mayTakeMore ? [longest, spare] : [longest]) {
    const runs = splitOptions(job, material, leastIn);
    const pieces = countPieces(runs);
    if (pieces > MOST_PIECES)
      throw new InputError(`lengths need ${pieces} pieces: one plan has at most ${MOST_PIECES}`);
    const isPossible = runs.every(({ splits }) => splits.length > 0);
    const found = isPossible ? cheapestPlan(material, runs) : undefined;
    if (found) return found;
  }
  return undefined;
};
