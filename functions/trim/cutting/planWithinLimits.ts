import { InputError } from "../../../shared/inputError";
import { feetToInches } from "../../../shared/units";
import { cheapestPlan } from "./cheapestPlan";
import type { RunChoices } from "./choiceBound";
import type { ChosenPlan } from "./chosenPlan";
import { divisions, type Divisions } from "./divisions";
import { marksAtHand } from "./marks";
import type { Material } from "./material";
import { MOST_PIECES } from "./objective";
import type { TrimJob } from "./trimJob";

/** The longest runs first, runs of the same length together. */
export const runChoices = (job: TrimJob, { kerf }: Material, leastIn: number): RunChoices[] => {
  const known = new Map<number, Divisions>();
  return [...job.runs]
    .sort((a, b) => b.lengthFt - a.lengthFt || a.number - b.number)
    .map((run) => {
      const ways = known.get(run.lengthFt) ?? divisions(job, run, leastIn);
      known.set(run.lengthFt, ways);
      const leastSize = run.lengthFt > 0 ? marksAtHand(feetToInches(run.lengthFt)) + kerf : 0;
      return { run: run.number, leastSize, ...ways };
    });
};

const countPieces = (runs: readonly RunChoices[]): number =>
  runs.reduce((sum, { choices: [first] }) => sum + (first?.whole.length ?? 0) + (first?.cut.length ?? 0), 0);

/** The cheapest plan where the longest stock reaches, or else with more pieces of stock that doesn't run out. */
export const planWithinLimits = (job: TrimJob, material: Material): ChosenPlan | undefined => {
  const lengths = job.stocks.map(({ lengthIn }) => lengthIn);
  const endless = job.stocks.flatMap(({ lengthIn, limit }) => (limit === Infinity ? [lengthIn] : []));
  const longest = Math.max(...lengths);
  const spare = endless.length > 0 ? Math.max(...endless) : Math.min(...lengths);
  const mayTakeMore = job.lapIn !== undefined && spare < longest;
  for (const leastIn of mayTakeMore ? [longest, spare] : [longest]) {
    const runs = runChoices(job, material, leastIn);
    const pieces = countPieces(runs);
    if (pieces > MOST_PIECES)
      throw new InputError(`lengths come to ${pieces} pieces: at most ${MOST_PIECES} are planned at once`);
    const isPossible = runs.every(({ choices }) => choices.length > 0);
    const found = isPossible ? cheapestPlan(material, runs) : undefined;
    if (found) return found;
  }
  return undefined;
};
