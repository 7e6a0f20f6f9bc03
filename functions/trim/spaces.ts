import { wholeCount } from "../../shared/rounding";
import { feetToInches } from "../../shared/units";

/**
 * Spaces of at most `spacingIn` along a length; each stands between two fasteners. None where there is no length, or
 * only as much as floating point leaves behind.
 */
export const spacesAlong = (lengthFt: number, spacingIn: number): number =>
  wholeCount(feetToInches(lengthFt) / spacingIn);
