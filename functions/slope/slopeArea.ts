import { quantity } from "../../shared/kinds/number";
import { pitch } from "../../shared/kinds/pitch";
import { SQ_FT_RESULT } from "../../shared/result";
import { defineFunction, required } from "../../shared/spec/spec";
import { rafterFactor } from "./rafterFactor";

/** Sloped area above a plan area. */
export const slopeArea = (planAreaSqFt: number, rise: number): number => planAreaSqFt * rafterFactor(rise);

export const slopeAreaSpec = defineFunction({
  id: "SLOPEAREA",
  concept: "slope",
  summary: "Sloped area of a plane, from its area on plan.",
  parameters: [
    required("planAreaSqFt", quantity("sq ft"), "Area of the plane on plan, overhangs included."),
    required("pitch", pitch(), "Rise on 12."),
  ],
  heading: "Roof area (sq ft)",
  result: SQ_FT_RESULT,
  formula: "plan area × rafter factor",
  source: "plane geometry: plan area divided by the cosine of the slope angle",
  examples: [{ args: [1200, 9], result: 1500, from: "1200 × 5/4, the 3-4-5 triangle" }],
  calculate: slopeArea,
});
