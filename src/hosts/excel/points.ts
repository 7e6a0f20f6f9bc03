export const PIXELS_TO_POINTS = 0.75;
