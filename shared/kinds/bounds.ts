import type { Cell } from "../cell";
import { describeCell } from "../describe";
import { InputError } from "../inputError";

/** Limits of a number, each checked so that NaN fails. */
export interface Bounds {
  readonly atLeast?: number;
  readonly moreThan?: number;
  readonly atMost?: number;
  readonly lessThan?: number;
}

/** Returns `value`, or says which limit it breaks: "spacing must be more than 0 in, got 0". */
export const withinBounds = (
  value: number,
  bounds: Bounds,
  label: string,
  unit: string,
  came: Cell,
): number => {
  const broken = brokenLimit(value, bounds, unit);
  if (broken !== undefined) throw new InputError(`${label} must be ${broken}, got ${describeCell(came)}`);
  return value;
};

const brokenLimit = (
  value: number,
  { atLeast, moreThan, atMost, lessThan }: Bounds,
  unit: string,
): string | undefined => {
  const withUnit = (limit: number): string => (unit === "" ? String(limit) : `${limit} ${unit}`);
  if (!Number.isFinite(value)) return "a finite number";
  if (atLeast !== undefined && !(value >= atLeast)) return `at least ${withUnit(atLeast)}`;
  if (moreThan !== undefined && !(value > moreThan)) return `more than ${withUnit(moreThan)}`;
  if (atMost !== undefined && !(value <= atMost)) return `at most ${withUnit(atMost)}`;
  if (lessThan !== undefined && !(value < lessThan)) return `less than ${withUnit(lessThan)}`;
  return undefined;
};

/** The sentence for what could not be understood at all. */
export const notTaken = (label: string, takes: string, came: Cell): InputError =>
  new InputError(`${label} takes ${takes}, got ${describeCell(came)}`);
