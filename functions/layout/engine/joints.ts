import { InputError } from "../../../shared/inputError";
import type { LayoutStart } from "../../../shared/layoutStart";
import type { LaidPanel } from "../../../shared/kinds/panel";
import { startFraction } from "../../stagger/staggerOffset";
import { HAIR_IN, tidy } from "./precision";

/** Refuses a start from a step that the stagger pattern hasn't got. */
export const checkStep = ({ step }: LayoutStart, { staggerPattern }: LaidPanel): void => {
  if (step > staggerPattern.length)
    throw new InputError(`start takes a step from 1 to ${staggerPattern.length} of the stagger, got ${step}`);
};

/**
 * A course's first joint, in inches from the start side's outermost point: its step of the stagger as a share of a
 * panel, and the shift. It is more than 0 and at most a panel's width; past that the joints repeat.
 */
export const firstJointIn = (course: number, start: LayoutStart, panel: LaidPanel): number => {
  const widthIn = panel.exposedWidthIn;
  const fraction = startFraction(course + start.step - 1, panel.staggerPattern);
  const pastIn = tidy(fraction * widthIn + start.shiftIn) % widthIn;
  return pastIn <= HAIR_IN || widthIn - pastIn <= HAIR_IN ? widthIn : pastIn;
};
