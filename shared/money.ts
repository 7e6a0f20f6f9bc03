import Big from "big.js";

/** Digits that a spreadsheet keeps of a number; what lies beyond is binary floating point. */
export const KEPT_DIGITS = 15;
const CENT_PLACES = 2;

/** A number as the exact decimal that a person sees: 0.1 + 0.2 is 0.3. */
export const exact = (value: number): Big => new Big(value.toPrecision(KEPT_DIGITS));

/** To the cent, half a cent away from zero; nothing is never negative. */
export const toCent = (amount: Big): number => amount.round(CENT_PLACES, Big.roundHalfUp).toNumber() + 0;

/** Amounts that are whole cents already, added up without an error. */
export const sumOfCents = (amounts: readonly number[]): number =>
  amounts.reduce((sum, amount) => sum.plus(exact(amount)), new Big(0)).toNumber();
