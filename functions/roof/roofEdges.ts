import type { Cell } from "../../shared/cell";
import { countOf, DEGREES_RESULT, FEET_RESULT, TEXT_RESULT } from "../../shared/result";
import { defineTable } from "../../shared/spec/spec";
import { bendDegrees, planLengthFt, riseFt, trueLengthFt } from "./roofMeasures";
import type { Roof } from "./roofParts";
import { FOOTPRINT, GABLES, OVERHANG, PITCH, RAKE_OVERHANG, roofOf } from "./roofParameters";

/** One row per edge. At the outer edge of the roof there is no other plane and no bend. */
export const roofEdges = ({ edges }: Roof): Cell[][] =>
  edges.map((edge, index) => [
    index + 1,
    edge.kind,
    edge.plane.number,
    edge.otherPlane?.number ?? "",
    planLengthFt(edge),
    trueLengthFt(edge),
    riseFt(edge),
    edge.otherPlane ? bendDegrees(edge.plane, edge.otherPlane) : "",
  ]);

export const roofEdgesSpec = defineTable({
  id: "ROOFEDGES",
  concept: "roof",
  summary: "Every eave, rake, ridge, hip and valley of the roof over a footprint, with its true length.",
  parameters: [FOOTPRINT, PITCH, GABLES, OVERHANG, RAKE_OVERHANG],
  columns: [
    { heading: "edge", result: countOf("") },
    { heading: "kind", result: TEXT_RESULT },
    { heading: "plane", result: countOf("") },
    { heading: "other plane", result: countOf("") },
    { heading: "plan length (ft)", result: FEET_RESULT },
    { heading: "true length (ft)", result: FEET_RESULT },
    { heading: "rise (ft)", result: FEET_RESULT },
    { heading: "bend (degrees)", result: DEGREES_RESULT },
  ],
  formula: "true length = √(plan length² + rise²); bend = angle between the normals of the two planes",
  source: "Aichholzer and Aurenhammer 1996; Eppstein and Erickson 1999; solid geometry",
  examples: [
    {
      args: [
        [
          [0, 0],
          [30, 0],
          [30, 30],
          [0, 30],
        ],
        6,
      ],
      result: [
        [
          "edge",
          "kind",
          "plane",
          "other plane",
          "plan length (ft)",
          "true length (ft)",
          "rise (ft)",
          "bend (degrees)",
        ],
        [1, "eave", 1, "", 30, 30, 0, ""],
        [2, "eave", 2, "", 30, 30, 0, ""],
        [3, "eave", 3, "", 30, 30, 0, ""],
        [4, "eave", 4, "", 30, 30, 0, ""],
        [5, "hip", 1, 2, 15 * Math.SQRT2, 22.5, 7.5, 36.869897645844],
        [6, "hip", 1, 4, 15 * Math.SQRT2, 22.5, 7.5, 36.869897645844],
        [7, "hip", 2, 3, 15 * Math.SQRT2, 22.5, 7.5, 36.869897645844],
        [8, "hip", 3, 4, 15 * Math.SQRT2, 22.5, 7.5, 36.869897645844],
      ],
      from: "a pyramid: hips of 15 × 1.5, bent 180° − 143.130°",
    },
  ],
  calculate: (corners, pitches, gables, overhangsFt, rakeOverhangsFt) =>
    roofEdges(roofOf(corners, pitches, gables, overhangsFt, rakeOverhangsFt)),
});
