import { lengthInInches } from "../../shared/kinds/length";
import { metal } from "../../shared/kinds/metal";
import { METAL_SOURCES, type Metal } from "../../shared/metals";
import { LB_PER_SQ_FT_RESULT } from "../../shared/result";
import { defineFunction, required } from "../../shared/spec/spec";
import { inchesToFeet } from "../../shared/units";

/** Thicker metal is plate. This also rejects a gauge number typed as a thickness. */
const THICKEST_IN = 0.5;

/** Weight of flat sheet of bare metal, in lb per sq ft. */
export const sheetWeight = ({ densityLbPerCuFt }: Metal, thicknessIn: number): number =>
  densityLbPerCuFt * inchesToFeet(thicknessIn);

export const sheetWeightSpec = defineFunction({
  id: "SHEETWEIGHT",
  concept: "trim",
  summary: "Weight of a square foot of flat sheet metal.",
  parameters: [
    required("metal", metal, "The metal."),
    required(
      "thicknessIn",
      lengthInInches({ moreThan: 0, atMost: THICKEST_IN }),
      "Thickness of the metal, such as 0.032; not a gauge number.",
    ),
  ],
  heading: "Weight (lb per sq ft)",
  result: LB_PER_SQ_FT_RESULT,
  formula: "density × thickness; coatings are not counted",
  source: METAL_SOURCES,
  examples: [
    { args: ["galvanized steel", 0.024], result: 0.98, from: "490 lb/cu ft × 0.024 ÷ 12 ft" },
    { args: ["aluminum", 0.032], result: 0.456192, from: "0.099 lb/cu in × 144 sq in × 0.032 in" },
  ],
  calculate: sheetWeight,
});
