import { FEET_RESULT } from "../../shared/result";
import { defineFunction } from "../../shared/spec/spec";
import { trueLengthFt } from "./roofMeasures";
import type { EdgeKind, Roof } from "./roofParts";
import { EDGE, FOOTPRINT, GABLES, OVERHANG, PITCH, RAKE_OVERHANG, roofOf } from "./roofParameters";

/** Total true length, in feet, of all edges of one kind; 0 where there are none. */
export const edgeFeet = ({ edges }: Roof, kind: EdgeKind): number =>
  edges.filter((edge) => edge.kind === kind).reduce((sum, edge) => sum + trueLengthFt(edge), 0);

const L_SHAPE = [
  [0, 0],
  [40, 0],
  [40, 24],
  [20, 24],
  [20, 44],
  [0, 44],
];

export const edgeFeetSpec = defineFunction({
  id: "EDGEFEET",
  concept: "roof",
  summary: "Total feet of eave, rake, ridge, hip, valley or pitch break on the roof over a footprint.",
  parameters: [FOOTPRINT, PITCH, EDGE, GABLES, OVERHANG, RAKE_OVERHANG],
  heading: "Edges (ft)",
  result: FEET_RESULT,
  formula: "Σ true length of the edges of that kind",
  source: "Aichholzer and Aurenhammer 1996; Eppstein and Erickson 1999; plane geometry",
  examples: [
    { args: [L_SHAPE, 6, "valley"], result: 15, from: "a 10 ft run × 1.5, the hip factor of 6 in 12" },
    { args: [L_SHAPE, 6, "ridge"], result: 36, from: "44 − 24 and 40 − 24 between the hips of each wing" },
    { args: [L_SHAPE, 6, "rake"], result: 0, from: "a hip roof has none" },
  ],
  calculate: (corners, pitches, edge, gables, overhangsFt, rakeOverhangsFt) =>
    edgeFeet(roofOf(corners, pitches, gables, overhangsFt, rakeOverhangsFt), edge),
});
