export const POINTS_PER_PX = 0.75;
