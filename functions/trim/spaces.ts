import { wholeCount } from "../../shared/rounding";
import { feetToInches } from "../../shared/units";

/** Spaces of at most `spacingIn` along a length; each stands between two fasteners. */
export const spacesAlong = (lengthFt: number, spacingIn: number): number =>
  wholeCount(feetToInches(lengthFt) / spacingIn);
