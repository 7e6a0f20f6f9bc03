import { InputError } from "../../../shared/inputError";
import type { LayoutStart } from "../../../shared/layoutStart";
import type { LaidPanel } from "../../../shared/kinds/panel";
import { startFraction } from "../../stagger/staggerOffset";
import { HAIR_IN, tidy } from "./precision";

/** Rejects a start from a step that the stagger pattern doesn't have. */
export const checkStep = ({ step }: LayoutStart, { staggerPattern }: LaidPanel): void => {
  if (step > staggerPattern.length)
    throw new InputError(`start takes a step from 1 to ${staggerPattern.length} of the stagger, got ${step}`);
};

/**
 * The first joint of a course, in inches from the outermost point of the start side: its stagger step as a fraction of a
 * panel, plus the shift. It is more than 0 and at most one panel width, since the joints repeat.
 */
export const firstJointIn = (course: number, start: LayoutStart, panel: LaidPanel): number => {
  const widthIn = panel.exposedWidthIn;
  const fraction = startFraction(course + start.step - 1, panel.staggerPattern);
  const pastIn = tidy(fraction * widthIn + start.shiftIn) % widthIn;
  return pastIn <= HAIR_IN || widthIn - pastIn <= HAIR_IN ? widthIn : pastIn;
};
