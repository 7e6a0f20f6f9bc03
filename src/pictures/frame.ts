import type { Layout, Ring } from "../../functions/layout/engine/layoutResult";
import { px } from "./svg";

const DRAWING_WIDTH = 880;
const DRAWING_HEIGHT = 560;
/** Room for course numbers, dimensions, and the legend below. */
const MARGIN = { left: 62, right: 78, top: 46, bottom: 108 };

/** Converts inches on the plane to pixels of the picture; up the slope is up in the picture. */
export interface Frame {
  readonly pxPerIn: number;
  readonly width: number;
  readonly height: number;
  x(xIn: number): number;
  y(yIn: number): number;
}

/** The largest scale at which the plane fits. The picture is only as tall as the plane needs. */
export const frameOf = ({ widthIn, heightIn }: Layout): Frame => {
  const pxPerIn = Math.min(DRAWING_WIDTH / widthIn, DRAWING_HEIGHT / heightIn);
  const inset = (DRAWING_WIDTH - widthIn * pxPerIn) / 2;
  return {
    pxPerIn,
    width: MARGIN.left + DRAWING_WIDTH + MARGIN.right,
    height: MARGIN.top + heightIn * pxPerIn + MARGIN.bottom,
    x: (xIn) => MARGIN.left + inset + xIn * pxPerIn,
    y: (yIn) => MARGIN.top + (heightIn - yIn) * pxPerIn,
  };
};

/** Closed rings as SVG path data. */
export const pathOf = (rings: readonly Ring[], { x, y }: Frame): string =>
  rings.map((ring) => `M${ring.map(({ xIn, yIn }) => `${px(x(xIn))} ${px(y(yIn))}`).join("L")}Z`).join("");
