import type { Random } from "../../../functions/practice/random";
import { problemOf, type Problem, type Setting } from "../problem";
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
import type { DayRoof } from "./dayRoof";

export interface Session {
  readonly title: string;
  readonly starts: string;
  readonly minutes: number;
  /** What is shown and done together before the problems. */
  readonly together: string;
  /** How many problems, each on a page. */
  readonly pages: number;
  /** How the day's roof goes on; stands before each problem of the session. */
  readonly story: string;
  readonly problems: (roof: DayRoof, setting: Setting, random: Random) => Problem[];
}

const WASTE_PERCENT = 10;
const ROWS_OF_NAILS = 2;

/** A day of eight sessions, with fifteen minutes' break mid-morning and mid-afternoon and three quarters of an hour at noon. */
export const SESSIONS: readonly Session[] = [
  {
    title: "Reading a tape",
    pages: 1,
    starts: "08:00",
    minutes: 40,
    together: "Hand round tapes; read marks aloud; measure the room, each pair, and compare.",
    story: "The day's roof is measured first: the building along its ridge, in two pieces.",
    problems: ({ halfWidthIn, buildingLengthIn }, setting) => [
      problemOf(
        tapeTopic,
        // Where the tape is set down is no matter: as far along as the building is wide to its middle.
        { readingIn: halfWidthIn, otherIn: buildingLengthIn - halfWidthIn, markIn: tapeMarkIn(setting) },
        setting,
      ),
    ],
  },
  {
    title: "Pitch",
    pages: 1,
    starts: "08:45",
    minutes: 45,
    together: "Level and square on a board that leans: rise over run, and the angle.",
    story: "The day's roof: its rise is measured in the attic.",
    problems: ({ halfWidthIn, riseIn }, setting) => [
      problemOf(pitchTopic, { runIn: halfWidthIn, riseIn, isSpanGiven: 1 }, setting),
    ],
  },
  {
    title: "Rafter factor",
    pages: 1,
    starts: "09:45",
    minutes: 50,
    together: "Step the slope off with the square; measure the slant; then the factor.",
    story: "The day's roof: from pitch and run to the length up the slope.",
    problems: ({ halfWidthIn, rise, overhangIn }, setting) => [
      problemOf(rafterTopic, { runIn: halfWidthIn, rise, overhangIn }, setting),
    ],
  },
  {
    title: "Gables, and a hip",
    pages: 2,
    starts: "10:40",
    minutes: 65,
    together: "Fold the roof of card; stand a stick along its hip.",
    story:
      "The day's roof by itself; and a hipped porch of the same pitch, which is built on later and is a problem of its own.",
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
    pages: 2,
    starts: "12:30",
    minutes: 60,
    together: "Chalk courses on the floor; lay four starters; bend a fold.",
    story: "The day's roof: its courses, and what is cut on the ground for one gable edge.",
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
    pages: 2,
    starts: "13:35",
    minutes: 50,
    together: "Lap strips of card; set clips along a batten: posts and gaps.",
    story: "The day's roof: the trim of one eave, and its fasteners.",
    problems: ({ eaveIn, trimStockIn, trimLapIn, clipSpacingIn }, setting) => [
      problemOf(trimTopic, { runIn: eaveIn, stockIn: trimStockIn, lapIn: trimLapIn }, setting),
      problemOf(fastenersTopic, { runIn: eaveIn, spacingIn: clipSpacingIn, rows: ROWS_OF_NAILS }, setting),
    ],
  },
  {
    title: "Underlayment",
    pages: 1,
    starts: "14:40",
    minutes: 35,
    together: "Three strips of paper with their laps: what each course gains.",
    story: "The day's roof: one side of it is covered first.",
    problems: ({ eaveIn, slopeIn }, setting, random) => {
      const drawn = underlaymentTopic.draw(random, setting);
      return [problemOf(underlaymentTopic, { ...drawn, eaveIn, slopeIn }, setting)];
    },
  },
  {
    title: "Order and change order",
    pages: 2,
    starts: "15:20",
    minutes: 55,
    together: "Count packs, not panels; write before and after side by side.",
    story: "The day's roof is ordered, and then the owner changes it, and the porch too.",
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
