import type { Cell } from "../../shared/cell";
import { lengthInFeet } from "../../shared/kinds/length";
import { pitch } from "../../shared/kinds/pitch";
import { countOf, FEET_RESULT, TEXT_RESULT } from "../../shared/result";
import { defineTable, required } from "../../shared/spec/spec";
import { TRIM_KINDS } from "../../shared/trimKinds";
import { rafterFactor } from "../slope/rafterFactor";

/** The four sides of a chimney on the roof: front and back level, the other two up the slope. */
export const chimneyTrim = (widthFt: number, depthFt: number, rise: number): Cell[][] => [
  [TRIM_KINDS.chimneyFront.label, widthFt, 1],
  [TRIM_KINDS.chimneySide.label, depthFt * rafterFactor(rise), 2],
  [TRIM_KINDS.chimneyBack.label, widthFt, 1],
];

export const chimneyTrimSpec = defineTable({
  id: "CHIMNEYTRIM",
  concept: "trim",
  summary: "The runs of trim around a chimney as true lengths on the roof, without corners and laps.",
  parameters: [
    required("widthFt", lengthInFeet({ moreThan: 0 }), "Width along the eave."),
    required("depthFt", lengthInFeet({ moreThan: 0 }), "Level depth from front to back."),
    required("pitch", pitch(), "Rise on 12."),
  ],
  columns: [
    { heading: "trim", result: TEXT_RESULT },
    { heading: "length (ft)", result: FEET_RESULT },
    { heading: "runs", result: countOf("runs") },
  ],
  formula: "front and back = width; each side = depth × rafter factor",
  source: "geometry",
  examples: [
    {
      args: [3, 4, 9],
      result: [
        ["trim", "length (ft)", "runs"],
        ["chimney front", 3, 1],
        ["chimney side", 5, 2],
        ["chimney back", 3, 1],
      ],
      from: "9 in 12 is a 3-4-5 triangle: 4 ft level is 5 ft on the slope",
    },
  ],
  calculate: chimneyTrim,
});
