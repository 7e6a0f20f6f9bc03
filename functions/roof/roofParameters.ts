import { sideCount, type Footprint } from "../../shared/footprint";
import { InputError } from "../../shared/inputError";
import { choice } from "../../shared/kinds/choice";
import { footprint } from "../../shared/kinds/footprint";
import { lengthInFeet } from "../../shared/kinds/length";
import { perSide, type PerSide } from "../../shared/kinds/perSide";
import { pitch } from "../../shared/kinds/pitch";
import { sideNumbers } from "../../shared/kinds/sideNumbers";
import { omittable, optional, required } from "../../shared/spec/spec";
import { rememberLast } from "./remember";
import { roofOver } from "./roof";
import { EDGE_KINDS, type Roof } from "./roofParts";
import type { SideBuild } from "./roofSides";

/** A plane flatter than 1/4 in 12 is a flat roof: its ridges run off across the plan. */
const FLATTEST_PITCH = 0.25;

/** The parameters that say which roof it is, the same in every function that reads one. */
export const FOOTPRINT = required(
  "footprint",
  footprint,
  "Corners of the wall lines on plan, in order around; side 1 runs from corner 1 to corner 2.",
);
export const PITCH = required(
  "pitch",
  perSide(pitch({ atLeast: FLATTEST_PITCH })),
  "Rise on 12: one for all, or a column of one a side (a gable's may be blank).",
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
  "Level, past the walls: one for all, or one a side.",
  0,
);
export const RAKE_OVERHANG = omittable(
  "rakeOverhangFt",
  perSide(lengthInFeet()),
  "Level, past the gables: one for all, or one a side; the overhang if left out.",
);

/** What holds on one side. A list may run on past the sides with blank cells. */
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
    throw new InputError(`gables must be numbers of sides, 1 to ${sides}, got ${strayGable}`);
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

/** Roofs that a workbook may hold side by side, and the one before an edit. */
const ROOFS_REMEMBERED = 8;

/** The roof that a function's parameters describe. */
export const roofOf = rememberLast(
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
