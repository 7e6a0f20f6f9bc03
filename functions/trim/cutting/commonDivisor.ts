/** Of whole numbers of 0 or more. Searches are the quicker the smaller their numbers, so what divides all is taken out. */
export const greatestCommonDivisor = (a: number, b: number): number =>
  b === 0 ? a : greatestCommonDivisor(b, a % b);
