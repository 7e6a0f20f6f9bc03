import { sideCount, type Footprint } from "../../shared/footprint";
import { InputError } from "../../shared/inputError";
import { choice } from "../../shared/kinds/choice";
import { footprint } from "../../shared/kinds/footprint";
import { lengthInFeet } from "../../shared/kinds/length";
import { perSide, type PerSide } from "../../shared/kinds/perSide";
import { pitch } from "../../shared/kinds/pitch";
import { sideNumbers } from "../../shared/kinds/sideNumbers";
import { omittable, optional, required } from "../../shared/spec/spec";
import { memoizeLast } from "./memoizeLast";
import { roofOver } from "./roof";
import { EDGE_KINDS, type Roof } from "./roofParts";
import type { SideBuild } from "./roofSides";

/** A plane flatter than 1/4 in 12 is a flat roof, and its ridges run far across the plan. */
const FLATTEST_PITCH = 0.25;

/** The parameters that describe a roof, the same in every function that takes one. */
export const FOOTPRINT = required(
  "footprint",
  footprint,
  "Corners of the wall lines on plan, in order around the building; side 1 runs from corner 1 to corner 2.",
);
export const PITCH = required(
  "pitch",
  perSide(pitch({ atLeast: FLATTEST_PITCH })),
  "Rise on 12: one for all sides, or a column with one per side (blank for a gable).",
);
export const EDGE = required(
  "edge",
  choice(EDGE_KINDS),
  "eave, rake, ridge, hip, valley, pitch break, or eave step where eaves meet at different heights.",
);
export const GABLES = omittable("gables", sideNumbers, "Numbers of the sides that are gable ends.");
export const OVERHANG = optional(
  "overhangFt",
  perSide(lengthInFeet()),
  "Level distance past the walls: one for all sides, or one per side.",
  0,
);
export const RAKE_OVERHANG = omittable(
  "rakeOverhangFt",
  perSide(lengthInFeet()),
  "Level distance past the gable walls: one for all sides, or one per side; the overhang if left out.",
);

/** The value for one side. A list may go on past the last side with blank cells. */
const valueOn = (values: PerSide, side: number, sides: number, label: string): number => {
  const last = values.findLastIndex((value) => value !== undefined) + 1;
  const isList = values.length > 1;
  if (isList && (values.length < sides || last > sides)) {
    const got = values.length < sides ? values.length : last;
    throw new InputError(`${label} takes one value, or one for each of the ${sides} sides, got ${got}`);
  }
  const value = isList ? values[side - 1] : values[0];
  if (value === undefined) throw new InputError(`${label} of side ${side} is missing`);
  return value;
};

const sideBuilds = (
  sides: number,
  pitches: PerSide,
  gables: readonly number[],
  overhangsFt: PerSide,
  rakeOverhangsFt: PerSide | undefined,
): SideBuild[] => {
  const strayGable = gables.find((gable) => gable > sides);
  if (strayGable !== undefined)
    throw new InputError(`gables must be side numbers from 1 to ${sides}, got ${strayGable}`);
  return Array.from({ length: sides }, (_, index): SideBuild => {
    const side = index + 1;
    return gables.includes(side)
      ? {
          pitch: "gable",
          overhangFt: rakeOverhangsFt
            ? valueOn(rakeOverhangsFt, side, sides, "rakeOverhang")
            : valueOn(overhangsFt, side, sides, "overhang"),
        }
      : {
          pitch: valueOn(pitches, side, sides, "pitch"),
          overhangFt: valueOn(overhangsFt, side, sides, "overhang"),
        };
  });
};

/** Enough for the roofs of a workbook, and for the one before an edit. */
const ROOFS_REMEMBERED = 8;

/** The roof that a function's parameters describe. */
export const roofOf = memoizeLast(
  (
    corners: Footprint,
    pitches: PerSide,
    gables: readonly number[] | undefined,
    overhangsFt: PerSide,
    rakeOverhangsFt: PerSide | undefined,
  ): Roof =>
    roofOver(corners, sideBuilds(sideCount(corners), pitches, gables ?? [], overhangsFt, rakeOverhangsFt)),
  ROOFS_REMEMBERED,
);
