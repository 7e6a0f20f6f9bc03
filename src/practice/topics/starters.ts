import { startFraction } from "../../../functions/stagger/staggerOffset";
import { starterBlank, starterBlankSpec } from "../../../functions/stagger/starterBlank";
import { starterCover, starterCoverSpec } from "../../../functions/stagger/starterCover";
import { starterSetsSpec } from "../../../functions/stagger/starterSets";
import { staggerPattern } from "../../../shared/kinds/staggerPattern";
import { DEFAULT_PATTERN } from "../../../shared/kinds/staggerPattern";
import { wholeCount } from "../../../shared/rounding";
import { call } from "../../workbook/formula";
import { countAnswer, mistakesOf, smallLengthAnswer, type Slips } from "../answers";
import { starterFigure } from "../figures/starterFigure";
import type { Topic } from "../problem";
import { plain, quoted, smallLengthStep, step } from "../steps";

/** `gableCourses` is 0 where sets aren't asked for. */
export type StarterFacts = {
  readonly course: number;
  readonly panelWidthIn: number;
  readonly exposureIn: number;
  readonly setbackIn: number;
  readonly foldIn: number;
  readonly gableCourses: number;
};

const PATTERN = staggerPattern.read([[DEFAULT_PATTERN]], "pattern");

const shareOf = ({ course, panelWidthIn }: StarterFacts): number =>
  startFraction(course, PATTERN) * panelWidthIn;
const nextShareOf = ({ course, panelWidthIn }: StarterFacts): number =>
  startFraction(course + 1, PATTERN) * panelWidthIn;

const COVER: Slips<StarterFacts> = {
  "forgot the setback": shareOf,
  "added the setback": (facts) => shareOf(facts) + facts.setbackIn,
  "took the next course's start": (facts) => nextShareOf(facts) - facts.setbackIn,
};

const BLANK: Slips<StarterFacts> = {
  "forgot the setback": (facts) => shareOf(facts) + facts.foldIn,
  "forgot the fold": (facts) => shareOf(facts) - facts.setbackIn,
  "took the fold off": (facts) => shareOf(facts) - facts.setbackIn - facts.foldIn,
  "took the next course's start": (facts) => nextShareOf(facts) - facts.setbackIn + facts.foldIn,
};

const SETS: Slips<StarterFacts> = {
  "took a set for each course": ({ gableCourses }) => gableCourses,
};

export const startersTopic: Topic<StarterFacts> = {
  id: "starters",
  teachAgain:
    "Lay four starters on the floor in turn: full, half, three-quarter, quarter; then take the setback off and put the fold on.",
  draw: (random, { level, measuring }) => ({
    course: random.whole(1, level === "first hour" ? 4 : 16),
    panelWidthIn: measuring.pickIn(random, [24, 20, 16], [600, 500, 400]),
    exposureIn: measuring.pickIn(random, [12, 10, 9], [300, 250, 225]),
    setbackIn: measuring.pickIn(random, [1, 1.5], [25, 40]),
    foldIn: measuring.pickIn(random, [2, 2.5, 3], [50, 60, 75]),
    gableCourses: level === "first hour" ? 0 : random.whole(9, 30),
  }),
  ask: ({ course, panelWidthIn, setbackIn, foldIn, gableCourses }, { measuring }) => {
    const { writeSmall } = measuring;
    return {
      words:
        `Courses start at the gable in turn with a full, a half, a three-quarter and a quarter panel, and then again from the full one. The starter stops short of the gable's edge by the setback; its fold is bent up there. Find what the starter of course ${course} covers, and the blank that is cut for it before the bend.` +
        (gableCourses === 0 ? "" : " Find also how many whole sets of four starters the gable takes."),
      givens: [
        { label: "Width of a panel that shows", text: writeSmall(panelWidthIn) },
        { label: "Gable setback", text: writeSmall(setbackIn) },
        { label: "Gable fold", text: writeSmall(foldIn) },
        ...(gableCourses === 0 ? [] : [{ label: "Courses up the gable", text: String(gableCourses) }]),
      ],
      figure: starterFigure(setbackIn, panelWidthIn, {
        setback: `setback ${writeSmall(setbackIn)}`,
        width: `panel ${writeSmall(panelWidthIn)}`,
      }),
    };
  },
  solve: (facts, { measuring }) => {
    const { course, panelWidthIn, exposureIn, setbackIn, foldIn, gableCourses } = facts;
    const { writeSmall } = measuring;
    const share = startFraction(course, PATTERN);
    const cover = starterCover(course, panelWidthIn, setbackIn, PATTERN);
    const blank = starterBlank(course, panelWidthIn, setbackIn, foldIn, PATTERN);
    const sets = gableCourses / PATTERN.length;
    const args = [String(course), quoted(writeSmall(panelWidthIn)), quoted(writeSmall(setbackIn))];
    return {
      answers: [
        smallLengthAnswer(`Starter of course ${course} covers`, cover, measuring, mistakesOf(COVER, facts)),
        smallLengthAnswer("Blank to cut for it", blank, measuring, mistakesOf(BLANK, facts)),
        ...(gableCourses === 0
          ? []
          : [countAnswer("Sets of starters", "sets", sets, mistakesOf(SETS, facts))]),
      ],
      steps: [
        smallLengthStep(
          `Course ${course} starts as course ${((course - 1) % PATTERN.length) + 1} of the four: ${plain(share, 2)} × ${writeSmall(panelWidthIn)} = ${writeSmall(share * panelWidthIn)}; less the setback of ${writeSmall(setbackIn)}: ${writeSmall(cover)}.`,
          call(starterCoverSpec, ...args),
          cover,
          measuring,
        ),
        smallLengthStep(
          `${writeSmall(cover)} + fold of ${writeSmall(foldIn)} = ${writeSmall(blank)}.`,
          call(starterBlankSpec, ...args, quoted(writeSmall(foldIn))),
          blank,
          measuring,
        ),
        ...(gableCourses === 0
          ? []
          : [
              step(
                `${gableCourses} ÷ ${PATTERN.length} = ${plain(sets, 2)}: ${wholeCount(sets)} sets.`,
                call(
                  starterSetsSpec,
                  quoted(writeSmall(gableCourses * exposureIn)),
                  quoted(writeSmall(exposureIn)),
                ),
                wholeCount(sets),
              ),
            ]),
      ],
    };
  },
};
