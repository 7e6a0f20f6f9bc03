import { flag } from "../../shared/kinds/flag";
import { quantity } from "../../shared/kinds/number";
import { SQ_IN_RESULT } from "../../shared/result";
import { defineFunction, optional, required } from "../../shared/spec/spec";
import { SQ_INCHES_PER_SQ_FOOT } from "../../shared/units";

/** IRC R806.2: ceiling area per unit of vent area, and the same where vents are balanced. */
const CEILING_PER_VENT = 150;
const CEILING_PER_BALANCED_VENT = 300;

/** Net free area of all the vents of an attic, in square inches. */
export const ventArea = (ceilingAreaSqFt: number, isBalanced: boolean): number =>
  (ceilingAreaSqFt * SQ_INCHES_PER_SQ_FOOT) / (isBalanced ? CEILING_PER_BALANCED_VENT : CEILING_PER_VENT);

export const ventAreaSpec = defineFunction({
  id: "VENTAREA",
  concept: "deck",
  summary: "Net free area of attic vents, intake and exhaust together. The local code governs.",
  parameters: [
    required("ceilingAreaSqFt", quantity("sq ft"), "Area of the attic floor."),
    optional(
      "balanced",
      flag,
      "TRUE if 40 to 50% of it is in the upper part and the other terms of the code exception are met.",
      false,
    ),
  ],
  heading: "Vent area (sq in)",
  result: SQ_IN_RESULT,
  formula: "ceiling area × 144 ÷ 150, ÷ 300 if balanced",
  source:
    "IRC R806.2: 1/150; 1/300 where 40 to 50% is in the upper part and, in cold zones, a vapor retarder is on the " +
    "warm side (2012 edition on, partly from memory; older editions 50 to 80%). Editions differ, and the local code governs",
  examples: [
    { args: [600], result: 576, from: "published: an attic of 20 × 30 ft, 4 sq ft of vent" },
    { args: [600, true], result: 288, from: "half of that" },
  ],
  calculate: ventArea,
});
