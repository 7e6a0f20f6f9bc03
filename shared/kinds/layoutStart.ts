import { readStart, type LayoutStart } from "../layoutStart";
import { InputError } from "../inputError";
import { limitsOf, notTaken, withinLimits } from "./bounds";
import type { CellKind } from "./kind";

const TAKES =
  "left or right, then if wanted a shift in inches and a step of the stagger, such as left 3 1/4 from step 2";
/** Far more than any panel's width, which the shift starts again at. */
const SHIFT_LIMITS_IN = limitsOf({ atLeast: 0, atMost: 1200 });

/** Where the courses of a roof plane begin, as BESTSTART writes it. */
export const layoutStart: CellKind<LayoutStart> = {
  shape: "cell",
  takes: TAKES,
  read: (cell, label) => {
    const start = typeof cell === "string" ? readStart(cell) : undefined;
    if (!start) throw notTaken(label, TAKES, cell);
    withinLimits(start.shiftIn, SHIFT_LIMITS_IN, `${label}'s shift`, "in", cell);
    if (start.step < 1) throw new InputError(`${label} counts the stagger's steps from 1, got step 0`);
    return start;
  },
};
