import { PITCH_RUN } from "../../../shared/units";
import {
  horizontalDimension,
  FIGURE_WIDTH,
  line,
  verticalDimension,
  label,
  type Figure,
} from "../../pictures/figure";

const LEFT = 70;
const LONGEST_RUN = 420;
const TALLEST_RISE = 200;
const TOP = 24;

export interface SlopeLabels {
  readonly run: string;
  readonly rise?: string;
  readonly overhang?: string;
  /** Along the slope: the length to find. */
  readonly slope?: string;
}

/** A slope from the side, to scale: level run, plumb rise, and any overhang beyond the wall. */
export const slopeFigure = (runIn: number, riseIn12: number, labels: SlopeLabels, overhangIn = 0): Figure => {
  const totalIn = runIn + overhangIn;
  const pxPerIn = Math.min(LONGEST_RUN / totalIn, TALLEST_RISE / ((totalIn * riseIn12) / PITCH_RUN));
  const [run, overhang] = [runIn * pxPerIn, overhangIn * pxPerIn];
  const riseOf = (level: number): number => (level * riseIn12) / PITCH_RUN;
  const left = (FIGURE_WIDTH - LEFT - run - overhang) / 2;
  const [wall, ridge] = [left + overhang, left + overhang + run];
  const bottom = TOP + riseOf(run + overhang);
  const plate = bottom - riseOf(overhang);
  return {
    width: FIGURE_WIDTH,
    height: bottom + 70,
    description: "A roof slope from the side, to scale, with its measurements.",
    marks: [
      line("edge", { x: left, y: bottom }, { x: ridge, y: TOP }),
      line("thin", { x: wall, y: plate }, { x: ridge, y: plate }, { x: ridge, y: TOP }),
      line("edge", { x: wall, y: plate }, { x: wall, y: bottom + 24 }),
      ...horizontalDimension(wall, ridge, bottom + 36, labels.run),
      ...(labels.overhang ? horizontalDimension(left, wall, bottom + 36, labels.overhang) : []),
      ...(labels.rise ? verticalDimension(TOP, plate, ridge + 20, labels.rise) : []),
      ...(labels.slope ? [label((left + ridge) / 2 - 70, (TOP + bottom) / 2 - 14, labels.slope)] : []),
    ],
  };
};
