import { cornerAfter, type Outline, type Point } from "./outline";

/** Whether a point lies within an outline (even-odd rule). */
export const isWithin = (outline: Outline, { x, y }: Point): boolean =>
  outline.reduce((within, a, index) => {
    const b = cornerAfter(outline, index);
    const crosses = a.y > y !== b.y > y && x < a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x);
    return crosses ? !within : within;
  }, false);
