import type { Measuring } from "../../../functions/practice/measuring";
import { INCHES_PER_FOOT, MM_PER_INCH } from "../../../shared/units";
import { box, face, FIGURE_WIDTH, line, label, type Figure, type Mark } from "../../pictures/figure";

const HEIGHT = 190;
const TOP = 30;
const BOTTOM = 130;
const MARGIN = 20;

/** A tape's marks: some longer than others, with numbers at the longest. */
interface Scale {
  readonly markIn: number;
  /** How many marks the picture shows on each side of the reading. */
  readonly marksAround: number;
  heightOf(mark: number): number;
  numberAt(mark: number): string | undefined;
}

const INCH_MARKS = 16;
const INCH_SCALE: Scale = {
  markIn: 1 / INCH_MARKS,
  marksAround: 56,
  heightOf: (mark) => {
    if (mark % 16 === 0) return 72;
    if (mark % 8 === 0) return 48;
    if (mark % 4 === 0) return 34;
    return mark % 2 === 0 ? 24 : 16;
  },
  numberAt: (mark) => {
    if (mark % INCH_MARKS !== 0) return undefined;
    const inches = mark / INCH_MARKS;
    const [feet, rest] = [Math.floor(inches / INCHES_PER_FOOT), inches % INCHES_PER_FOOT];
    return rest === 0 ? `${feet} ft` : String(rest);
  },
};

const MM_SCALE: Scale = {
  markIn: 1 / MM_PER_INCH,
  marksAround: 75,
  heightOf: (mark) => (mark % 10 === 0 ? 72 : mark % 5 === 0 ? 40 : 22),
  numberAt: (mark) => {
    if (mark % 10 !== 0) return undefined;
    return mark % 1000 === 0 ? `${mark / 1000} m` : String(mark / 10);
  },
};

/**
 * A piece of tape with a pointer at the reading. Inches count from the last whole foot, centimeters from the start. Only the
 * marks to be read are drawn, `readToIn` apart: students would read any mark between them too.
 */
export const tapeFigure = (readingIn: number, readToIn: number, { units }: Measuring): Figure => {
  const { markIn, marksAround, heightOf, numberAt } = units === "metric" ? MM_SCALE : INCH_SCALE;
  const readTo = Math.round(readToIn / markIn);
  const reading = Math.round(readingIn / markIn);
  const pxPerMark = (FIGURE_WIDTH - 2 * MARGIN) / (2 * marksAround);
  // Off center by a varying distance, so that the center doesn't give the reading away.
  const first = reading - marksAround - (reading % 7) + 3;
  const xOf = (mark: number): number => MARGIN + (mark - first) * pxPerMark;
  const marks = Array.from({ length: 2 * marksAround + 1 }, (_, index) => first + index)
    .filter((mark) => mark >= 0 && mark % readTo === 0)
    .flatMap((mark): Mark[] => {
      const number = numberAt(mark);
      const x = xOf(mark);
      const tick = line("thin", { x, y: TOP }, { x, y: TOP + heightOf(mark) });
      return number === undefined ? [tick] : [tick, label(x, TOP + 86, number)];
    });
  const at = xOf(reading);
  // At a mark with a number, the pointer's line ends above the number.
  const lineEnd = numberAt(reading) === undefined ? BOTTOM : TOP + heightOf(reading);
  return {
    width: FIGURE_WIDTH,
    height: HEIGHT,
    description: "A piece of tape with a pointer at one of its marks.",
    marks: [
      face("metal", ...box(MARGIN, TOP, FIGURE_WIDTH - 2 * MARGIN, BOTTOM - TOP)),
      ...marks,
      face("pointer", { x: at, y: BOTTOM + 2 }, { x: at + 9, y: BOTTOM + 30 }, { x: at - 9, y: BOTTOM + 30 }),
      line("thin", { x: at, y: TOP }, { x: at, y: lineEnd }),
    ],
  };
};
