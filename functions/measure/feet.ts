import { lengthInFeet } from "../../shared/kinds/length";
import { FEET_RESULT } from "../../shared/result";
import { defineFunction, required } from "../../shared/spec/spec";

/** Any length as decimal feet. */
export const feet = (lengthFt: number): number => lengthFt;

export const feetSpec = defineFunction({
  id: "FEET",
  concept: "measure",
  summary: "Any length as decimal feet, for arithmetic.",
  parameters: [required("lengthFt", lengthInFeet(), "Feet, or text with its unit.")],
  heading: "Length (ft)",
  result: FEET_RESULT,
  formula: "feet + inches ÷ 12; 1 in = 25.4 mm exactly",
  source: "International foot and inch, exact: NIST SP 811 Appendix B (from memory)",
  examples: [
    { args: [`18' 6 1/2"`], result: 18 + 6.5 / 12, from: "18 ft + 6.5 in ÷ 12" },
    { args: ["3.048 m"], result: 10, from: "1 ft = 0.3048 m exactly" },
  ],
  calculate: feet,
});
