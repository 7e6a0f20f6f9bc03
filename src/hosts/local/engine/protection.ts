import type { Worksheet } from "@univerjs/core";
import { fileMetadataOf } from "./fileMetadata";

/** What the engine keeps for us of a sheet that a plan protects. */
export const PROTECTED_BY_PLAN = { protection: "of the plan" } as const;

/** Nobody types into it here. */
export const isProtectedByPlan = (sheet: Worksheet): boolean =>
  sheet.getConfig().custom?.["protection"] === PROTECTED_BY_PLAN.protection;

/** Protected by a plan, or in the file that it came from: which of its cells may be typed into, the file knows. */
export const hasProtection = (sheet: Worksheet): boolean =>
  isProtectedByPlan(sheet) || fileMetadataOf(sheet).isProtected;
