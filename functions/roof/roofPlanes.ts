import type { Cell } from "../../shared/cell";
import { panelBlock } from "../../shared/kinds/panelBlock";
import type { LaidPanel } from "../../shared/kinds/panel";
import {
  countOf,
  FEET_RESULT,
  RISE_RESULT,
  SQ_FT_RESULT,
  SQUARES_RESULT,
  TEXT_RESULT,
} from "../../shared/result";
import { defineTable, omittable } from "../../shared/spec/spec";
import { courses } from "../courses/courses";
import { squares } from "../orders/squares";
import { planAreaSqFt, slopedAreaSqFt, slopeLengthFt, trueLengthFt } from "./roofMeasures";
import type { Roof } from "./roofParts";
import { FOOTPRINT, GABLES, OVERHANG, PITCH, RAKE_OVERHANG, roofOf } from "./roofParameters";

/** The sides that carry a plane: a number, or text where several sides are in line. */
const sidesInWords = (numbers: readonly number[]): Cell =>
  numbers.length === 1 ? (numbers[0] ?? null) : numbers.join(", ");

const eaveFt = ({ edges }: Roof, plane: number): number =>
  edges
    .filter((edge) => edge.kind === "eave" && edge.plane.number === plane)
    .reduce((sum, edge) => sum + trueLengthFt(edge), 0);

/** One row per plane. */
export const roofPlanes = (roof: Roof, panel: LaidPanel | undefined): Cell[][] =>
  roof.planes.map((plane) => [
    plane.number,
    sidesInWords(plane.sideNumbers),
    plane.side.pitch,
    eaveFt(roof, plane.number),
    planAreaSqFt(plane),
    slopedAreaSqFt(plane),
    squares(slopedAreaSqFt(plane), 0),
    slopeLengthFt(plane),
    panel ? courses(slopeLengthFt(plane), panel.exposedHeightIn) : "",
  ]);

export const roofPlanesSpec = defineTable({
  id: "ROOFPLANES",
  concept: "roof",
  summary: "The planes of the roof over a footprint, with their areas and lengths.",
  parameters: [
    FOOTPRINT,
    PITCH,
    GABLES,
    OVERHANG,
    RAKE_OVERHANG,
    omittable("panel", panelBlock, "The block on the Panel sheet; needed for the number of courses."),
  ],
  columns: [
    { heading: "plane", result: countOf("") },
    { heading: "side", result: TEXT_RESULT },
    { heading: "pitch (in 12)", result: RISE_RESULT },
    { heading: "eave (ft)", result: FEET_RESULT },
    { heading: "plan area (sq ft)", result: SQ_FT_RESULT },
    { heading: "sloped area (sq ft)", result: SQ_FT_RESULT },
    { heading: "squares", result: SQUARES_RESULT },
    { heading: "slope length (ft)", result: FEET_RESULT },
    { heading: "courses", result: countOf("courses") },
  ],
  formula: "weighted straight skeleton of the wall lines; sloped area = plan area × rafter factor",
  source: "Aichholzer and Aurenhammer 1996; Eppstein and Erickson 1999; plane geometry",
  examples: [
    {
      args: [
        [
          [0, 0],
          [40, 0],
          [40, 24],
          [0, 24],
        ],
        9,
      ],
      result: [
        [
          "plane",
          "side",
          "pitch (in 12)",
          "eave (ft)",
          "plan area (sq ft)",
          "sloped area (sq ft)",
          "squares",
          "slope length (ft)",
          "courses",
        ],
        [1, 1, 9, 40, 336, 420, 4.2, 15, ""],
        [2, 2, 9, 24, 144, 180, 1.8, 15, ""],
        [3, 3, 9, 40, 336, 420, 4.2, 15, ""],
        [4, 4, 9, 24, 144, 180, 1.8, 15, ""],
      ],
      from: "a hip roof with a 16 ft ridge: (40 + 16) ÷ 2 × 12 and 24 ÷ 2 × 12 on plan, times 5/4",
    },
  ],
  calculate: (corners, pitches, gables, overhangsFt, rakeOverhangsFt, panel) =>
    roofPlanes(roofOf(corners, pitches, gables, overhangsFt, rakeOverhangsFt), panel),
});
