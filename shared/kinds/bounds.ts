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
  const { atLeast, moreThan, atMost, lessThan } = bounds;
  const refuse = (limit: string, of: number): never => {
    const withUnit = unit === "" ? String(of) : `${of} ${unit}`;
    throw new InputError(`${label} must be ${limit} ${withUnit}, got ${describeCell(came)}`);
  };
  if (!Number.isFinite(value))
    throw new InputError(`${label} must be a finite number, got ${describeCell(came)}`);
  if (atLeast !== undefined && !(value >= atLeast)) return refuse("at least", atLeast);
  if (moreThan !== undefined && !(value > moreThan)) return refuse("more than", moreThan);
  if (atMost !== undefined && !(value <= atMost)) return refuse("at most", atMost);
  if (lessThan !== undefined && !(value < lessThan)) return refuse("less than", lessThan);
  return value;
};

/** The sentence for what could not be understood at all. */
export const notTaken = (label: string, takes: string, came: Cell): InputError =>
  new InputError(`${label} takes ${takes}, got ${describeCell(came)}`);
