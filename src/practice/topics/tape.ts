import { feetSpec } from "../../../functions/measure/feet";
import { inchesSpec } from "../../../functions/measure/inches";
import type { Level } from "../../../functions/practice/level";
import { writeInches } from "../../../shared/lengthText";
import { INCHES_PER_FOOT, MM_PER_INCH } from "../../../shared/units";
import { call } from "../../workbook/formula";
import { lengthAnswer, mistakesOf, smallLengthAnswer, type Allowance, type Slips } from "../answers";
import { tapeFigure } from "../figures/tapeFigure";
import type { Setting, Topic } from "../problem";
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
/** Parts of an inch in which half of the finest mark is told. */
const FINEST = 32;
const MM_PER_METER = 1000;

const feetOf = (lengthIn: number): number => Math.floor(lengthIn / INCHES_PER_FOOT);
const inchesPast = (lengthIn: number): number => lengthIn - feetOf(lengthIn) * INCHES_PER_FOOT;

const READING: Slips<TapeFacts> = {
  "read the mark before": ({ readingIn, markIn }) => readingIn - markIn,
  "read the mark after": ({ readingIn, markIn }) => readingIn + markIn,
};

const IN_INCHES: Slips<TapeFacts> = {
  "took ten inches for a foot": ({ readingIn }) => feetOf(readingIn) * TEN + inchesPast(readingIn),
  "left the feet out": ({ readingIn }) => inchesPast(readingIn),
};

/** Of the sum, where the inches of both come to more than a foot. */
const SUM: Slips<TapeFacts> = {
  "took ten inches for a foot": ({ readingIn, otherIn }) => {
    const inches = inchesPast(readingIn) + inchesPast(otherIn);
    if (inches < TEN) return undefined;
    return (feetOf(readingIn) + feetOf(otherIn) + 1) * INCHES_PER_FOOT + inches - TEN;
  },
  "forgot the foot to carry": ({ readingIn, otherIn }) =>
    inchesPast(readingIn) + inchesPast(otherIn) < INCHES_PER_FOOT
      ? undefined
      : readingIn + otherIn - INCHES_PER_FOOT,
};

const halfAMark = ({ markIn }: TapeFacts, { measuring }: Setting): Allowance => ({
  tolerance: markIn / 2,
  why: `${measuring.units === "metric" ? `${plain((markIn / 2) * MM_PER_INCH)} mm` : `${writeInches(markIn / 2, FINEST)}"`}: half of the way to the next mark`,
});

/** What a class of this level reads a tape to. */
export const tapeMarkIn = ({ level, measuring }: Setting): number =>
  measuring.units === "metric" ? MM_MARKS[level] / MM_PER_INCH : INCH_MARKS[level];

export const tapeTopic: Topic<TapeFacts> = {
  id: "tape",
  teachAgain:
    "Read marks aloud in turn, from a whole foot on; name the marks between two inches before reading one.",
  draw: (random, setting) => {
    const mark = tapeMarkIn(setting);
    const reading = (): number =>
      random.whole(Math.round(SHORTEST_IN / mark), Math.round(LONGEST_IN / mark)) * mark;
    return { readingIn: reading(), otherIn: reading(), markIn: mark };
  },
  ask: ({ readingIn, otherIn, markIn }, { measuring }) => ({
    words:
      measuring.units === "metric"
        ? `The pointer stands at a mark of the tape; there is one every ${measuring.writeSmall(markIn)}. The numbers are centimeters from the start of the tape. Read the length, and add the second piece.`
        : `The pointer stands at a mark of the tape; there is one every ${measuring.writeSmall(markIn)}. The last whole foot at or before the pointer is ${feetOf(readingIn)} ft; the numbers are inches past a whole foot. Read the length, and add the second piece.`,
    givens: [{ label: "Second piece, put end to end with the first", text: measuring.write(otherIn) }],
    figure: tapeFigure(readingIn, markIn, measuring),
  }),
  solve: (facts, setting) => {
    const { readingIn, otherIn } = facts;
    const { measuring } = setting;
    const { write } = measuring;
    const allowance = halfAMark(facts, setting);
    const sumIn = readingIn + otherIn;
    const feet = (lengthIn: number): string => call(feetSpec, quoted(write(lengthIn)));
    const reading = lengthAnswer(
      "What the tape reads",
      readingIn,
      measuring,
      mistakesOf(READING, facts),
      allowance,
    );
    const sum = lengthAnswer(
      "Both pieces end to end",
      sumIn,
      measuring,
      measuring.units === "metric" ? [] : mistakesOf(SUM, facts),
      allowance,
    );
    const readStep = lengthStep(
      `The pointer stands at ${write(readingIn)}.`,
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
            ...lengthAnswer("The same in meters", readingIn, measuring, [], allowance),
            field: {
              label: "The same in meters",
              kind: "length",
              unit: "m",
              form: "meters with three decimals",
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
          "The same in inches alone",
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
};
