import type { Cell } from "../cell";
import { describeCell } from "../describe";
import { InputError } from "../inputError";

/** Limits of a number; one that isn't finite is within none. */
export interface Limits {
  readonly atLeast: number;
  readonly moreThan: number;
  readonly atMost: number;
  readonly lessThan: number;
}

/** The limits that are named; there is no other. */
export type Bounds = Partial<Limits>;

/** Made once for a parameter, so that each call compares numbers only. */
export const limitsOf = (bounds: Bounds): Limits => ({
  atLeast: -Infinity,
  moreThan: -Infinity,
  atMost: Infinity,
  lessThan: Infinity,
  ...bounds,
});

/** Returns `value`, or says which limit it breaks: "spacing must be more than 0 in, got 0". */
export const withinLimits = (
  value: number,
  limits: Limits,
  label: string,
  unit: string,
  came: Cell,
): number => {
  const broken = brokenLimit(value, limits, unit);
  if (broken !== undefined) throw new InputError(`${label} must be ${broken}, got ${describeCell(came)}`);
  return value;
};

const brokenLimit = (
  value: number,
  { atLeast, moreThan, atMost, lessThan }: Limits,
  unit: string,
): string | undefined => {
  if (!Number.isFinite(value)) return "a finite number";
  if (value < atLeast) return `at least ${limitInWords(atLeast, unit)}`;
  if (value <= moreThan) return `more than ${limitInWords(moreThan, unit)}`;
  if (value > atMost) return `at most ${limitInWords(atMost, unit)}`;
  if (value >= lessThan) return `less than ${limitInWords(lessThan, unit)}`;
  return undefined;
};

const limitInWords = (limit: number, unit: string): string =>
  unit === "" ? String(limit) : `${limit} ${unit}`;

/** The message for a value that could not be understood at all. */
export const notTaken = (label: string, takes: string, came: Cell): InputError =>
  new InputError(`${label} takes ${takes}, got ${describeCell(came)}`);
