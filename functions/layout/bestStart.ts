import { writeStart } from "../../shared/layoutStart";
import { countOf, TEXT_RESULT } from "../../shared/result";
import { defineTable } from "../../shared/spec/spec";
import { bestStart } from "./engine/findBestStart";
import { GABLE_30_BY_20, PLAIN_PANEL } from "./layoutExamples";
import { PLANE_PARAMETERS } from "./layoutParameters";

export const bestStartSpec = defineTable({
  id: "BESTSTART",
  concept: "layout",
  summary: "The start of a roof face with the fewest warnings, then the fewest panels, then the fewest cuts.",
  parameters: PLANE_PARAMETERS,
  columns: [
    { heading: "start", result: TEXT_RESULT },
    { heading: "warnings", result: countOf("warnings") },
    { heading: "panels", result: countOf("panels") },
    { heading: "cuts", result: countOf("pieces") },
    { heading: "choices weighed", result: countOf("starts") },
  ],
  formula:
    "every shift by 1/4 in over one panel × every step of the stagger × left and right, each laid out in full with " +
    "off-cuts reused; the first one wins a tie",
  source: "exhaustive search",
  examples: [
    {
      args: [GABLE_30_BY_20, PLAIN_PANEL],
      result: [
        ["start", "warnings", "panels", "cuts", "choices weighed"],
        ["left", 0, 300, 30, 768],
      ],
      from: "no start needs fewer panels than 600 sq ft ÷ 2 sq ft; without a shift, one course in four needs no cut; 96 shifts × 4 steps × 2 sides",
    },
  ],
  calculate: (outline, panel, openings = []) => {
    const { start, warnings, panels, cuts, choices } = bestStart({ outline, openings }, panel);
    return [[writeStart(start), warnings, panels, cuts, choices]];
  },
});
