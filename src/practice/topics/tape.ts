import { feetSpec } from "../../../functions/measure/feet";
import { inchesSpec } from "../../../functions/measure/inches";
import type { Level } from "../../../functions/practice/level";
import { writeInches } from "../../../shared/lengthText";
import { INCHES_PER_FOOT, MM_PER_INCH } from "../../../shared/units";
import { call } from "../../workbook/formula";
import { lengthAnswer, smallLengthAnswer, type Allowance } from "../answers/length";
import { mistakesOf, type CommonMistakes } from "../commonMistakes";
import { tapeFigure } from "../figures/tapeFigure";
import type { Setting, Topic } from "../topic";
import { lengthStep, plain, quoted, smallLengthStep, step } from "../steps";

export type TapeFacts = { readonly readingIn: number; readonly otherIn: number; readonly markIn: number };

const INCH_MARKS: Readonly<Record<Level, number>> = {
  "first hour": 1,
  "half day": 1 / 4,
  "full roof": 1 / 16,
};
const MM_MARKS: Readonly<Record<Level, number>> = { "first hour": 10, "half day": 5, "full roof": 1 };
const SHORTEST_IN = 8 * INCHES_PER_FOOT;
const LONGEST_IN = 30 * INCHES_PER_FOOT;
const TEN = 10;
/** Half of the finest mark is written in this many parts of an inch. */
const FINEST = 32;
const MM_PER_METER = 1000;

const feetOf = (lengthIn: number): number => Math.floor(lengthIn / INCHES_PER_FOOT);
const inchesPast = (lengthIn: number): number => lengthIn - feetOf(lengthIn) * INCHES_PER_FOOT;

const READING: CommonMistakes<TapeFacts> = {
  "read the mark before": ({ readingIn, markIn }) => readingIn - markIn,
  "read the mark after": ({ readingIn, markIn }) => readingIn + markIn,
};

const IN_INCHES: CommonMistakes<TapeFacts> = {
  "counted ten inches to the foot": ({ readingIn }) => feetOf(readingIn) * TEN + inchesPast(readingIn),
  "left out the feet": ({ readingIn }) => inchesPast(readingIn),
};

/** Of a sum whose inches add up to more than a foot. */
const SUM: CommonMistakes<TapeFacts> = {
  "counted ten inches to the foot": ({ readingIn, otherIn }) => {
    const inches = inchesPast(readingIn) + inchesPast(otherIn);
    if (inches < TEN) return undefined;
    return (feetOf(readingIn) + feetOf(otherIn) + 1) * INCHES_PER_FOOT + inches - TEN;
  },
  "forgot to carry the foot": ({ readingIn, otherIn }) =>
    inchesPast(readingIn) + inchesPast(otherIn) < INCHES_PER_FOOT
      ? undefined
      : readingIn + otherIn - INCHES_PER_FOOT,
};

const halfAMark = ({ markIn }: TapeFacts, { measuring }: Setting): Allowance => ({
  tolerance: markIn / 2,
  why: `${measuring.units === "metric" ? `${plain((markIn / 2) * MM_PER_INCH)} mm` : `${writeInches(markIn / 2, FINEST)}"`}: half the distance to the next mark`,
});

/** The distance between the marks that a class of this level reads. */
export const tapeMarkIn = ({ level, measuring }: Setting): number =>
  measuring.units === "metric" ? MM_MARKS[level] / MM_PER_INCH : INCH_MARKS[level];

export const tapeTopic = {
  id: "tape",
  title: "Reading a tape",
  reteachTip:
    "Read marks aloud one by one, starting at a whole foot; name the marks between two inches before reading one.",
  draw: (random, setting) => {
    const mark = tapeMarkIn(setting);
    const reading = (): number =>
      random.whole(Math.round(SHORTEST_IN / mark), Math.round(LONGEST_IN / mark)) * mark;
    return { readingIn: reading(), otherIn: reading(), markIn: mark };
  },
  ask: ({ readingIn, otherIn, markIn }, { measuring }) => ({
    text:
      measuring.units === "metric"
        ? `The pointer is at a mark of the tape. The marks are ${measuring.writeSmall(markIn)} apart; the numbers are centimeters from the start of the tape. Read the length, and add the second piece.`
        : `The pointer is at a mark of the tape. The marks are ${measuring.writeSmall(markIn)} apart. The last whole foot at or before the pointer is ${feetOf(readingIn)} ft; the numbers are inches past a whole foot. Read the length, and add the second piece.`,
    givens: [{ label: "Second piece, end to end with the first", text: measuring.write(otherIn) }],
    figure: tapeFigure(readingIn, markIn, measuring),
  }),
  solve: (facts, setting) => {
    const { readingIn, otherIn } = facts;
    const { measuring } = setting;
    const { write } = measuring;
    const allowance = halfAMark(facts, setting);
    const sumIn = readingIn + otherIn;
    const feet = (lengthIn: number): string => call(feetSpec, quoted(write(lengthIn)));
    const reading = lengthAnswer("Tape reading", readingIn, measuring, mistakesOf(READING, facts), allowance);
    const sum = lengthAnswer(
      "Both pieces end to end",
      sumIn,
      measuring,
      measuring.units === "metric" ? [] : mistakesOf(SUM, facts),
      allowance,
    );
    const readStep = lengthStep(
      `The pointer is at ${write(readingIn)}.`,
      feet(readingIn),
      readingIn,
      measuring,
    );
    const sumStep = lengthStep(
      `${write(readingIn)} + ${write(otherIn)} = ${write(sumIn)}.`,
      `${feet(readingIn)}+${feet(otherIn)}`,
      sumIn,
      measuring,
    );
    if (measuring.units === "metric") {
      const meters = (readingIn * MM_PER_INCH) / MM_PER_METER;
      return {
        answers: [
          reading,
          {
            ...lengthAnswer("The reading in meters", readingIn, measuring, [], allowance),
            field: {
              label: "The reading in meters",
              kind: "length",
              unit: "m",
              format: "meters with three decimals",
            },
            shown: `${meters.toFixed(3)} m`,
          },
          sum,
        ],
        steps: [
          readStep,
          step(
            `${write(readingIn)} ÷ 1000 = ${meters.toFixed(3)} m.`,
            `ROUND(${call(inchesSpec, quoted(write(readingIn)))}*${MM_PER_INCH}/${MM_PER_METER},3)`,
            Number(meters.toFixed(3)),
          ),
          sumStep,
        ],
      };
    }
    return {
      answers: [
        reading,
        smallLengthAnswer(
          "The reading in inches only",
          readingIn,
          measuring,
          mistakesOf(IN_INCHES, facts),
          allowance,
        ),
        sum,
      ],
      steps: [
        readStep,
        smallLengthStep(
          `${feetOf(readingIn)} × 12 + ${measuring.writeSmall(inchesPast(readingIn))} = ${measuring.writeSmall(readingIn)}.`,
          call(inchesSpec, quoted(write(readingIn))),
          readingIn,
          measuring,
        ),
        sumStep,
      ],
    };
  },
} as const satisfies Topic<TapeFacts>;
