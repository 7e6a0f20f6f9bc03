import { countOf } from "../../shared/result";
import { defineFunction } from "../../shared/spec/spec";
import { layOut } from "./engine/layOut";
import { LAYING_PARAMETERS, PLANE_PARAMETERS } from "./layoutParameters";
import { GABLE_30_BY_20, HIP_TRIANGLE, PLAIN_PANEL } from "./layoutExamples";

export const panelCountSpec = defineFunction({
  id: "PANELCOUNT",
  concept: "layout",
  summary: "Panels needed for a roof face, placed one by one, course by course, with off-cuts reused.",
  parameters: [...PLANE_PARAMETERS, ...LAYING_PARAMETERS],
  heading: "Panels",
  result: countOf("panels"),
  formula: "whole panels + cut pieces − pieces cut from an off-cut",
  source: "common practice, no published source; the most pieces from off-cuts by maximum matching",
  examples: [
    {
      args: [GABLE_30_BY_20, PLAIN_PANEL],
      result: 300,
      from: "600 sq ft ÷ 2 sq ft: the starters of 12, 18 and 6 in leave off-cuts that close another course",
    },
    {
      args: [GABLE_30_BY_20, PLAIN_PANEL, undefined, "left", false],
      result: 315,
      from: "15 panels in each full course, 16 in each of the 15 others",
    },
    {
      args: [HIP_TRIANGLE, PLAIN_PANEL, undefined, "left", false],
      result: 7,
      from: "course 1, joints at 24 and 48 of 72 in: 3; course 2, 12 to 60 in, joint at 36 in: 2; course 3, 24 to 48 in, joint at 42 in: 2",
    },
  ],
  calculate: (outline, panel, openings = [], start, reuse) =>
    layOut({ outline, openings }, panel, start, reuse).panels,
});
