import {
  horizontalDimension,
  box,
  face,
  FIGURE_WIDTH,
  line,
  verticalDimension,
  label,
  type Figure,
  type Mark,
} from "../../pictures/figure";
import type { PicturePoint } from "../../pictures/picturePoint";

const LARGEST_WIDTH = 460;
const LARGEST_HEIGHT = 220;
const TOP = 20;

interface PlanLabels {
  readonly length: string;
  readonly width: string;
}

/** A gable roof from above, to scale: dashed walls inside the roof's edge, the ridge along the middle. */
export const gablePlanFigure = (
  lengthIn: number,
  widthIn: number,
  overhangIn: number,
  labels: PlanLabels,
): Figure => {
  const pxPerIn = Math.min(
    LARGEST_WIDTH / (lengthIn + 2 * overhangIn),
    LARGEST_HEIGHT / (widthIn + 2 * overhangIn),
  );
  const [length, width, overhang] = [lengthIn * pxPerIn, widthIn * pxPerIn, overhangIn * pxPerIn];
  const left = (FIGURE_WIDTH - length - 2 * overhang - 50) / 2;
  const middle = TOP + overhang + width / 2;
  const walls = box(left + overhang, TOP + overhang, length, width);
  return {
    width: FIGURE_WIDTH,
    height: TOP + width + 2 * overhang + 50,
    description: "A gable roof from above, to scale: dashed walls, the ridge along the middle.",
    marks: [
      face("metal", ...box(left, TOP, length + 2 * overhang, width + 2 * overhang)),
      line("dashed", ...walls, walls[0] as PicturePoint),
      line("edge", { x: left, y: middle }, { x: left + length + 2 * overhang, y: middle }),
      label(left + overhang + length / 2, middle - 12, "ridge"),
      ...horizontalDimension(
        left + overhang,
        left + overhang + length,
        TOP + width + 2 * overhang + 14,
        labels.length,
      ),
      ...verticalDimension(
        TOP + overhang,
        TOP + overhang + width,
        left + length + 2 * overhang + 16,
        labels.width,
      ),
    ],
  };
};

const CORNER = 200;

/** A square corner of a roof from above: the hip or valley runs at 45 degrees between two equal slopes. */
export const hipPlanFigure = (runLabel: string): Figure => {
  const left = (FIGURE_WIDTH - CORNER - 60) / 2;
  const [right, bottom] = [left + CORNER, TOP + CORNER];
  const arrow = (from: PicturePoint, to: PicturePoint): Mark => ({ kind: "dimension", from, to });
  return {
    width: FIGURE_WIDTH,
    height: bottom + 60,
    description: "A square corner of a roof from above: the hip runs between two equal slopes.",
    marks: [
      face("metal", ...box(left, TOP, CORNER, CORNER)),
      line("edge", { x: left, y: bottom }, { x: right, y: TOP }),
      label((left + right) / 2 + 24, (TOP + bottom) / 2 + 16, "hip"),
      label(left + CORNER / 2, bottom + 44, "eave"),
      arrow({ x: left, y: bottom + 14 }, { x: right, y: bottom + 14 }),
      label(left + CORNER / 2, bottom + 28, runLabel),
      ...verticalDimension(TOP, bottom, right + 16, runLabel),
    ],
  };
};
