import type { Parameter } from "../../shared/spec/spec";

const inWords = (standard: Parameter<unknown>["default"]): string =>
  typeof standard === "boolean" ? (standard ? "TRUE" : "FALSE") : String(standard);

/** What a person reads beside a parameter: its meaning, and what holds if it is left out. */
export const parameterHelp = ({ summary, default: standard }: Parameter<unknown>): string =>
  standard === null ? summary : `${summary} ${inWords(standard)} if left out.`;
