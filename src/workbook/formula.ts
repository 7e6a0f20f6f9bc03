import type { FunctionSpec } from "../../shared/spec/spec";
import { qualifiedName } from "./namespace";

/** A call as it stands inside a formula: `GABLE.COURSES(J6,ExposedHeight)`. */
export const call = (spec: FunctionSpec, ...args: readonly string[]): string =>
  `${qualifiedName(spec)}(${args.join(",")})`;

/**
 * Whether a cell shows nothing, blank or empty text. Not `C6=""`: the local workbook's engine takes that for true where
 * the cell holds 0, and a plane with an eave of 0 would drop out in silence.
 */
export const isEmpty = (cell: string): string => `LEN(${cell})=0`;

/** `=IF(LEN(C6)=0,"",...)`: the row stays quiet until the cell that makes it a row is filled. */
export const unlessEmpty = (cell: string, then: string): string => `=IF(${isEmpty(cell)},"",${then})`;

/** Words inside a formula; text of a person's among them can't end the quotes. */
export const quotedText = (words: string): string => `"${words.replaceAll('"', '""')}"`;
