import type { Cell } from "../../../shared/cell";
import { isWithin, NEAR_TOLERANCES } from "../../../functions/practice/answerCheck";
import { INCHES_PER_FOOT } from "../../../shared/units";
import type { Answer, AnswerKind, Field } from "../problem";
import { readTyped } from "./readTyped";

export type Verdict = "right" | "near" | "wrong" | "blank";

/** How an answer was found, and the slip that leads to what was written or why it can't be read. */
export interface Marked {
  readonly verdict: Verdict;
  readonly slip?: string;
}

const wrong: Marked = { verdict: "wrong" };

/** What is begun is counted; with its decimals kept, it can't be taken for a slip that leads to another count. */
const NOT_ROUNDED_UP = "did not round up to whole ones";

/** Lengths right but for their unit, by the factor that they are off by. */
const INCH_SLIPS: readonly (readonly [factor: number, slip: string])[] = [
  [INCHES_PER_FOOT, "took inches for feet"],
  [1 / INCHES_PER_FOOT, "took feet for inches"],
];
const METRIC_SLIPS: readonly (readonly [factor: number, slip: string])[] = [
  [1 / 10, "took centimeters for millimeters"],
  [10, "took millimeters for centimeters"],
  [1 / 1000, "took meters for millimeters"],
  [1000, "took millimeters for meters"],
];

const unitSlips = ({ kind, unit }: Field): readonly (readonly [number, string])[] => {
  if (kind !== "length") return [];
  return unit === "mm" || unit === "m" ? METRIC_SLIPS : INCH_SLIPS;
};

/** What an answer of each kind is, to say that what was written is none. */
const KINDS_IN_WORDS: Readonly<Record<AnswerKind, string>> = {
  length: "a length",
  pitch: "a pitch",
  degrees: "an angle",
  number: "a number",
  count: "a count in digits",
  area: "an area",
  money: "an amount of money",
  word: "a word",
};

const markNumber = (given: number, value: number, { field, tolerance, mistakes }: Answer): Marked => {
  const isNear = (to: number, within: number): boolean => isWithin(given, to, within);
  if (isNear(value, tolerance)) return { verdict: "right" };
  const mistake = mistakes.find((each) => isNear(each.value, tolerance));
  if (mistake) return { verdict: "near", slip: mistake.slip };
  if (field.kind === "count" && Math.ceil(given) === value) return { verdict: "near", slip: NOT_ROUNDED_UP };
  const unit = unitSlips(field).find(([factor]) => isNear(value * factor, tolerance * factor));
  if (unit) return { verdict: "near", slip: unit[1] };
  return isNear(value, NEAR_TOLERANCES * tolerance) ? { verdict: "near", slip: "rounded too early" } : wrong;
};

const markOne = (given: number | string, answer: Answer): Marked => {
  if (typeof answer.value === "string") return given === answer.value ? { verdict: "right" } : wrong;
  return typeof given === "number" ? markNumber(given, answer.value, answer) : wrong;
};

/** Right, near with the slip that leads there, wrong, or blank; of what may be meant, what is best. */
export const markAnswer = (answer: Answer, typed: Cell): Marked => {
  const readings = readTyped(typed, answer.field);
  if (readings === null) return { verdict: "blank" };
  if (readings.length === 0)
    return { verdict: "wrong", slip: `can't be read as ${KINDS_IN_WORDS[answer.field.kind]}` };
  const marks = readings.map((given) => markOne(given, answer));
  const of = (verdict: Verdict): Marked | undefined => marks.find((mark) => mark.verdict === verdict);
  return of("right") ?? of("near") ?? wrong;
};
