import type { Cell } from "../../shared/cell";
import { FEET_RESULT } from "../../shared/result";
import { defineTable } from "../../shared/spec/spec";
import { trueLengthFt } from "./roofMeasures";
import type { EdgeKind, Roof } from "./roofParts";
import { EDGE, FOOTPRINT, GABLES, OVERHANG, PITCH, RAKE_OVERHANG, roofOf } from "./roofParameters";

/** The true length, in feet, of each edge of one kind, one row per edge; one row of 0 where there are none. */
export const edgeLengths = ({ edges }: Roof, kind: EdgeKind): Cell[][] => {
  const lengths = edges.filter((edge) => edge.kind === kind).map((edge) => [trueLengthFt(edge)]);
  return lengths.length === 0 ? [[0]] : lengths;
};

const RECTANGLE = [
  [0, 0],
  [40, 0],
  [40, 24],
  [0, 24],
];

export const edgeLengthsSpec = defineTable({
  id: "EDGELENGTHS",
  concept: "roof",
  summary: "The true length of each edge of one kind on the roof over a footprint, for cutting trim.",
  parameters: [FOOTPRINT, PITCH, EDGE, GABLES, OVERHANG, RAKE_OVERHANG],
  columns: [{ heading: "true length (ft)", result: FEET_RESULT }],
  formula: "true length = √(plan length² + rise²), in the order of ROOFEDGES; 0 where there are none",
  source: "Aichholzer and Aurenhammer 1996; Eppstein and Erickson 1999; plane geometry",
  examples: [
    {
      args: [RECTANGLE, 6, "hip"],
      result: [["true length (ft)"], [18], [18], [18], [18]],
      from: "a 12 ft run × 1.5, the hip factor of 6 in 12",
    },
    { args: [RECTANGLE, 6, "ridge"], result: [["true length (ft)"], [16]], from: "40 − 24" },
    {
      args: [RECTANGLE, 6, "rake"],
      result: [["true length (ft)"], [0]],
      from: "a hip roof has none",
    },
  ],
  calculate: (corners, pitches, edge, gables, overhangsFt, rakeOverhangsFt) =>
    edgeLengths(roofOf(corners, pitches, gables, overhangsFt, rakeOverhangsFt), edge),
});
