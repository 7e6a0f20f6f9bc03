import type { Measuring } from "../../functions/practice/measuring";
import { tapeSpec } from "../../functions/measure/tape";
import { MM_PER_INCH } from "../../shared/units";
import { call } from "../workbook/formula";
import type { Step } from "./problem";

const MM_PER_FOOT = 304.8;

/** A text as a formula writes it: quotes doubled. */
export const quoted = (text: string): string => `"${text.replaceAll('"', '""')}"`;

export const step = (words: string, formula: string, result: number | string): Step => ({
  words,
  formula: `=${formula}`,
  result,
});

/** A step to a length: the formula is in feet, and shown as the class's tape shows it. */
export const lengthStep = (words: string, formulaFt: string, valueIn: number, measuring: Measuring): Step =>
  measuring.units === "metric"
    ? step(words, `ROUND((${formulaFt})*${MM_PER_FOOT},0)`, Math.round(valueIn * MM_PER_INCH))
    : step(words, call(tapeSpec, formulaFt), measuring.write(valueIn));

/** A step to a length of panel or trim: the formula is in inches. */
export const smallLengthStep = (
  words: string,
  formulaIn: string,
  valueIn: number,
  { units }: Measuring,
): Step =>
  units === "metric"
    ? step(words, `ROUND((${formulaIn})*${MM_PER_INCH},0)`, Math.round(valueIn * MM_PER_INCH))
    : step(words, formulaIn, valueIn);

/** A number as a person writes it down in working: few decimals. */
export const plain = (value: number, decimals = 3): string => String(Number(value.toFixed(decimals)));
