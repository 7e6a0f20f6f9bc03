import { InputError } from "./inputError";

/** Twenty feet of 12 in courses is 20, not 21: below this relative error a quotient counts as whole. */
const RELATIVE_TOLERANCE = 1e-9;
/** Of a large number the relative error would swallow what a person typed: 999,999,999.4 is not whole. */
const GREATEST_TOLERANCE = 1e-4;
/** No job comes near: a larger count means that a unit is wrong. */
const LARGEST_COUNT = 1e9;

/** Whether two numbers differ by no more than floating point may make them differ. */
export const isSame = (one: number, other: number): boolean => {
  const scale = Math.max(1, Math.abs(one), Math.abs(other));
  return Math.abs(one - other) <= Math.min(GREATEST_TOLERANCE, RELATIVE_TOLERANCE * scale);
};

/** Whether a person may have typed a number as it stands: few have more than four decimals. */
export const isShortDecimal = (value: number): boolean => Number(value.toFixed(4)) === value;

/**
 * The whole number of things that `quantity` needs: rounded up, but never because of floating point.
 * Every count in the catalog goes through here.
 */
export const wholeCount = (quantity: number): number => {
  const nearest = Math.round(quantity);
  const count = isSame(quantity, nearest) ? nearest + 0 : Math.ceil(quantity);
  if (!(count <= LARGEST_COUNT))
    throw new InputError(
      `the count comes to more than ${LARGEST_COUNT.toLocaleString("en-US")}: check the units`,
    );
  return count;
};
