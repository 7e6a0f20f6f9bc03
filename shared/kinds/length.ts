import { dateInWords, isDateSerial } from "../sheetDate";
import { InputError } from "../inputError";
import { readLengthText } from "../lengthText";
import { inchesToFeet } from "../units";
import { limitsOf, notTaken, withinLimits, type Bounds } from "./bounds";
import type { CellKind, NameEnding } from "./kind";

/** Nothing on a roof is longer in feet, nor anything of metal in inches; and above it lie the numbers of dates. */
const LONGEST = 30_000;

interface LengthUnit {
  readonly name: string;
  readonly plural: string;
  readonly nameEnding: NameEnding;
  readonly example: string;
  fromInches(inches: number): number;
}

const FEET: LengthUnit = {
  name: "ft",
  plural: "feet",
  nameEnding: "Ft",
  example: "18.5",
  fromInches: inchesToFeet,
};
const INCHES: LengthUnit = {
  name: "in",
  plural: "inches",
  nameEnding: "In",
  example: "12",
  fromInches: (inches) => inches,
};

const refuseDate = (cell: number, label: string): void => {
  if (isDateSerial(cell))
    throw new InputError(
      `${label} got ${cell}, which is the date ${dateInWords(cell)}; type feet and inches as 12' 6", or as '12-6 with an apostrophe before it`,
    );
};

const lengthIn = (unit: LengthUnit, bounds: Bounds, mayBeDate = true): CellKind<number> => {
  const takes = `a length in ${unit.plural} such as ${unit.example}, or text with its unit such as 18' 6 1/2", 18-6 1/2 or 5.64 m`;
  const limits = limitsOf({ atMost: LONGEST, ...bounds });

  const toUnit = (text: string): number | undefined => {
    const reading = readLengthText(text);
    if (!reading) return undefined;
    return "bare" in reading ? reading.bare : unit.fromInches(reading.inches);
  };

  return {
    shape: "cell",
    takes,
    nameEnding: unit.nameEnding,
    read: (cell, label) => {
      const value = typeof cell === "string" ? toUnit(cell) : cell;
      if (typeof value !== "number") throw notTaken(label, takes, cell);
      if (typeof cell === "number" && mayBeDate) refuseDate(cell, label);
      return withinLimits(value, limits, label, unit.name, cell);
    },
  };
};

/** A length on the roof, in feet. */
export const lengthInFeet = (bounds: Bounds = { atLeast: 0 }): CellKind<number> => lengthIn(FEET, bounds);

/** A length to one side or the other, in feet: it may be negative. */
export const signedLengthInFeet: CellKind<number> = lengthIn(FEET, { atLeast: -LONGEST });

/** A corner's place on the face, in feet. Most are worked out by OUTLINE, so a large one is no date that was typed. */
export const placeInFeet: CellKind<number> = lengthIn(FEET, { atLeast: -LONGEST }, false);

/** A length on the panel, trim or fastener, in inches. */
export const lengthInInches = (bounds: Bounds = { atLeast: 0 }): CellKind<number> => lengthIn(INCHES, bounds);
