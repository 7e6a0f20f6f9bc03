import type { Measuring } from "../../functions/practice/measuring";
import { tapeSpec } from "../../functions/measure/tape";
import { MM_PER_INCH } from "../../shared/units";
import { call } from "../workbook/formula";
import type { Step } from "./topic";

const MM_PER_FOOT = 304.8;

/** Text as a string in a formula, with its quotes doubled. */
export const quoted = (text: string): string => `"${text.replaceAll('"', '""')}"`;

export const step = (text: string, formula: string, result: number | string): Step => ({
  text,
  formula: `=${formula}`,
  result,
});

/** A step that gives a length. The formula is in feet; the result is shown as the class's tape shows it. */
export const lengthStep = (text: string, formulaFt: string, valueIn: number, measuring: Measuring): Step =>
  measuring.units === "metric"
    ? step(text, `ROUND((${formulaFt})*${MM_PER_FOOT},0)`, Math.round(valueIn * MM_PER_INCH))
    : step(text, call(tapeSpec, formulaFt), measuring.write(valueIn));

/** A step that gives a length of panel or trim. The formula is in inches. */
export const smallLengthStep = (
  text: string,
  formulaIn: string,
  valueIn: number,
  { units }: Measuring,
): Step =>
  units === "metric"
    ? step(text, `ROUND((${formulaIn})*${MM_PER_INCH},0)`, Math.round(valueIn * MM_PER_INCH))
    : step(text, formulaIn, valueIn);

/** A number as a person writes it on scratch paper, with few decimals. */
export const plain = (value: number, decimals = 3): string => String(Number(value.toFixed(decimals)));
