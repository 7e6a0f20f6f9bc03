import type { Random } from "../../../functions/practice/random";
import { problemOf, type Problem } from "../problems/problem";
import type { Setting } from "../topic";
import { changeOrderTopic } from "../topics/changeOrder";
import { coursesTopic } from "../topics/courses";
import { fastenersTopic } from "../topics/fasteners";
import { gablesTopic } from "../topics/gables";
import { hipsTopic } from "../topics/hips";
import { orderTopic, packsOf } from "../topics/order";
import { pitchTopic } from "../topics/pitch";
import { rafterTopic } from "../topics/rafter";
import { startersTopic } from "../topics/starters";
import { tapeMarkIn, tapeTopic } from "../topics/tape";
import { trimTopic } from "../topics/trim";
import { underlaymentTopic } from "../topics/underlayment";
import type { CourseRoof } from "./courseRoof";

export interface CourseSession {
  readonly title: string;
  readonly starts: string;
  readonly minutes: number;
  /** The hands-on exercise before the problems. */
  readonly handsOn: string;
  /** How many problems, one per page. */
  readonly problemCount: number;
  /** Printed before each problem of the session: where the course's roof comes in. */
  readonly intro: string;
  readonly problems: (roof: CourseRoof, setting: Setting, random: Random) => Problem[];
}

const WASTE_PERCENT = 10;
const NAIL_ROWS = 2;

/**
 * The day's eight sessions, with a 15-minute break in the morning and one in the afternoon, and 45 minutes for lunch. Pages
 * already handed out depend on every problem here: a topic that is added later doesn't join the course.
 */
export const COURSE_SESSIONS: readonly CourseSession[] = [
  {
    title: "Reading a tape",
    problemCount: 1,
    starts: "08:00",
    minutes: 40,
    handsOn: "Pass out tapes and read marks aloud. Each pair measures the room; compare results.",
    intro: "Today's roof starts with a tape: the building is measured along its ridge, in two pieces.",
    problems: ({ halfWidthIn, buildingLengthIn }, setting) => [
      problemOf(
        tapeTopic,
        // Any split of the building's length would do: half the width makes the first piece.
        { readingIn: halfWidthIn, otherIn: buildingLengthIn - halfWidthIn, markIn: tapeMarkIn(setting) },
        setting,
      ),
    ],
  },
  {
    title: "Pitch",
    problemCount: 1,
    starts: "08:45",
    minutes: 45,
    handsOn: "Lean a board; find its rise over run with level and square, then its angle.",
    intro: "Today's roof: its rise is measured in the attic.",
    problems: ({ halfWidthIn, riseIn }, setting) => [
      problemOf(pitchTopic, { runIn: halfWidthIn, riseIn, isSpanGiven: 1 }, setting),
    ],
  },
  {
    title: "Rafter factor",
    problemCount: 1,
    starts: "09:45",
    minutes: 50,
    handsOn: "Step off the slope with a framing square; measure the slant; then find the factor.",
    intro: "Today's roof: from pitch and run to the slope length.",
    problems: ({ halfWidthIn, rise, overhangIn }, setting) => [
      problemOf(rafterTopic, { runIn: halfWidthIn, rise, overhangIn }, setting),
    ],
  },
  {
    title: "Gables, and a hip",
    problemCount: 2,
    starts: "10:40",
    minutes: 65,
    handsOn: "Fold the roof from card stock; stand a stick along its hip.",
    intro:
      "Today's roof, and a hipped porch of the same pitch. The porch is added later and is a separate problem.",
    problems: ({ buildingLengthIn, buildingWidthIn, rise, overhangIn, porchRunIn }, setting) => [
      problemOf(
        gablesTopic,
        { lengthIn: buildingLengthIn, widthIn: buildingWidthIn, rise, overhangIn },
        setting,
      ),
      problemOf(hipsTopic, { runIn: porchRunIn, rise }, setting),
    ],
  },
  {
    title: "Courses and starters",
    problemCount: 2,
    starts: "12:30",
    minutes: 60,
    handsOn: "Chalk courses on the floor; lay four starters; bend a fold.",
    intro: "Today's roof: its courses, and what is cut on the ground for one gable edge.",
    problems: ({ slopeIn, courses, ...roof }, setting) => [
      problemOf(coursesTopic, { slopeIn, exposureIn: roof.exposedHeightIn, course: 6 }, setting),
      problemOf(
        startersTopic,
        {
          course: 7,
          panelWidthIn: roof.exposedWidthIn,
          exposureIn: roof.exposedHeightIn,
          setbackIn: roof.gableSetbackIn,
          foldIn: roof.gableFoldIn,
          gableCourses: courses,
        },
        setting,
      ),
    ],
  },
  {
    title: "Trim, clips and nails",
    problemCount: 2,
    starts: "13:35",
    minutes: 50,
    handsOn: "Lap strips of card stock; set clips along a batten and count posts and gaps.",
    intro: "Today's roof: the trim of one eave, and its fasteners.",
    problems: ({ eaveIn, trimStockIn, trimLapIn, clipSpacingIn }, setting) => [
      problemOf(trimTopic, { runIn: eaveIn, stockIn: trimStockIn, lapIn: trimLapIn }, setting),
      problemOf(fastenersTopic, { runIn: eaveIn, spacingIn: clipSpacingIn, rows: NAIL_ROWS }, setting),
    ],
  },
  {
    title: "Underlayment",
    problemCount: 1,
    starts: "14:40",
    minutes: 35,
    handsOn: "Lap three strips of paper: see how much each course gains.",
    intro: "Today's roof: one side is covered first.",
    problems: ({ eaveIn, slopeIn }, setting, random) => {
      const drawn = underlaymentTopic.draw(random, setting);
      return [problemOf(underlaymentTopic, { ...drawn, eaveIn, slopeIn }, setting)];
    },
  },
  {
    title: "Order and change order",
    problemCount: 2,
    starts: "15:20",
    minutes: 55,
    handsOn: "Count packs, not panels. Write before and after side by side.",
    intro: "Today's roof is ordered. Then the owner changes the order and adds the porch.",
    problems: ({ areaSqFt, exposedWidthIn, exposedHeightIn }, setting, random) => {
      const order = { areaSqFt, exposedWidthIn, exposedHeightIn, wastePercent: WASTE_PERCENT, perPack: 10 };
      const drawn = changeOrderTopic.draw(random, setting);
      const packsBefore = packsOf(order);
      const packsAfter = packsBefore + drawn.packsAfter - drawn.packsBefore;
      return [
        problemOf(orderTopic, order, setting),
        problemOf(changeOrderTopic, { ...drawn, packsBefore, packsAfter }, setting),
      ];
    },
  },
];
