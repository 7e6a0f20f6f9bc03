import type { FunctionSpec } from "../../shared/spec";
import { qualifiedName } from "../namespace";

/** A call as it stands inside a formula: `GABLE.COURSES(J6,ExposedHeight)`. */
export const call = (spec: FunctionSpec, ...args: readonly string[]): string =>
  `${qualifiedName(spec)}(${args.join(",")})`;

/** `=IF(C6="","",...)`: the row stays quiet until the cell that makes it a row is filled. */
export const unlessBlank = (cell: string, then: string): string => `=IF(${cell}="","",${then})`;
