import type { Parameter } from "../../shared/spec/spec";

const inWords = (standard: Parameter<unknown>["default"]): string =>
  typeof standard === "boolean" ? (standard ? "TRUE" : "FALSE") : String(standard);

/** The explanation of a parameter: its meaning, and its default if it has one. */
export const parameterHelp = ({ summary, default: standard }: Parameter<unknown>): string =>
  standard === null ? summary : `${summary} Default: ${inWords(standard)}.`;
