import { startFraction } from "../../../functions/stagger/staggerOffset";
import { starterBlank, starterBlankSpec } from "../../../functions/stagger/starterBlank";
import { starterCover, starterCoverSpec } from "../../../functions/stagger/starterCover";
import { starterSetsSpec } from "../../../functions/stagger/starterSets";
import { staggerPattern } from "../../../shared/kinds/staggerPattern";
import { DEFAULT_PATTERN } from "../../../shared/kinds/staggerPattern";
import { wholeCount } from "../../../shared/rounding";
import { call } from "../../workbook/formula";
import { countAnswer } from "../answers/count";
import { smallLengthAnswer } from "../answers/length";
import { mistakesOf, type CommonMistakes } from "../commonMistakes";
import { starterFigure } from "../figures/starterFigure";
import type { Topic } from "../topic";
import { plain, quoted, smallLengthStep, step } from "../steps";

/** `gableCourses` is 0 if sets aren't asked for. */
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

const COVER: CommonMistakes<StarterFacts> = {
  "left out the setback": shareOf,
  "added the setback": (facts) => shareOf(facts) + facts.setbackIn,
  "used the next course's starter": (facts) => nextShareOf(facts) - facts.setbackIn,
};

const BLANK: CommonMistakes<StarterFacts> = {
  "left out the setback": (facts) => shareOf(facts) + facts.foldIn,
  "left out the fold": (facts) => shareOf(facts) - facts.setbackIn,
  "subtracted the fold": (facts) => shareOf(facts) - facts.setbackIn - facts.foldIn,
  "used the next course's starter": (facts) => nextShareOf(facts) - facts.setbackIn + facts.foldIn,
};

const SETS: CommonMistakes<StarterFacts> = {
  "used a set for each course": ({ gableCourses }) => gableCourses,
};

export const startersTopic = {
  id: "starters",
  title: "Stagger and starters",
  reteachTip:
    "Lay four starters on the floor in order: full, half, three-quarter, quarter. Then subtract the setback and add the fold.",
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
      text:
        `At the gable, courses start in rotation with a full, a half, a three-quarter and a quarter panel, then a full one again. The starter stops short of the gable edge by the setback; its fold is bent up there. Find the width that the starter of course ${course} covers, and the width of the blank to cut for it before bending.` +
        (gableCourses === 0 ? "" : " Also find how many whole sets of four starters the gable takes."),
      givens: [
        { label: "Exposed panel width", text: writeSmall(panelWidthIn) },
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
          `Course ${course} starts like course ${((course - 1) % PATTERN.length) + 1} of four: ${plain(share, 2)} × ${writeSmall(panelWidthIn)} = ${writeSmall(share * panelWidthIn)}; minus the setback of ${writeSmall(setbackIn)}: ${writeSmall(cover)}.`,
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
} as const satisfies Topic<StarterFacts>;
