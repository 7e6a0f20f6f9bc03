/** Exact by definition (international foot and inch, NIST SP 811 Appendix B). */
export const INCHES_PER_FOOT = 12;
export const MM_PER_INCH = 25.4;

/** A pitch is its rise on a level run of 12. */
export const PITCH_RUN = 12;

/** One square of roofing. */
export const SQ_FT_PER_SQUARE = 100;

export const feetToInches = (lengthFt: number): number => lengthFt * INCHES_PER_FOOT;
export const inchesToFeet = (lengthIn: number): number => lengthIn / INCHES_PER_FOOT;

export const toDegrees = (radians: number): number => (radians * 180) / Math.PI;
export const toRadians = (degrees: number): number => (degrees * Math.PI) / 180;
