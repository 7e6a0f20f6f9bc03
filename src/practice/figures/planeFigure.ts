import {
  horizontalDimension,
  box,
  face,
  FIGURE_WIDTH,
  line,
  verticalDimension,
  label,
  type Figure,
} from "../../pictures/figure";

const LARGEST_WIDTH = 480;
const LARGEST_HEIGHT = 230;
const TOP = 30;

export interface PlaneLabels {
  readonly width: string;
  readonly height: string;
}

/** A roof face seen straight on, to scale: eave at the bottom, ridge at the top. */
export const planeFigure = (widthIn: number, heightIn: number, labels: PlaneLabels): Figure => {
  const pxPerIn = Math.min(LARGEST_WIDTH / widthIn, LARGEST_HEIGHT / heightIn);
  const [width, height] = [widthIn * pxPerIn, heightIn * pxPerIn];
  const left = (FIGURE_WIDTH - width - 50) / 2;
  return {
    width: FIGURE_WIDTH,
    height: TOP + height + 50,
    description: "A roof face seen straight on, to scale, with its measurements.",
    marks: [
      face("metal", ...box(left, TOP, width, height)),
      label(left + width / 2, TOP - 12, "ridge"),
      line("edge", { x: left, y: TOP + height }, { x: left + width, y: TOP + height }),
      ...horizontalDimension(left, left + width, TOP + height + 14, labels.width),
      ...verticalDimension(TOP, TOP + height, left + width + 16, labels.height),
    ],
  };
};
