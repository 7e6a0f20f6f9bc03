import { readAmount, readDecimal, readSignedAmount, tidyText } from "./amountText";
import { feetToInches, INCHES_PER_FOOT, MM_PER_INCH } from "./units";

/** A length that names its unit, in inches; or a bare number, whose unit the parameter gives. */
export type LengthReading = { inches: number } | { bare: number };

const MM_PER_UNIT: Readonly<Record<string, number>> = { mm: 1, cm: 10, m: 1000 };

const inInches = (inches: number | undefined): LengthReading | undefined =>
  inches === undefined ? undefined : { inches };

const readMetric = (text: string): LengthReading | undefined => {
  const match = /^(\S+?) ?(mm|cm|m)$/.exec(text);
  if (!match) return undefined;
  const [, amountText = "", unit = ""] = match;
  const amount = readDecimal(amountText);
  return inInches(amount === undefined ? undefined : (amount * (MM_PER_UNIT[unit] ?? NaN)) / MM_PER_INCH);
};

/** Feet and inches: decimal feet can't be followed by inches, and inches after feet stay below 12. */
const joinFeetAndInches = (feetText: string, inchText: string): LengthReading | undefined => {
  const feet = readAmount(feetText);
  if (feet === undefined) return undefined;
  if (inchText === "") return { inches: feetToInches(feet) };
  const inches = readAmount(inchText);
  if (inches === undefined || inches >= INCHES_PER_FOOT || !Number.isInteger(feet)) return undefined;
  return { inches: feetToInches(feet) + inches };
};

/**
 * Reads a length as it is said on a roof: `18' 6 1/2"`, `18-6 1/2`, `18 ft 6.5 in`, `222.5"`, `5.64 m`, `610 mm`.
 * `1-1/2` without a mark is not read: it may be 1 1/2 of something, or 1 ft 1/2 in.
 */
export const readLengthText = (raw: string): LengthReading | undefined => {
  const text = tidyText(raw);
  const metric = readMetric(text);
  if (metric) return metric;

  const [, withoutInchMark] = /^(.*?) ?(?:"|inches|inch|in\.?)$/.exec(text) ?? [];
  const feetMark = /^([^a-z']*?) ?(?:'|feet|foot|ft\.?)(?: ?- ?| ?)(.*)$/.exec(withoutInchMark ?? text);
  if (feetMark) return joinFeetAndInches(feetMark[1] ?? "", feetMark[2] ?? "");
  if (withoutInchMark !== undefined) return inInches(readAmount(withoutInchMark));

  const dashed = /^(\d+) ?- ?(\d.*)$/.exec(text);
  if (dashed) {
    const [, feet = "", inches = ""] = dashed;
    return /^\d+\/\d+$/.test(inches) ? undefined : joinFeetAndInches(feet, inches);
  }
  const bare = readSignedAmount(text);
  return bare === undefined ? undefined : { bare };
};

/** `parts` of an inch cut into `denominator`: whole inches, and the rest as a reduced fraction, such as `1/2`. */
const splitParts = (parts: number, denominator: number): { whole: number; fraction: string } => {
  let numerator = parts % denominator;
  let divisor = denominator;
  while (numerator > 0 && numerator % 2 === 0 && divisor % 2 === 0) {
    numerator /= 2;
    divisor /= 2;
  }
  return {
    whole: Math.floor(parts / denominator),
    fraction: numerator === 0 ? "" : `${numerator}/${divisor}`,
  };
};

/** Inches of 0 or more as a tape shows them, rounded to the nearest 1/`denominator` in and reduced: `6 1/2`. */
export const writeInches = (lengthIn: number, denominator: number): string => {
  const { whole, fraction } = splitParts(Math.round(lengthIn * denominator), denominator);
  if (fraction === "") return String(whole);
  return whole === 0 ? fraction : `${whole} ${fraction}`;
};

/**
 * Feet and inches as a tape shows them, rounded to the nearest 1/`denominator` in and reduced: `18' 6 1/2"`.
 */
export const writeTape = (lengthFt: number, denominator: number): string => {
  const parts = Math.round(feetToInches(lengthFt) * denominator);
  const { whole, fraction } = splitParts(parts % (INCHES_PER_FOOT * denominator), denominator);
  const feet = Math.floor(parts / (INCHES_PER_FOOT * denominator));
  return `${feet}' ${whole}${fraction === "" ? "" : ` ${fraction}`}"`;
};
