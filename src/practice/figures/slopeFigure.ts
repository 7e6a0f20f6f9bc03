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
  /** Along the slope: what is asked. */
  readonly slope?: string;
}

/** A slope from the side, to scale: level run, plumb rise, and the overhang beyond the wall where there is one. */
export const slopeFigure = (runIn: number, riseOn12: number, labels: SlopeLabels, overhangIn = 0): Figure => {
  const totalIn = runIn + overhangIn;
  const pxPerIn = Math.min(LONGEST_RUN / totalIn, TALLEST_RISE / ((totalIn * riseOn12) / PITCH_RUN));
  const [run, overhang] = [runIn * pxPerIn, overhangIn * pxPerIn];
  const riseOf = (level: number): number => (level * riseOn12) / PITCH_RUN;
  const left = (FIGURE_WIDTH - LEFT - run - overhang) / 2;
  const [wall, ridge] = [left + overhang, left + overhang + run];
  const bottom = TOP + riseOf(run + overhang);
  const plate = bottom - riseOf(overhang);
  return {
    width: FIGURE_WIDTH,
    height: bottom + 70,
    description: "A roof's slope from the side, to scale, with its measures.",
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
