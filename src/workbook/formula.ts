import type { FunctionSpec } from "../../shared/spec/spec";
import { qualifiedName } from "./namespace";

/** A function call inside a formula: `GABLE.COURSES(J6,ExposedHeight)`. */
export const call = (spec: FunctionSpec, ...args: readonly string[]): string =>
  `${qualifiedName(spec)}(${args.join(",")})`;

/**
 * Tests whether a cell shows nothing: it is blank or holds empty text. Not `C6=""`: in the local workbook's engine that is
 * true if the cell holds 0, and a plane with an eave of 0 would disappear without a warning.
 */
export const isEmpty = (cell: string): string => `LEN(${cell})=0`;

/** `=IF(LEN(C6)=0,"",...)`: the cell stays blank until the row's key cell is filled. */
export const unlessEmpty = (cell: string, then: string): string => `=IF(${isEmpty(cell)},"",${then})`;

/** Text inside a formula. Quotes are doubled, so typed text can't end the string and go on as a formula. */
export const quotedText = (text: string): string => `"${text.replaceAll('"', '""')}"`;
