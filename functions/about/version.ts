import product from "../../package.json";
import { TEXT_RESULT } from "../../shared/result";
import { defineFunction } from "../../shared/spec/spec";
import { VERSION } from "../../shared/version";

export const versionSpec = defineFunction({
  id: "VERSION",
  concept: "about",
  summary: "The version of Gablewright that calculates this workbook.",
  parameters: [],
  heading: "Version",
  result: TEXT_RESULT,
  formula:
    "major.minor.patch; the name, parameters and meaning of a function never change within a major version",
  source: "Semantic Versioning 2.0.0, semver.org",
  examples: [{ args: [], result: product.version, from: "package.json" }],
  calculate: () => VERSION,
});
