import type { Worksheet } from "@univerjs/core";
import { fileMetadataOf } from "./fileMetadata";

/** Custom data that marks a sheet as protected by its plan. */
export const PROTECTED_BY_PLAN = { protection: "of the plan" } as const;

/** Whether a plan protects the sheet: none of its cells can be edited here. */
export const isProtectedByPlan = (sheet: Worksheet): boolean =>
  sheet.getConfig().custom?.["protection"] === PROTECTED_BY_PLAN.protection;

/** Whether a plan or the sheet's file protects it. The file may leave some cells unlocked. */
export const hasProtection = (sheet: Worksheet): boolean =>
  isProtectedByPlan(sheet) || fileMetadataOf(sheet).isProtected;
