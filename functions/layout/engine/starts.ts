import { SIDES, type LayoutStart, type Side } from "../../../shared/layoutStart";
import type { LaidPanel } from "../../../shared/kinds/panel";
import { wholeCount } from "../../../shared/rounding";

/** The step between one shift and the next. */
const SHIFT_STEP_IN = 0.25;
const shiftsOf = ({ exposedWidthIn }: LaidPanel): number => wholeCount(exposedWidthIn / SHIFT_STEP_IN);

/** The number of starts, left and right together. */
export const choicesOf = (panel: LaidPanel): number =>
  SIDES.length * shiftsOf(panel) * panel.staggerPattern.length;

/** Every start from a side: each shift over one panel, with each step of the stagger. */
export const startsOf = (side: Side, panel: LaidPanel): LayoutStart[] =>
  Array.from({ length: shiftsOf(panel) }, (_, shift) =>
    panel.staggerPattern.map((_step, index) => ({
      side,
      shiftIn: shift * SHIFT_STEP_IN,
      step: index + 1,
    })),
  ).flat();
