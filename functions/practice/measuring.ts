import { writeInches, writeTape } from "../../shared/lengthText";
import { pitchInWords } from "../../shared/pitchText";
import {
  INCHES_PER_FOOT,
  inchesToFeet,
  MM_PER_INCH,
  PITCH_RUN,
  toDegrees,
  toRadians,
} from "../../shared/units";
import type { Level } from "./level";
import type { Random } from "./random";

export const UNITS = ["feet and inches", "metric"] as const;
export type Units = (typeof UNITS)[number];

/** How a class measures: drawn lengths can be read on its tape, and are written as the tape shows them. */
export interface Measuring {
  readonly units: Units;
  /** A length on a mark of the tape, in inches, between about these feet. */
  drawLengthIn(random: Random, leastFt: number, mostFt: number): number;
  /** One of some usual lengths: in inches where the tape is in inches, otherwise in mm. Returns inches. */
  pickIn(random: Random, inches: readonly [number, ...number[]], mm: readonly [number, ...number[]]): number;
  drawRise(random: Random): number;
  /** `14' 6 1/2"`, or `4430 mm`. */
  write(lengthIn: number): string;
  /** For panels and trim: `22 1/2"`, or `570 mm`. */
  writeSmall(lengthIn: number): string;
  /** `6 in 12`, or `25°`. */
  writePitch(rise: number): string;
}

const SIXTEENTHS = 16;
/** The distance between two marks that a class of this level reads. */
const STEP_IN: Readonly<Record<Level, number>> = { "first hour": 1, "half day": 1 / 4, "full roof": 1 / 16 };
const STEP_MM: Readonly<Record<Level, number>> = { "first hour": 50, "half day": 5, "full roof": 1 };
/** Millimeters per foot where a length is only approximate. */
const MM_FOR_A_FOOT = 300;

const RISES: Readonly<Record<Level, readonly [number, ...number[]]>> = {
  "first hour": [4, 5, 6, 8, 9, 12],
  "half day": [3, 4, 5, 6, 7, 8, 9, 10, 11, 12],
  "full roof": [3.5, 4, 4.5, 5, 5.5, 6, 6.5, 7, 7.5, 8, 9, 10, 11],
};
const ANGLES: Readonly<Record<Level, readonly [least: number, most: number, step: number]>> = {
  "first hour": [20, 45, 5],
  "half day": [15, 45, 1],
  "full roof": [15, 45, 1],
};

const feetAndInches = (level: Level): Measuring => ({
  units: "feet and inches",
  drawLengthIn: (random, leastFt, mostFt) => {
    const stepsPerFoot = INCHES_PER_FOOT / STEP_IN[level];
    return random.whole(leastFt * stepsPerFoot, mostFt * stepsPerFoot) * STEP_IN[level];
  },
  pickIn: (random, inches) => random.pick(inches),
  drawRise: (random) => random.pick(RISES[level]),
  write: (lengthIn) => writeTape(inchesToFeet(lengthIn), SIXTEENTHS),
  writeSmall: (lengthIn) => `${writeInches(lengthIn, SIXTEENTHS)}"`,
  writePitch: pitchInWords,
});

const writeMm = (lengthIn: number): string => `${Math.round(lengthIn * MM_PER_INCH)} mm`;

const metric = (level: Level): Measuring => ({
  units: "metric",
  drawLengthIn: (random, leastFt, mostFt) => {
    const stepsPerFoot = MM_FOR_A_FOOT / STEP_MM[level];
    return (random.whole(leastFt * stepsPerFoot, mostFt * stepsPerFoot) * STEP_MM[level]) / MM_PER_INCH;
  },
  pickIn: (random, _inches, mm) => random.pick(mm) / MM_PER_INCH,
  drawRise: (random) => {
    const [least, most, step] = ANGLES[level];
    return PITCH_RUN * Math.tan(toRadians(random.whole(least / step, most / step) * step));
  },
  write: writeMm,
  writeSmall: writeMm,
  writePitch: (rise) => `${Math.round(toDegrees(Math.atan(rise / PITCH_RUN)))}°`,
});

export const measuringOf = (units: Units, level: Level): Measuring =>
  units === "metric" ? metric(level) : feetAndInches(level);
