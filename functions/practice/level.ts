/** How far along a class is. */
export const LEVELS = ["first hour", "half day", "full roof"] as const;
export type Level = (typeof LEVELS)[number];
