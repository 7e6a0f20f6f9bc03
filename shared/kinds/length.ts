import { dateInWords, isDateSerial } from "../sheetDate";
import { InputError } from "../inputError";
import { readLengthText } from "../lengthText";
import { inchesToFeet } from "../units";
import { notTaken, withinBounds, type Bounds } from "./bounds";
import type { CellKind } from "./kind";

/** Nothing on a roof is longer; and above it lie the numbers of dates. */
const LONGEST_FT = 30_000;

interface LengthUnit {
  readonly name: string;
  readonly example: string;
  readonly longest: number;
  fromInches(inches: number): number;
}

const FEET: LengthUnit = { name: "ft", example: "18.5", longest: LONGEST_FT, fromInches: inchesToFeet };
const INCHES: LengthUnit = { name: "in", example: "12", longest: LONGEST_FT, fromInches: (inches) => inches };

const lengthIn = (unit: LengthUnit, bounds: Bounds): CellKind<number> => {
  const takes = `a length in ${unit.name} such as ${unit.example}, or text with its unit such as 18' 6 1/2", 18-6 1/2 or 5.64 m`;
  const limits: Bounds = { atMost: unit.longest, ...bounds };

  const toUnit = (text: string): number | undefined => {
    const reading = readLengthText(text);
    if (!reading) return undefined;
    return "bare" in reading ? reading.bare : unit.fromInches(reading.inches);
  };

  return {
    shape: "cell",
    takes,
    read: (cell, label) => {
      const value = typeof cell === "string" ? toUnit(cell) : cell;
      if (typeof value !== "number") throw notTaken(label, takes, cell);
      if (typeof cell === "number" && isDateSerial(cell))
        throw new InputError(
          `${label} got ${cell}, which is the date ${dateInWords(cell)}; type feet and inches as 12' 6", or as '12-6 with an apostrophe before it`,
        );
      return withinBounds(value, limits, label, unit.name, cell);
    },
  };
};

/** A length on the roof, in feet. */
export const lengthInFeet = (bounds: Bounds = { atLeast: 0 }): CellKind<number> => lengthIn(FEET, bounds);

/** A place on the face, in feet from a point of reference: it may be negative. */
export const signedLengthInFeet: CellKind<number> = lengthIn(FEET, { atLeast: -LONGEST_FT });

/** A length on the panel, trim or fastener, in inches. */
export const lengthInInches = (bounds: Bounds = { atLeast: 0 }): CellKind<number> => lengthIn(INCHES, bounds);
