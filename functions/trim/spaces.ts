import { wholeCount } from "../../shared/rounding";
import { feetToInches } from "../../shared/units";

/**
 * Spaces of at most `spacingIn` along a length, each between two fasteners. 0 where the length is 0, or is only
 * floating-point error.
 */
export const spacesAlong = (lengthFt: number, spacingIn: number): number =>
  wholeCount(feetToInches(lengthFt) / spacingIn);
