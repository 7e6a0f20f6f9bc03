/** Anything narrower than this is floating-point error. */
export const HAIR_IN = 1e-7;

/** Rounds to a billionth of an inch, coarser than floating-point error, so that lengths equal on paper are equal here. */
export const tidy = (lengthIn: number): number => Math.round(lengthIn * 1e9) / 1e9;
