import { courses } from "../../../functions/courses/courses";
import { drawShingle, type PracticeRoof } from "../../../functions/practice/practiceRoof";
import type { Random } from "../../../functions/practice/random";
import { rafterLength } from "../../../functions/slope/rafterLength";
import { inchesToFeet, MM_PER_INCH, PITCH_RUN, SQ_INCHES_PER_SQ_FOOT } from "../../../shared/units";
import { inAreaUnit, sqFtOf } from "../answers/area";
import type { Setting } from "../topic";

/** The course's roof, with what each session finds for the next ones. */
export interface CourseRoof extends PracticeRoof {
  readonly halfWidthIn: number;
  /** Plumb, from the top of the wall to the ridge, on the tape's marks. */
  readonly riseIn: number;
  readonly eaveIn: number;
  readonly slopeIn: number;
  readonly courses: number;
  /** Both sides: a whole number of sq ft, or of m² in metric classes. */
  readonly areaSqFt: number;
  /** Common run of the hipped porch addition. */
  readonly porchRunIn: number;
}

const SIXTEENTHS = 16;

/** Rounded to the tape's nearest mark. */
const onTape = (lengthIn: number, { measuring }: Setting): number => {
  const marksPerInch = measuring.units === "metric" ? MM_PER_INCH : SIXTEENTHS;
  return Math.round(lengthIn * marksPerInch) / marksPerInch;
};

type Sides = Pick<CourseRoof, "halfWidthIn" | "rise" | "overhangIn" | "eaveIn">;

/** Both sides, in sq ft or m², not rounded. */
const areaOf = ({ halfWidthIn, rise, overhangIn, eaveIn }: Sides, { measuring }: Setting): number =>
  inAreaUnit((2 * eaveIn * rafterLength(halfWidthIn, rise, overhangIn)) / SQ_INCHES_PER_SQ_FOOT, measuring);

/** The least distance of an area from a half: more than a factor rounded to three decimals can change it. */
const MIN_FROM_HALF = { "feet and inches": 0.35, metric: 0.1 } as const;

/** Whether a student's own area rounds as the answer key's does, and the building's length isn't its width, which would give it away. */
export const isSuitableForCourse = (roof: CourseRoof, setting: Setting): boolean => {
  const area = areaOf(roof, setting);
  return (
    Math.abs(area - Math.floor(area) - 0.5) > MIN_FROM_HALF[setting.measuring.units] &&
    roof.buildingLengthIn !== roof.buildingWidthIn
  );
};

export const drawCourseRoof = (random: Random, setting: Setting): CourseRoof => {
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
