import type { FunctionSpec } from "../../../shared/spec/spec";

/** A total of results in these units means nothing. */
const NEVER_TOTALED = ["ratio", "degrees", "in 12", "in", "lb per sq ft", "value", "text"];

export const canBeTotaled = ({ result }: FunctionSpec): boolean => !NEVER_TOTALED.includes(result.unit);
