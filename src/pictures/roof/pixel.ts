import { px } from "../svg";

/** A place on the picture: px to the right, px down. */
export interface Pixel {
  readonly x: number;
  readonly y: number;
}

export const pointList = (pixels: readonly Pixel[]): string =>
  pixels.map(({ x, y }) => `${px(x)},${px(y)}`).join(" ");
