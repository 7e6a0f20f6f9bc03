import { CellError } from "../../shared/cell";
import { InputError } from "../../shared/inputError";
import type { CellKind } from "../../shared/kinds/kind";
import { readLengthText } from "../../shared/lengthText";
import { notTaken } from "../../shared/kinds/bounds";
import { isSame } from "../../shared/rounding";
import { TEXT_RESULT } from "../../shared/result";
import { defineFunction, omittable, required } from "../../shared/spec/spec";
import { INCHES_PER_FOOT, MM_PER_INCH } from "../../shared/units";
import { inUnit } from "./answerUnits";
import { readAnswer, type AnswerReading } from "./readAnswer";

export type Mark = "right" | "near" | "wrong";

/** The default tolerances: for a length in inches, and for a number with decimals as a share of it. */
const USUAL_TOLERANCE_IN = 1 / 8;
const USUAL_SHARE = 0.005;
/** Up to this many tolerances off counts as near: the right method, rounded too early. */
export const NEAR_TOLERANCES = 4;

const MM_PER_METER = 1000;
/** Factors between units that are easily mixed up. */
const UNIT_FACTORS = [INCHES_PER_FOOT, MM_PER_INCH, MM_PER_INCH * INCHES_PER_FOOT, MM_PER_METER, 10];

/** Whether a number is right except for its unit. */
export const isUnitMixUp = (answer: number, expected: number, tolerance: number): boolean =>
  UNIT_FACTORS.flatMap((factor) => [factor, 1 / factor]).some(
    (factor) => Math.abs(answer - expected * factor) <= tolerance * factor,
  );

export const isWithin = (answer: number, expected: number, tolerance: number): boolean =>
  Math.abs(answer - expected) <= tolerance || isSame(answer, expected);

/** `tolerance` is 0 for a count: then only a unit slip is near. */
export const markNumber = (answer: number, expected: number, tolerance: number): Mark => {
  if (isWithin(answer, expected, tolerance)) return "right";
  const isNear =
    Math.abs(answer - expected) <= NEAR_TOLERANCES * tolerance || isUnitMixUp(answer, expected, tolerance);
  return expected !== 0 && isNear ? "near" : "wrong";
};

const amountOf = (reading: AnswerReading): number | undefined => {
  if (reading.kind === "length") return reading.inches;
  if (reading.kind === "pitch") return reading.rise;
  return reading.kind === "number" ? reading.number : undefined;
};

const usualTolerance = (kind: AnswerReading["kind"], expected: number): number => {
  if (kind === "length") return USUAL_TOLERANCE_IN;
  return Number.isInteger(expected) ? 0 : USUAL_SHARE * Math.abs(expected);
};

/** A length without its unit may be meant correctly, but it doesn't say so. */
const lacksUnit = (answer: AnswerReading, expected: AnswerReading): boolean =>
  (answer.kind === "number" && expected.kind === "length") ||
  (answer.kind === "length" && expected.kind === "number");

export const checkAnswer = (
  answer: AnswerReading,
  expected: AnswerReading,
  tolerance: number | undefined,
): Mark => {
  if (expected.kind === "words" && answer.kind === "words")
    return expected.words === answer.words ? "right" : "wrong";
  const wanted = amountOf(expected);
  const given =
    answer.kind === "number"
      ? inUnit(answer.number, answer.unit, expected.kind === "number" ? expected.unit : expected.kind)
      : amountOf(answer);
  if (given === undefined || wanted === undefined) return "wrong";
  const mark = markNumber(given, wanted, tolerance ?? usualTolerance(expected.kind, wanted));
  return mark === "right" && lacksUnit(answer, expected) ? "near" : mark;
};

const anyAnswer: CellKind<AnswerReading> = {
  shape: "cell",
  takes: "a number, a length or pitch as it is typed, or words",
  read: (cell, label) => {
    if (cell instanceof CellError || typeof cell === "boolean") throw notTaken(label, anyAnswer.takes, cell);
    return readAnswer(cell);
  },
};

const TAKES_TOLERANCE = "a number, or a length with its unit such as 1/8 in";

/** In inches where the answer is a length, otherwise in the unit of the answer. */
const anyTolerance: CellKind<number> = {
  shape: "cell",
  takes: TAKES_TOLERANCE,
  read: (cell, label) => {
    const reading = typeof cell === "string" ? readLengthText(cell) : undefined;
    const tolerance = reading ? ("inches" in reading ? reading.inches : reading.bare) : cell;
    if (typeof tolerance !== "number") throw notTaken(label, TAKES_TOLERANCE, cell);
    if (!(tolerance >= 0)) throw new InputError(`${label} must be at least 0, got ${tolerance}`);
    return tolerance;
  },
};

export const answerCheckSpec = defineFunction({
  id: "ANSWERCHECK",
  concept: "practice",
  summary: "Marks an answer right, near (rounded too early, or a wrong unit) or wrong.",
  parameters: [
    required("answer", anyAnswer, "The answer; tape text and pitches are understood."),
    required("expected", anyAnswer, "The right answer."),
    omittable(
      "tolerance",
      anyTolerance,
      "How far off it may be; in inches for a length. If left out: 1/8 in, 0 for a whole number, 0.5% otherwise.",
    ),
  ],
  heading: "Answer check",
  result: TEXT_RESULT,
  formula:
    "right: off by at most the tolerance; near: off by at most four times the tolerance, or right except for the unit (a factor of 12, 25.4, 304.8, 10 or 1000, or a length without a unit); otherwise wrong",
  source: "a rule of Gablewright, no published source",
  examples: [
    { args: [`15' 7 3/4"`, `15' 7 13/16"`], result: "right", from: "1/16 in off, 1/8 in allowed" },
    { args: [`15' 7 1/2"`, `15' 7 13/16"`], result: "near", from: "5/16 in off, within four times 1/8 in" },
    { args: ["15.65 in", `15' 7 13/16"`], result: "near", from: "15.65 ft is 187.8 in: inches for feet" },
    { args: [20, 21], result: "wrong", from: "a count must be exact" },
    { args: ["6/12", "6 in 12"], result: "right", from: "the same pitch" },
  ],
  calculate: checkAnswer,
});
