import { SQ_M_PER_SQ_FT } from "../../functions/practice/answerUnits";
import type { Measuring } from "../../functions/practice/measuring";
import { wholeCount } from "../../shared/rounding";
import { MM_PER_INCH } from "../../shared/units";
import type { Answer, Facts, Mistake, ShownMistake } from "./problem";

/** Wrong ways, each a function of the same measures; undefined where these measures don't allow the slip. */
export type Slips<F extends Facts> = Readonly<Record<string, (facts: F) => number | undefined>>;

export const mistakesOf = <F extends Facts>(slips: Slips<F>, facts: F): Mistake[] =>
  Object.entries(slips).flatMap(([slip, commit]) => {
    const value = commit(facts);
    return value === undefined ? [] : [{ slip, value }];
  });

/** Mistakes as a student would write them. */
const showing = (mistakes: readonly Mistake[], write: (value: number) => string): ShownMistake[] =>
  mistakes.map((mistake) => ({ ...mistake, shown: write(mistake.value) }));

const TAPE_TOLERANCE_IN = 1 / 8;
const TAPE_TOLERANCE_MM = 3;

export const usualToleranceIn = ({ units }: Measuring): number =>
  units === "metric" ? TAPE_TOLERANCE_MM / MM_PER_INCH : TAPE_TOLERANCE_IN;

export interface Allowance {
  readonly tolerance: number;
  readonly why: string;
}

const markedOnTape = (measuring: Measuring): Allowance => ({
  tolerance: usualToleranceIn(measuring),
  why: `${measuring.writeSmall(usualToleranceIn(measuring))}: what a careful hand is off by with a tape`,
});

type LengthAnswer = (
  label: string,
  valueIn: number,
  measuring: Measuring,
  mistakes: readonly Mistake[],
  allowance?: Allowance,
) => Answer;

/** Feet and inches, or inches alone; millimeters are millimeters either way. */
const lengthIn =
  (imperial: Pick<Answer["field"], "unit" | "form">, writing: "write" | "writeSmall"): LengthAnswer =>
  (label, valueIn, measuring, mistakes, allowance = markedOnTape(measuring)) => ({
    field: {
      label,
      kind: "length",
      ...(measuring.units === "metric" ? { unit: "mm", form: "whole millimeters" } : imperial),
    },
    value: valueIn,
    shown: measuring[writing](valueIn),
    ...allowance,
    mistakes: showing(mistakes, measuring[writing]),
  });

/** A length up a slope or along a roof, as the tape shows it. */
export const lengthAnswer = lengthIn({ unit: "ft", form: "feet, inches and sixteenths" }, "write");

/** A length of panel or trim. */
export const smallLengthAnswer = lengthIn({ unit: "in", form: "inches and a fraction" }, "writeSmall");

export const distanceToWhole = (quantity: number): number => Math.abs(quantity - Math.round(quantity));

/** A count. A mistake that comes to the right count shows nothing. */
export const wholeAnswer = (
  label: string,
  things: string,
  count: number,
  mistakes: readonly Mistake[],
): Answer => ({
  field: { label, kind: "count", unit: things, form: "a whole number" },
  value: count,
  shown: String(count),
  tolerance: 0,
  why: "none: a count is whole, and what is begun is counted",
  mistakes: showing(
    mistakes.filter(({ value }) => value !== count),
    String,
  ),
});

/**
 * A count that is a quantity rounded up; `asWritten` is the quantity of someone who goes on with rounded numbers, and must
 * come to the same count.
 */
export const countAnswer = (
  label: string,
  things: string,
  quantity: number,
  mistakes: readonly Mistake[],
  asWritten = quantity,
): Answer => ({
  ...wholeAnswer(label, things, wholeCount(quantity), [
    ...mistakes,
    { slip: "rounded down", value: Math.floor(quantity) },
  ]),
  leeway: wholeCount(asWritten) === wholeCount(quantity) ? distanceToWhole(quantity) : 0,
});

export const numberAnswer = (
  label: string,
  value: number,
  decimals: number,
  mistakes: readonly Mistake[],
  { unit = "", tolerance, why }: Allowance & { readonly unit?: string },
): Answer => ({
  field: {
    label,
    kind: "number",
    unit,
    form: decimals === 1 ? "one decimal" : `${["no", "one", "two", "three"][decimals]} decimals`,
  },
  value,
  shown: value.toFixed(decimals),
  tolerance,
  why,
  mistakes: showing(mistakes, (each) => each.toFixed(decimals)),
});

const RISE_TOLERANCE = 0.1;

export const pitchAnswer = (
  label: string,
  rise: number,
  measuring: Measuring,
  mistakes: readonly Mistake[],
): Answer => ({
  field: { label, kind: "pitch", unit: "in 12", form: "rise on 12" },
  value: rise,
  shown: measuring.writePitch(rise),
  tolerance: RISE_TOLERANCE,
  why: `${RISE_TOLERANCE} in 12: what a tape's marks leave open`,
  mistakes: showing(mistakes, measuring.writePitch),
});

const DEGREES_TOLERANCE = 0.5;

export const degreesAnswer = (label: string, degrees: number, mistakes: readonly Mistake[]): Answer => ({
  field: { label, kind: "degrees", unit: "degrees", form: "one decimal" },
  value: degrees,
  shown: `${degrees.toFixed(1)}°`,
  tolerance: DEGREES_TOLERANCE,
  why: `${DEGREES_TOLERANCE}°: what an angle finder shows`,
  mistakes: showing(mistakes, (each) => `${each.toFixed(1)}°`),
});

export const inAreaUnit = (areaSqFt: number, { units }: Measuring): number =>
  units === "metric" ? areaSqFt * SQ_M_PER_SQ_FT : areaSqFt;
export const sqFtOf = (area: number, { units }: Measuring): number =>
  units === "metric" ? area / SQ_M_PER_SQ_FT : area;
export const areaUnit = ({ units }: Measuring): string => (units === "metric" ? "m²" : "sq ft");

/** Lengths on the tape's marks, and a factor of three decimals, leave an area so uncertain. */
const AREA_SHARE = 0.005;

export const writeArea = (areaSqFt: number, measuring: Measuring): string =>
  `${inAreaUnit(areaSqFt, measuring).toFixed(1)} ${areaUnit(measuring)}`;

export const areaAnswer = (
  label: string,
  areaSqFt: number,
  measuring: Measuring,
  mistakes: readonly Mistake[],
): Answer => ({
  field: { label, kind: "area", unit: areaUnit(measuring), form: "one decimal" },
  value: areaSqFt,
  shown: writeArea(areaSqFt, measuring),
  tolerance: areaSqFt * AREA_SHARE,
  why: "0.5 %: what a rounded slope length and factor leave open",
  mistakes: showing(mistakes, (each) => writeArea(each, measuring)),
});

export const moneyAnswer = (label: string, amount: number, mistakes: readonly Mistake[]): Answer => ({
  field: { label, kind: "money", unit: "money", form: "to the cent" },
  value: amount,
  shown: amount.toFixed(2),
  tolerance: 0,
  why: "none: money is exact to the cent",
  mistakes: showing(
    mistakes.filter((mistake) => mistake.value !== amount),
    (each) => each.toFixed(2),
  ),
});

/** One of two or more words; `leeway` says how far the measure stands from where the word changes, as a share of one. */
export const wordAnswer = (
  label: string,
  choices: readonly string[],
  value: string,
  leeway: number,
): Answer => ({
  field: { label, kind: "word", unit: "", form: choices.join(" or "), choices },
  value,
  shown: value,
  tolerance: 0,
  why: "none: one of the words",
  mistakes: [],
  leeway,
});
