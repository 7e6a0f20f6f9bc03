import type { Point } from "../../../shared/outline";
import type { PicturePoint } from "../picturePoint";

/** Room around the roof for the edge and side labels. */
const MARGIN_PX = 70;
/** Room for the title above that. */
const TITLE_PX = 20;
const WIDTH_PX = 860;
const TALLEST_PX = 760;

/** How plan feet become px: x to the right, y up the page. */
export interface PlanScale {
  readonly width: number;
  readonly height: number;
  readonly pxPerFt: number;
  toPixel(point: Point): PicturePoint;
}

/** Fits points into the picture's width, or into its height if they are taller than wide. */
export const planScale = (points: readonly Point[]): PlanScale => {
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  const [left, right, low, high] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const pxPerFt = Math.min(
    (WIDTH_PX - 2 * MARGIN_PX) / (right - left),
    (TALLEST_PX - 2 * MARGIN_PX) / (high - low),
  );
  const height = (high - low) * pxPerFt + 2 * MARGIN_PX + TITLE_PX;
  const indentPx = (WIDTH_PX - (right - left) * pxPerFt) / 2;
  return {
    width: WIDTH_PX,
    height,
    pxPerFt,
    toPixel: ({ x, y }) => ({
      x: indentPx + (x - left) * pxPerFt,
      y: height - MARGIN_PX - (y - low) * pxPerFt,
    }),
  };
};
