import Big from "big.js";

/** Digits that a spreadsheet keeps of a number; what lies beyond is binary floating point. */
export const KEPT_DIGITS = 15;
const CENT_PLACES = 2;

/** A number as the exact decimal that a person sees: 0.1 + 0.2 is 0.3. */
export const exact = (value: number): Big => new Big(value.toPrecision(KEPT_DIGITS));

/** To the cent, half a cent away from zero; nothing is never negative. */
export const toCent = (amount: Big): number => amount.round(CENT_PLACES, Big.roundHalfUp).toNumber() + 0;

/** Relative: far above the error of a few steps in binary fractions, far below what a person types. */
const DOUBT = 1e-9;

/**
 * What comes to `exactly`, to the cent. Binary fractions are several times as fast, and say which cent it is wherever
 * they leave no doubt; near half a cent, the exact decimals do.
 */
export const toNearestCent = (nearly: number, exactly: () => Big): number => {
  const cents = nearly * 10 ** CENT_PLACES;
  const nearest = Math.round(cents);
  const isClear = 0.5 - Math.abs(cents - nearest) > DOUBT * Math.max(1, Math.abs(cents));
  return isClear ? nearest / 10 ** CENT_PLACES + 0 : toCent(exactly());
};

/** Quantity and price, or amount and rate, multiplied. */
export const productToCent = (one: number, other: number): number =>
  toNearestCent(one * other, () => exact(one).times(exact(other)));

/** Amounts that are whole cents already, added up without an error. */
export const sumOfCents = (amounts: readonly number[]): number =>
  amounts.reduce((sum, amount) => sum.plus(exact(amount)), new Big(0)).toNumber();
