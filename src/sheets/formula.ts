import type { FunctionSpec } from "../../shared/spec";

/** The namespace under which every host knows our functions. */
export const NAMESPACE = "GABLE";

/** A call as it stands inside a formula: `GABLE.COURSES(J6,ExposedHeight)`. */
export const call = (spec: FunctionSpec, ...args: readonly string[]): string =>
  `${NAMESPACE}.${spec.id}(${args.join(",")})`;

/** `=IF(C6="","",...)`: the row stays quiet until the cell that makes it a row is filled. */
export const unlessBlank = (cell: string, then: string): string => `=IF(${cell}="","",${then})`;
