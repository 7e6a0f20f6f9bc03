import { tidyText } from "./amountText";
import { readLengthText, writeInches } from "./lengthText";

export const SIDES = ["left", "right"] as const;
export type Side = (typeof SIDES)[number];

/** Where a roof plane's courses begin. */
export interface LayoutStart {
  /** The side of the plane from which every course is laid. */
  readonly side: Side;
  /** Moves every joint away from that side. */
  readonly shiftIn: number;
  /** The step of the stagger pattern, counted from 1, that the course at the eave takes. */
  readonly step: number;
}

export const DEFAULT_START = "left";

/** Reads `left`, `right 3 1/4`, `left from step 2`, `left 3 1/4 from step 2`; the shift in inches or with its unit. */
export const readStart = (raw: string): LayoutStart | undefined => {
  const [, sideText, shiftText, stepText] =
    /^(\S+)(?: (?!from )(.+?))?(?: from step (\d{1,4}))?$/.exec(tidyText(raw)) ?? [];
  const side = SIDES.find((each) => each === sideText);
  const shift = shiftText === undefined ? { inches: 0 } : readLengthText(shiftText);
  if (!side || !shift) return undefined;
  return { side, shiftIn: "bare" in shift ? shift.bare : shift.inches, step: Number(stepText ?? 1) };
};

/** The text that `readStart` reads back; the shift to the nearest 1/16 in. */
export const writeStart = ({ side, shiftIn, step }: LayoutStart): string =>
  side + (shiftIn === 0 ? "" : ` ${writeInches(shiftIn, 16)}`) + (step === 1 ? "" : ` from step ${step}`);
