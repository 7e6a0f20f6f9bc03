import { DEFAULT_PATTERN, staggerPattern } from "../../shared/kinds/staggerPattern";
import { optional } from "../../shared/spec/spec";

export const PATTERN_PARAMETER = optional(
  "pattern",
  staggerPattern,
  "Starter widths as fractions of a panel, from the eave up. The pattern repeats.",
  DEFAULT_PATTERN,
);
