import { lengthInFeet } from "../../shared/kinds/length";
import { INCHES_RESULT } from "../../shared/result";
import { defineFunction, required } from "../../shared/spec/spec";
import { feetToInches } from "../../shared/units";

/** Any length as decimal inches. A bare number is feet, as in every roof measurement. */
export const inches = (lengthFt: number): number => feetToInches(lengthFt);

export const inchesSpec = defineFunction({
  id: "INCHES",
  concept: "measure",
  summary: "Any length as decimal inches. A bare number is in feet.",
  parameters: [required("lengthFt", lengthInFeet(), "Feet, or text with its unit.")],
  heading: "Length (in)",
  result: INCHES_RESULT,
  formula: "feet × 12",
  source: "International foot and inch, exact: NIST SP 811 Appendix B (from memory)",
  examples: [
    { args: [`18' 6 1/2"`], result: 222.5, from: "18 × 12 + 6.5" },
    { args: ["610 mm"], result: 610 / 25.4, from: "1 in = 25.4 mm exactly" },
    { args: [1.5], result: 18, from: "1.5 ft × 12" },
  ],
  calculate: inches,
});
