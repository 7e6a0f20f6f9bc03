import { isSame } from "../../../shared/rounding";

/**
 * Lengths are packed in whole marks. To the inch go so many that 1/64 in, 0.001 in, 0.001 ft and 0.001 mm all come
 * out whole (64, 1000 and 25,400 divide it), so nothing that a person types is rounded. A length that a formula
 * worked out may fall between two marks: a piece, a lap or a kerf then takes the mark above it and stock the one below,
 * less than a millionth of an inch, so that a plan can always be cut.
 */
const MARKS_PER_INCH = 5 * 8 * 25_400;

/** The mark that a length stands on but for floating point, or else the one that `between` chooses. */
const marksOf = (lengthIn: number, between: (marks: number) => number): number => {
  const marks = lengthIn * MARKS_PER_INCH;
  const nearest = Math.round(marks);
  return isSame(marks, nearest) ? nearest : between(marks);
};

export const marksNeeded = (lengthIn: number): number => marksOf(lengthIn, Math.ceil);
export const marksAtHand = (lengthIn: number): number => marksOf(lengthIn, Math.floor);
export const inchesOf = (marks: number): number => marks / MARKS_PER_INCH;
