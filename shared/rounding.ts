/** Twenty feet of 12 in courses is 20, not 21: below this relative error a quotient counts as whole. */
const RELATIVE_TOLERANCE = 1e-9;

/**
 * The whole number of things that `quantity` needs: rounded up, but never because of floating point.
 * Every count in the catalogue goes through here.
 */
export const wholeCount = (quantity: number): number => {
  const nearest = Math.round(quantity);
  const isWhole = Math.abs(quantity - nearest) <= RELATIVE_TOLERANCE * Math.max(1, Math.abs(quantity));
  return isWhole ? nearest + 0 : Math.ceil(quantity);
};
