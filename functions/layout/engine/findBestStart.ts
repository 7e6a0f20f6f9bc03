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

/** Choices times courses, so that a search ends in seconds. */
const MOST_WORK = 300_000;

/** What a start leads to. */
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

/** Fewest warnings first, then fewest panels, then fewest cuts; of equals the one weighed earlier. */
const isBetter = (a: ScoredStart, b: ScoredStart): boolean =>
  (a.warnings - b.warnings || a.panels - b.panels || a.cuts - b.cuts) < 0;

const refuseTooMuch = (choices: number, courses: number): void => {
  if (choices * courses > MOST_WORK)
    throw new InputError(
      `BESTSTART weighs at most ${MOST_WORK} courses, got ${choices} starts of ${courses} courses`,
    );
};

/**
 * Weighs every start of a plane, from the left then from the right. A generator, so that a caller may stop between
 * two choices to show how far it is, or give up; it yields after each.
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
    refuseTooMuch(choices, strips.length);
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

/** The best start, found in one go. */
export const bestStart = (plane: Plane, panel: LaidPanel): BestStart => {
  const search = searchBestStart(plane, panel);
  for (;;) {
    const step = search.next();
    if (step.done) return step.value;
  }
};
