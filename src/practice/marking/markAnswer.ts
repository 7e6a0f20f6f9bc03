import type { Cell } from "../../../shared/cell";
import { isWithin, NEAR_TOLERANCES } from "../../../functions/practice/answerCheck";
import { INCHES_PER_FOOT } from "../../../shared/units";
import type { Answer, Field } from "../problem";
import { readTyped } from "./readTyped";

export type Verdict = "right" | "near" | "wrong" | "blank";

/** How an answer was found, and which slips lead to what was written. */
export interface Marked {
  readonly verdict: Verdict;
  readonly slips: readonly string[];
}

const wrong: Marked = { verdict: "wrong", slips: [] };

/** Lengths right but for their unit, by the factor that they are off by. */
const INCH_SLIPS: readonly (readonly [factor: number, slip: string])[] = [
  [INCHES_PER_FOOT, "took inches for feet"],
  [1 / INCHES_PER_FOOT, "took feet for inches"],
];
const METRIC_SLIPS: readonly (readonly [factor: number, slip: string])[] = [
  [1 / 10, "took centimetres for millimetres"],
  [10, "took millimetres for centimetres"],
  [1 / 1000, "took metres for millimetres"],
  [1000, "took millimetres for metres"],
];

const unitSlips = ({ kind, unit }: Field): readonly (readonly [number, string])[] => {
  if (kind !== "length") return [];
  return unit === "mm" || unit === "m" ? METRIC_SLIPS : INCH_SLIPS;
};

const markNumber = (given: number, value: number, { field, tolerance, mistakes }: Answer): Marked => {
  const isNear = (to: number, within: number): boolean => isWithin(given, to, within);
  if (isNear(value, tolerance)) return { verdict: "right", slips: [] };
  const slips = mistakes.filter((mistake) => isNear(mistake.value, tolerance)).map(({ slip }) => slip);
  if (slips.length > 0) return { verdict: "near", slips };
  const unit = unitSlips(field).find(([factor]) => isNear(value * factor, tolerance * factor));
  if (unit) return { verdict: "near", slips: [unit[1]] };
  return isNear(value, NEAR_TOLERANCES * tolerance)
    ? { verdict: "near", slips: ["rounded too early"] }
    : wrong;
};

const markOne = (given: number | string, answer: Answer): Marked => {
  if (typeof answer.value === "string")
    return given === answer.value ? { verdict: "right", slips: [] } : wrong;
  return typeof given === "number" ? markNumber(given, answer.value, answer) : wrong;
};

/** Right, near with the slip that leads there, wrong, or blank; of what may be meant, what is best. */
export const markAnswer = (answer: Answer, typed: Cell): Marked => {
  const readings = readTyped(typed, answer.field);
  if (readings === null) return { verdict: "blank", slips: [] };
  const marks = readings.map((given) => markOne(given, answer));
  const of = (verdict: Verdict): Marked | undefined => marks.find((mark) => mark.verdict === verdict);
  return of("right") ?? of("near") ?? wrong;
};
