/** Of whole numbers of 0 or more (Euclid). Searches are faster with smaller numbers, so common factors are divided out. */
export const greatestCommonDivisor = (a: number, b: number): number =>
  b === 0 ? a : greatestCommonDivisor(b, a % b);
