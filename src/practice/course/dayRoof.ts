import { courses } from "../../../functions/courses/courses";
import { drawShingle, type PracticeRoof } from "../../../functions/practice/practiceRoof";
import type { Random } from "../../../functions/practice/random";
import { rafterLength } from "../../../functions/slope/rafterLength";
import { inchesToFeet, MM_PER_INCH, PITCH_RUN, SQ_INCHES_PER_SQ_FOOT } from "../../../shared/units";
import { inAreaUnit, sqFtOf } from "../answers";
import type { Setting } from "../problem";

/** The roof of the day, with what each session has found for the next. */
export interface DayRoof extends PracticeRoof {
  readonly halfWidthIn: number;
  /** From wall to ridge, plumb, on the tape's marks. */
  readonly riseIn: number;
  readonly eaveIn: number;
  readonly slopeIn: number;
  readonly courses: number;
  /** Both sides, in whole square feet or meters. */
  readonly areaSqFt: number;
  /** Common run of the hipped porch that is built on. */
  readonly porchRunIn: number;
}

const SIXTEENTHS = 16;

/** The nearest mark of the tape. */
const onTape = (lengthIn: number, { measuring }: Setting): number => {
  const marksPerInch = measuring.units === "metric" ? MM_PER_INCH : SIXTEENTHS;
  return Math.round(lengthIn * marksPerInch) / marksPerInch;
};

type Sides = Pick<DayRoof, "halfWidthIn" | "rise" | "overhangIn" | "eaveIn">;

/** Both sides, in square feet or meters, not rounded. */
const areaOf = ({ halfWidthIn, rise, overhangIn, eaveIn }: Sides, { measuring }: Setting): number =>
  inAreaUnit((2 * eaveIn * rafterLength(halfWidthIn, rise, overhangIn)) / SQ_INCHES_PER_SQ_FOOT, measuring);

/** How far an area stands from a half, at least: further than a factor of three decimals moves it. */
const CLEAR_OF_HALF = { "feet and inches": 0.35, metric: 0.1 } as const;

/** Whether a class that goes on with its own area rounds it as the key does, and no side of the house tells the other. */
export const isFitForDay = (roof: DayRoof, setting: Setting): boolean => {
  const area = areaOf(roof, setting);
  return (
    Math.abs(area - Math.floor(area) - 0.5) > CLEAR_OF_HALF[setting.measuring.units] &&
    roof.buildingLengthIn !== roof.buildingWidthIn
  );
};

export const drawDayRoof = (random: Random, setting: Setting): DayRoof => {
  const { measuring } = setting;
  const halfWidthIn = measuring.drawLengthIn(random, 8, 17);
  const buildingLengthIn = measuring.drawLengthIn(random, 26, 50);
  const rise = measuring.drawRise(random);
  const overhangIn = measuring.pickIn(random, [12, 16, 18], [300, 400, 450]);
  const shingle = drawShingle(random, measuring);
  const eaveIn = buildingLengthIn + 2 * overhangIn;
  const slopeIn = onTape(rafterLength(halfWidthIn, rise, overhangIn), setting);
  const area = areaOf({ halfWidthIn, rise, overhangIn, eaveIn }, setting);
  return {
    ...shingle,
    buildingLengthIn,
    buildingWidthIn: 2 * halfWidthIn,
    rise,
    overhangIn,
    halfWidthIn,
    riseIn: onTape((halfWidthIn * rise) / PITCH_RUN, setting),
    eaveIn,
    slopeIn,
    courses: courses(inchesToFeet(slopeIn), shingle.exposedHeightIn),
    areaSqFt: sqFtOf(Math.round(area), measuring),
    porchRunIn: measuring.drawLengthIn(random, 5, 8),
  };
};
