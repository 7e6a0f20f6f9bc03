import type { Measuring } from "../../../functions/practice/measuring";
import { withShown } from "../commonMistakes";
import type { Answer, Mistake } from "../topic";
import type { Allowance } from "./length";

export const numberAnswer = (
  label: string,
  value: number,
  decimals: 1 | 2 | 3,
  mistakes: readonly Mistake[],
  { unit = "", tolerance, why }: Allowance & { readonly unit?: string },
): Answer => ({
  field: {
    label,
    kind: "number",
    unit,
    format: { 1: "one decimal", 2: "two decimals", 3: "three decimals" }[decimals],
  },
  value,
  shown: value.toFixed(decimals),
  tolerance,
  why,
  mistakes: withShown(mistakes, (each) => each.toFixed(decimals)),
});

const RISE_TOLERANCE = 0.1;

/** A pitch as its rise in 12. */
export const pitchAnswer = (
  label: string,
  rise: number,
  measuring: Measuring,
  mistakes: readonly Mistake[],
): Answer => ({
  field: { label, kind: "pitch", unit: "in 12", format: "rise in 12" },
  value: rise,
  shown: measuring.writePitch(rise),
  tolerance: RISE_TOLERANCE,
  why: `${RISE_TOLERANCE} in 12: a tape can't show it any closer`,
  mistakes: withShown(mistakes, measuring.writePitch),
});

const DEGREES_TOLERANCE = 0.5;

export const degreesAnswer = (label: string, degrees: number, mistakes: readonly Mistake[]): Answer => ({
  field: { label, kind: "degrees", unit: "degrees", format: "one decimal" },
  value: degrees,
  shown: `${degrees.toFixed(1)}°`,
  tolerance: DEGREES_TOLERANCE,
  why: `${DEGREES_TOLERANCE}°: as close as an angle finder reads`,
  mistakes: withShown(mistakes, (each) => `${each.toFixed(1)}°`),
});

/** An amount of money, exact to the cent. */
export const moneyAnswer = (label: string, amount: number, mistakes: readonly Mistake[]): Answer => ({
  field: { label, kind: "money", unit: "money", format: "to the cent" },
  value: amount,
  shown: amount.toFixed(2),
  tolerance: 0,
  why: "none: money is exact to the cent",
  mistakes: withShown(
    mistakes.filter((mistake) => mistake.value !== amount),
    (each) => each.toFixed(2),
  ),
});
