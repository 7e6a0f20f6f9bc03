/** How far a class has come. */
export const LEVELS = ["first hour", "half day", "full roof"] as const;
export type Level = (typeof LEVELS)[number];
