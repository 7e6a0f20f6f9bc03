import { DEFAULT_PATTERN, staggerPattern } from "../../shared/kinds/staggerPattern";
import { optional } from "../../shared/spec/spec";

export const PATTERN_PARAMETER = optional(
  "pattern",
  staggerPattern,
  "Fractions of a panel, from the eave up; then they repeat.",
  DEFAULT_PATTERN,
);
