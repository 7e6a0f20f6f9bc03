import { lappedPieces } from "../../shared/laps";
import { lengthInInches } from "../../shared/kinds/length";
import { pitch } from "../../shared/kinds/pitch";
import { countOf } from "../../shared/result";
import { isSame } from "../../shared/rounding";
import { defineFunction, required } from "../../shared/spec/spec";
import { rafterFactor } from "../slope/rafterFactor";
import { lapBelow } from "./lapBelow";

/** IRC R905.1.2: the sheet reaches at least this far inside the exterior wall line, measured level. */
const INSIDE_WALL_IN = 24;
/** IRC R905.1.2, 2015 edition on: from this pitch up, also at least this far from the eave edge along the slope. */
const STEEP_RISE = 8;
const STEEP_REACH_IN = 36;

/** How far up the slope the sheet must reach. */
const reachIn = (rise: number, overhangIn: number, wallIn: number): number => {
  const insideWall = (overhangIn + wallIn + INSIDE_WALL_IN) * rafterFactor(rise);
  const isSteep = rise >= STEEP_RISE || isSame(rise, STEEP_RISE);
  return isSteep ? Math.max(insideWall, STEEP_REACH_IN) : insideWall;
};

/** Courses of sheet from the eave edge up. */
export const iceBarrier = (
  rise: number,
  overhangIn: number,
  wallIn: number,
  rollWidthIn: number,
  headLapIn: number,
): number => {
  lapBelow(headLapIn, "headLap", rollWidthIn, "roll's width");
  return lappedPieces(reachIn(rise, overhangIn, wallIn), rollWidthIn, headLapIn);
};

export const iceBarrierSpec = defineFunction({
  id: "ICEBARRIER",
  concept: "deck",
  summary: "Courses of ice barrier from the eave up to 24 in inside the wall line. The local code governs.",
  parameters: [
    required("pitch", pitch(), "Rise on 12."),
    required("overhangIn", lengthInInches(), "Distance from the wall to the eave edge, measured level."),
    required("wallIn", lengthInInches(), "Wall thickness if the inner face is the wall line; otherwise 0."),
    required("rollWidthIn", lengthInInches({ moreThan: 0 }), "Width of a roll."),
    required("headLapIn", lengthInInches(), "Lap of one course over the next."),
  ],
  heading: "Ice barrier courses",
  result: countOf("courses"),
  formula:
    "reach = (overhang + wall + 24) × rafter factor, at least 36 in from 8 in 12 up; courses = (reach − head lap) ÷ " +
    "(roll width − head lap), rounded up",
  source:
    "IRC R905.1.2: 24 in inside the exterior wall line; 2015 edition on: 36 in along the slope from 8 in 12 up. " +
    "Editions differ, and the local code governs",
  examples: [
    {
      args: [9, 12, 0, 36, 6],
      result: 2,
      from: "36 in level is 45 in on the slope; two courses reach 66 in",
    },
    {
      args: [9, `4 3/4"`, 0, 36, 6],
      result: 1,
      from: "28 3/4 in level is 35.9 in on the slope; the code requires 36",
    },
    { args: [4, 24, 6, 36, 3], result: 2, from: "54 × 1.0541 = 56.9 in; two courses reach 69 in" },
  ],
  calculate: iceBarrier,
});
