import { noAnswer } from "../../../shared/inputError";
import { isSame } from "../../../shared/rounding";
import { feetToInches } from "../../../shared/units";
import { trimPieces } from "./trimPieces";
import { exactTape } from "./exactTape";
import { inchesOf, marksAtHand, marksNeeded } from "./marks";
import { stockChoices } from "./stockChoices";
import type { Run, TrimJob } from "./trimJob";

/** One way to make up a run of the fewest pieces. */
export interface Division {
  /** Stock lengths that go on whole, by their place in the job. */
  readonly whole: readonly number[];
  /** Pieces to cut, in marks. */
  readonly cut: readonly number[];
}

/** A run's fewest pieces: as many as of stock so long. */
const piecesOf = ({ number, lengthFt }: Run, stockIn: number, lapIn: number | undefined): number => {
  const pieces = trimPieces(lengthFt, stockIn, lapIn ?? 0);
  if (pieces > 1 && lapIn === undefined)
    throw noAnswer(
      `run ${number}, ${exactTape(lengthFt)}, is longer than every stock length: give a lap, 0 for ends that butt`,
    );
  return pieces;
};

/** A remainder that is too short takes the difference from the whole length beside it. */
const divide = (job: TrimJob, whole: readonly number[], remainderIn: number): Division | undefined => {
  const { stocks, shortestIn } = job;
  const last = whole.at(-1);
  if (last === undefined || remainderIn >= shortestIn || isSame(remainderIn, shortestIn))
    return { whole, cut: [marksNeeded(remainderIn)] };
  const shortened = (stocks[last]?.lengthIn ?? 0) - (shortestIn - remainderIn);
  if (shortened < shortestIn && !isSame(shortened, shortestIn)) return undefined;
  return { whole: whole.slice(0, -1), cut: [marksNeeded(shortened), marksNeeded(shortestIn)] };
};

/** The ways to make up a run, and whether these are all. */
export interface Divisions {
  readonly choices: readonly Division[];
  readonly isComplete: boolean;
}

/** Kept from growing past what a search could weigh. */
const MOST_CHOICES = 200;

/** Twice what the count of pieces passes over, so that what it took for whole fits here. */
const TOLERANCE = 2e-9;

/** The ways to make up a run of so many pieces. */
const divisionsInto = (job: TrimJob, run: Run, pieces: number): Divisions => {
  const { stocks, lapIn = 0 } = job;
  if (pieces === 0) return { choices: [{ whole: [], cut: [] }], isComplete: true };
  const longestFirst = [...stocks.entries()].sort(([, a], [, b]) => b.lengthIn - a.lengthIn);
  const longestIn = longestFirst[0]?.[1].lengthIn ?? 0;
  const neededIn = feetToInches(run.lengthFt) + (pieces - 1) * lapIn;
  const choices: Division[] = [];
  let looked = 0;
  for (const whole of stockChoices(longestFirst, pieces - 1)) {
    if (looked === MOST_CHOICES) return { choices, isComplete: false };
    looked += 1;
    const remainderIn = whole.reduce((left, stock) => left - (stocks[stock]?.lengthIn ?? 0), neededIn);
    const isTooLong = remainderIn - longestIn > TOLERANCE * neededIn;
    const isIdle = pieces > 1 && remainderIn <= lapIn;
    const division =
      isTooLong || isIdle
        ? undefined
        : divide(job, whole, Math.min(remainderIn, inchesOf(marksAtHand(longestIn))));
    if (division) choices.push(division);
  }
  return { choices, isComplete: true };
};

/**
 * The ways to make up a run of the fewest pieces, or, where the longest stock may run out, of up to as many as it
 * takes of stock of `leastIn`. All pieces but one are whole stock lengths: of two pieces cut from two stock lengths
 * one could always take up the whole of its own, and what lay beside it would go in where the other gave way, so no
 * other division needs less stock. (A shortest piece may make an exception.)
 */
export const divisions = (job: TrimJob, run: Run, leastIn: number): Divisions => {
  const longestIn = Math.max(...job.stocks.map((stock) => stock.lengthIn));
  const fewest = piecesOf(run, longestIn, job.lapIn);
  const most = piecesOf(run, leastIn, job.lapIn);
  const several = Array.from({ length: most - fewest + 1 }, (_, more) =>
    divisionsInto(job, run, fewest + more),
  );
  return {
    choices: several.flatMap(({ choices }) => choices),
    isComplete: several.every(({ isComplete }) => isComplete),
  };
};
