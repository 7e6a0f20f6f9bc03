import { InputError } from "../../../shared/inputError";
import { SIDES, type LayoutStart, type Side } from "../../../shared/layoutStart";
import type { Panel } from "../../../shared/panel";
import { wholeCount } from "../../../shared/rounding";
import { courseConcerns, pieceConcerns } from "./concerns";
import { layCourse, type LaidCourse } from "./course";
import type { Plane } from "./face";
import { firstJointIn } from "./joints";
import { checkedFace } from "./layCourses";
import { reusable, type Reusable } from "./piece";
import { pairsIn } from "./sources";
import { stripsOf, type Strip } from "./strips";

/** The start is moved by this from one choice to the next. */
const SHIFT_STEP_IN = 0.25;
/** Choices times courses, so that a search ends in seconds. */
const MOST_WORK = 1_000_000;

/** What a start leads to. */
export interface WeighedStart {
  readonly start: LayoutStart;
  readonly warnings: number;
  readonly panels: number;
  readonly cuts: number;
}

export interface SearchProgress {
  readonly weighed: number;
  readonly choices: number;
}

export interface BestStart extends WeighedStart {
  readonly choices: number;
}

/** What counts of one course with its joints in one place; nothing of it depends on the other courses. */
interface CourseTally {
  readonly whole: number;
  readonly warnings: number;
  readonly pieces: readonly Reusable[];
}

const tallyOf = ({ strip, wholeRuns, cuts }: LaidCourse, panel: Panel, side: Side): CourseTally => ({
  whole: wholeRuns.reduce((sum, { count }) => sum + count, 0),
  warnings: cuts.reduce(
    (sum, { piece }) => sum + pieceConcerns(piece, panel, side).length,
    courseConcerns(strip, panel).length,
  ),
  pieces: cuts.map(({ piece }) => reusable(piece)),
});

/** Many starts give a course the same first joint, so each course is laid once for each place of its first joint. */
const tallyCache = (panel: Panel, side: Side): ((strip: Strip, jointIn: number) => CourseTally) => {
  const known = new Map<string, CourseTally>();
  return (strip, jointIn) => {
    const key = `${strip.course} ${jointIn}`;
    const tally = known.get(key) ?? tallyOf(layCourse(strip, jointIn, panel), panel, side);
    known.set(key, tally);
    return tally;
  };
};

const weigh = (tallies: readonly CourseTally[], start: LayoutStart, panel: Panel): WeighedStart => {
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
const isBetter = (a: WeighedStart, b: WeighedStart): boolean =>
  a.warnings - b.warnings < 0 ||
  (a.warnings === b.warnings && (a.panels < b.panels || (a.panels === b.panels && a.cuts < b.cuts)));

/** Every start of a side: each shift over one panel, and from it each step of the stagger. */
const startsOf = (side: Side, panel: Panel): LayoutStart[] =>
  Array.from({ length: wholeCount(panel.exposedWidthIn / SHIFT_STEP_IN) }, (_, shift) =>
    panel.staggerPattern.map((_step, index) => ({
      side,
      shiftIn: shift * SHIFT_STEP_IN,
      step: index + 1,
    })),
  ).flat();

/**
 * Weighs every start of a plane, from the left then from the right. A generator, so that a caller may stop between
 * two choices to show how far it is, or give up; it yields after each.
 */
export function* searchBestStart(
  plane: Plane,
  panel: Panel,
): Generator<SearchProgress, BestStart, undefined> {
  const starts = SIDES.flatMap((side) => startsOf(side, panel));
  let best: WeighedStart | undefined;
  let weighed = 0;
  for (const side of SIDES) {
    const strips = stripsOf(checkedFace(plane, side, panel), panel);
    refuseTooMuch(starts.length, strips.length);
    const tally = tallyCache(panel, side);
    for (const start of starts.filter((each) => each.side === side)) {
      const tallies = strips.map((strip) => tally(strip, firstJointIn(strip.course, start, panel)));
      const candidate = weigh(tallies, start, panel);
      if (!best || isBetter(candidate, best)) best = candidate;
      yield { weighed: ++weighed, choices: starts.length };
    }
  }
  return { ...(best as WeighedStart), choices: weighed };
}

const refuseTooMuch = (choices: number, courses: number): void => {
  if (choices * courses > MOST_WORK)
    throw new InputError(
      `BESTSTART weighs at most ${MOST_WORK} courses, got ${choices} starts of ${courses} courses`,
    );
};

/** The best start, found in one go. */
export const bestStart = (plane: Plane, panel: Panel): BestStart => {
  const search = searchBestStart(plane, panel);
  for (;;) {
    const step = search.next();
    if (step.done) return step.value;
  }
};
