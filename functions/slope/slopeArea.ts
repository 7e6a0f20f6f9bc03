import { quantity } from "../../shared/kinds/number";
import { pitch } from "../../shared/kinds/pitch";
import { SQ_FT_RESULT } from "../../shared/result";
import { defineFunction, required } from "../../shared/spec/spec";
import { rafterFactor } from "./rafterFactor";

/** Area on the slope over a plan area. */
export const slopeArea = (planAreaSqFt: number, rise: number): number => planAreaSqFt * rafterFactor(rise);

export const slopeAreaSpec = defineFunction({
  id: "SLOPEAREA",
  concept: "slope",
  summary: "Area on the slope, from the area that it covers on plan.",
  parameters: [
    required("planAreaSqFt", quantity("sq ft"), "Level area under the plane, overhangs with it."),
    required("pitch", pitch(), "Rise on 12."),
  ],
  heading: "Roof area (sq ft)",
  result: SQ_FT_RESULT,
  formula: "plan area × rafter factor",
  source: "Plane geometry: an area divided by the cosine of its tilt",
  examples: [{ args: [1200, 9], result: 1500, from: "1200 × 5/4, the 3-4-5 triangle" }],
  calculate: slopeArea,
});
