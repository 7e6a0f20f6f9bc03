import { px } from "./svg";

/** A point of a picture, in pixels from its upper left corner: x to the right, y down. */
export interface PicturePoint {
  readonly x: number;
  readonly y: number;
}

/** Points as the `points` attribute of a polygon or polyline. */
export const svgPoints = (points: readonly PicturePoint[]): string =>
  points.map(({ x, y }) => `${px(x)},${px(y)}`).join(" ");
