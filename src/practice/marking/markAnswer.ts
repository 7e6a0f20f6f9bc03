import type { Cell } from "../../../shared/cell";
import { isWithin, NEAR_TOLERANCES } from "../../../functions/practice/answerCheck";
import { INCHES_PER_FOOT } from "../../../shared/units";
import type { Answer, AnswerKind, Field } from "../topic";
import { parseAnswer } from "./parseAnswer";

export type Verdict = "right" | "near" | "wrong" | "blank";

/** A verdict, and the mistake that gives the student's answer or the reason it can't be read. */
export interface Marked {
  readonly verdict: Verdict;
  readonly mistake?: string;
}

const wrong: Marked = { verdict: "wrong" };

const NOT_ROUNDED_UP = "did not round up to a whole number";

/** Lengths that are right except for the unit, by the factor they are off. */
const INCH_MIX_UPS: readonly (readonly [factor: number, mistake: string])[] = [
  [INCHES_PER_FOOT, "used inches for feet"],
  [1 / INCHES_PER_FOOT, "used feet for inches"],
];
const METRIC_MIX_UPS: readonly (readonly [factor: number, mistake: string])[] = [
  [1 / 10, "used centimeters for millimeters"],
  [10, "used millimeters for centimeters"],
  [1 / 1000, "used meters for millimeters"],
  [1000, "used millimeters for meters"],
];

const unitMixUps = ({ kind, unit }: Field): readonly (readonly [number, string])[] => {
  if (kind !== "length") return [];
  return unit === "mm" || unit === "m" ? METRIC_MIX_UPS : INCH_MIX_UPS;
};

/** What can't be read, in the remark on an answer. */
const KIND_NAMES: Readonly<Record<AnswerKind, string>> = {
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
  if (mistake) return { verdict: "near", mistake: mistake.name };
  if (field.kind === "count" && Math.ceil(given) === value)
    return { verdict: "near", mistake: NOT_ROUNDED_UP };
  const mixUp = unitMixUps(field).find(([factor]) => isNear(value * factor, tolerance * factor));
  if (mixUp) return { verdict: "near", mistake: mixUp[1] };
  return isNear(value, NEAR_TOLERANCES * tolerance)
    ? { verdict: "near", mistake: "rounded too early" }
    : wrong;
};

const markReading = (given: number | string, answer: Answer): Marked => {
  if (typeof answer.value === "string") return given === answer.value ? { verdict: "right" } : wrong;
  return typeof given === "number" ? markNumber(given, answer.value, answer) : wrong;
};

/** Right, near with the mistake that gives it, wrong, or blank. An ambiguous answer gets its best reading. */
export const markAnswer = (answer: Answer, typed: Cell): Marked => {
  const readings = parseAnswer(typed, answer.field);
  if (readings === null) return { verdict: "blank" };
  if (readings.length === 0)
    return { verdict: "wrong", mistake: `can't be read as ${KIND_NAMES[answer.field.kind]}` };
  const marks = readings.map((given) => markReading(given, answer));
  const of = (verdict: Verdict): Marked | undefined => marks.find((mark) => mark.verdict === verdict);
  return of("right") ?? of("near") ?? wrong;
};
