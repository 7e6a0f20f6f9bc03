import { noAnswer } from "../../../shared/inputError";
import { isSame } from "../../../shared/rounding";
import { feetToInches } from "../../../shared/units";
import { piecesForRun } from "./piecesForRun";
import { exactTape } from "./exactTape";
import { inchesFromTicks, ticksRoundedDown, ticksRoundedUp } from "./ticks";
import { stockCombinations } from "./stockCombinations";
import type { Run, TrimJob } from "./trimJob";

/** One way to split a run into pieces. */
export interface Split {
  /** Stock lengths used whole: indexes into the job's stocks. */
  readonly whole: readonly number[];
  /** Pieces to cut, in ticks. */
  readonly cut: readonly number[];
}

/** The fewest pieces for a run from stock of this length. */
const fewestPieces = ({ number, lengthFt }: Run, stockIn: number, lapIn: number | undefined): number => {
  const pieces = piecesForRun(lengthFt, stockIn, lapIn ?? 0);
  if (pieces > 1 && lapIn === undefined)
    throw noAnswer(
      `run ${number}, ${exactTape(lengthFt)}, is longer than every stock length: enter a lap, 0 for butt joints`,
    );
  return pieces;
};

/** A remainder that is too short takes the difference from the whole length next to it. */
const splitWith = (job: TrimJob, whole: readonly number[], remainderIn: number): Split | undefined => {
  const { stocks, shortestIn } = job;
  const last = whole.at(-1);
  if (last === undefined || remainderIn >= shortestIn || isSame(remainderIn, shortestIn))
    return { whole, cut: [ticksRoundedUp(remainderIn)] };
  const shortened = (stocks[last]?.lengthIn ?? 0) - (shortestIn - remainderIn);
  if (shortened < shortestIn && !isSame(shortened, shortestIn)) return undefined;
  return { whole: whole.slice(0, -1), cut: [ticksRoundedUp(shortened), ticksRoundedUp(shortestIn)] };
};

/** The splits of a run, and whether they are all of them. */
export interface RunSplits {
  readonly splits: readonly Split[];
  readonly isComplete: boolean;
}

/** More would be too many to search. */
const MOST_SPLITS = 200;

/** Twice the rounding tolerance of the piece count, so that a run it counts as n pieces also fits n pieces here. */
const TOLERANCE = 2e-9;

/** The splits of a run into so many pieces. */
const splitsInto = (job: TrimJob, run: Run, pieces: number): RunSplits => {
  const { stocks, lapIn = 0 } = job;
  if (pieces === 0) return { splits: [{ whole: [], cut: [] }], isComplete: true };
  const longestFirst = [...stocks.entries()].sort(([, a], [, b]) => b.lengthIn - a.lengthIn);
  const longestIn = longestFirst[0]?.[1].lengthIn ?? 0;
  const neededIn = feetToInches(run.lengthFt) + (pieces - 1) * lapIn;
  const splits: Split[] = [];
  let tried = 0;
  for (const whole of stockCombinations(longestFirst, pieces - 1)) {
    if (tried === MOST_SPLITS) return { splits, isComplete: false };
    tried += 1;
    const remainderIn = whole.reduce((left, stock) => left - (stocks[stock]?.lengthIn ?? 0), neededIn);
    const isTooLong = remainderIn - longestIn > TOLERANCE * neededIn;
    const isUnneeded = pieces > 1 && remainderIn <= lapIn;
    const split =
      isTooLong || isUnneeded
        ? undefined
        : splitWith(job, whole, Math.min(remainderIn, inchesFromTicks(ticksRoundedDown(longestIn))));
    if (split) splits.push(split);
  }
  return { splits, isComplete: true };
};

/**
 * The splits of a run into the fewest pieces; where the longest stock may run out, also into more, up to the number of
 * pieces needed from stock of `leastIn`. All pieces except one are whole stock lengths. No other split needs less stock:
 * of two partial pieces, one can always grow to the whole of its stock length, and whatever was cut from the rest of
 * that length fits where the other piece shrank. (A shortest piece may be an exception.)
 */
export const splitRun = (job: TrimJob, run: Run, leastIn: number): RunSplits => {
  const longestIn = Math.max(...job.stocks.map((stock) => stock.lengthIn));
  const fewest = fewestPieces(run, longestIn, job.lapIn);
  const most = fewestPieces(run, leastIn, job.lapIn);
  const byPieceCount = Array.from({ length: most - fewest + 1 }, (_, more) =>
    splitsInto(job, run, fewest + more),
  );
  return {
    splits: byPieceCount.flatMap(({ splits }) => splits),
    isComplete: byPieceCount.every(({ isComplete }) => isComplete),
  };
};
