import type { Worksheet } from "@univerjs/core";

/** What the engine keeps for us of a sheet: who protects it. */
export const PROTECTED_BY_PLAN = { protection: "of the plan" } as const;
export const PROTECTED_BY_FILE = { protection: "of the file" } as const;

const protectionOf = (sheet: Worksheet): unknown => sheet.getConfig().custom?.["protection"];

/** Nobody types into it here. */
export const isProtectedHere = (sheet: Worksheet): boolean =>
  protectionOf(sheet) === PROTECTED_BY_PLAN.protection;

/** Protected by a plan, or in the file that it came from: which of its cells may be typed into, the file knows. */
export const hasProtection = (sheet: Worksheet): boolean => protectionOf(sheet) !== undefined;
