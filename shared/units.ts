/** Exact by definition (international foot and inch, NIST SP 811 Appendix B). */
export const INCHES_PER_FOOT = 12;
export const MM_PER_INCH = 25.4;

const CUBIC_FEET_PER_CUBIC_METER = (1000 / (INCHES_PER_FOOT * MM_PER_INCH)) ** 3;
/** Exact by definition (NIST SP 811 Appendix B, from memory). */
const KG_PER_LB = 0.453_592_37;
export const LB_PER_CU_FT_OF_KG_PER_M3 = 1 / KG_PER_LB / CUBIC_FEET_PER_CUBIC_METER;
export const CUBIC_INCHES_PER_CUBIC_FOOT = INCHES_PER_FOOT ** 3;
export const SQ_INCHES_PER_SQ_FOOT = INCHES_PER_FOOT ** 2;

/** A pitch is its rise on a level run of 12. */
export const PITCH_RUN = 12;

/** One square of roofing. */
export const SQ_FT_PER_SQUARE = 100;

export const feetToInches = (lengthFt: number): number => lengthFt * INCHES_PER_FOOT;
export const inchesToFeet = (lengthIn: number): number => lengthIn / INCHES_PER_FOOT;

export const toDegrees = (radians: number): number => (radians * 180) / Math.PI;
export const toRadians = (degrees: number): number => (degrees * Math.PI) / 180;
