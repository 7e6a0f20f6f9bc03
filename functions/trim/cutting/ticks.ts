import { isSame } from "../../../shared/rounding";

/**
 * Lengths are packed as whole numbers of ticks. A tick is so small that 1/64 in, 0.001 in, 0.001 ft and 0.001 mm are
 * all whole numbers of ticks (64, 1000 and 25,400 divide the ticks in an inch), so nothing that a person types is
 * rounded. A calculated length may fall between two ticks: pieces, laps and kerfs then round up and stock rounds down,
 * by less than a millionth of an inch, so that every plan can be cut.
 */
const TICKS_PER_INCH = 5 * 8 * 25_400;

/** The tick nearest to a length where they differ by floating-point error only; otherwise `round` decides. */
const ticksOf = (lengthIn: number, round: (ticks: number) => number): number => {
  const ticks = lengthIn * TICKS_PER_INCH;
  const nearest = Math.round(ticks);
  return isSame(ticks, nearest) ? nearest : round(ticks);
};

export const ticksRoundedUp = (lengthIn: number): number => ticksOf(lengthIn, Math.ceil);
export const ticksRoundedDown = (lengthIn: number): number => ticksOf(lengthIn, Math.floor);
export const inchesFromTicks = (ticks: number): number => ticks / TICKS_PER_INCH;
