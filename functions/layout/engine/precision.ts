/** Nothing narrower than this is there: it only comes of floating point. */
export const HAIR_IN = 1e-7;

/** Lengths that are equal on paper are equal here: to a billionth of an inch, coarser than a double's noise. */
export const tidy = (lengthIn: number): number => Math.round(lengthIn * 1e9) / 1e9;
