import { InputError } from "../../../shared/inputError";
import { SIDES, type LayoutStart } from "../../../shared/layoutStart";
import type { LaidPanel } from "../../../shared/kinds/panel";
import { tallyCache, type CourseTally } from "./courseTally";
import type { Plane } from "./face";
import { firstJointIn } from "./joints";
import { checkedFace } from "./layCourses";
import { pairsIn } from "./panelSources";
import { choicesOf, startsOf } from "./starts";
import { courseStrips } from "./courseStrips";

/** The limit of starts times courses, so that a search ends in seconds. */
const MOST_WORK = 300_000;

/** A start and its result. */
interface ScoredStart {
  readonly start: LayoutStart;
  readonly warnings: number;
  readonly panels: number;
  readonly cuts: number;
}

interface SearchProgress {
  readonly weighed: number;
  readonly choices: number;
}

export interface BestStart extends ScoredStart {
  readonly choices: number;
}

const score = (tallies: readonly CourseTally[], start: LayoutStart, panel: LaidPanel): ScoredStart => {
  const pieces = tallies.flatMap((tally) => tally.pieces);
  const whole = tallies.reduce((sum, tally) => sum + tally.whole, 0);
  return {
    start,
    warnings: tallies.reduce((sum, tally) => sum + tally.warnings, 0),
    panels: whole + pieces.length - pairsIn(pieces, panel).length,
    cuts: pieces.length,
  };
};

/** Fewest warnings first, then fewest panels, then fewest cuts; the earlier one wins a tie. */
const isBetter = (a: ScoredStart, b: ScoredStart): boolean =>
  (a.warnings - b.warnings || a.panels - b.panels || a.cuts - b.cuts) < 0;

const rejectTooMuch = (choices: number, courses: number): void => {
  if (choices * courses > MOST_WORK)
    throw new InputError(
      `BESTSTART tries at most ${MOST_WORK} courses, got ${choices} starts of ${courses} courses`,
    );
};

/**
 * Tries every start of a plane, from the left and then from the right. A generator that yields after each start, so that
 * a caller can show progress or cancel.
 */
export function* searchBestStart(
  plane: Plane,
  panel: LaidPanel,
): Generator<SearchProgress, BestStart, undefined> {
  const choices = choicesOf(panel);
  let best: ScoredStart | undefined;
  let weighed = 0;
  for (const side of SIDES) {
    const strips = courseStrips(checkedFace(plane, side, panel), panel);
    rejectTooMuch(choices, strips.length);
    const tally = tallyCache(panel, side);
    for (const start of startsOf(side, panel)) {
      const tallies = strips.map((strip) => tally(strip, firstJointIn(strip.course, start, panel)));
      const candidate = score(tallies, start, panel);
      if (!best || isBetter(candidate, best)) best = candidate;
      yield { weighed: ++weighed, choices };
    }
  }
  return { ...(best as ScoredStart), choices: weighed };
}

/** The best start, found without a break. */
export const bestStart = (plane: Plane, panel: LaidPanel): BestStart => {
  const search = searchBestStart(plane, panel);
  for (;;) {
    const step = search.next();
    if (step.done) return step.value;
  }
};
