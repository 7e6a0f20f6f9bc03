import type { CellPatch } from "../../workbook/patch";
import { errorMessage } from "../../workbook/errorMessage";

/** What would be written, or why it can't be planned yet. */
export type Planned =
  | { readonly kind: "patch"; readonly patch: CellPatch }
  | { readonly kind: "message"; readonly message: string };

export const planOrMessage = (plan: () => CellPatch): Planned => {
  try {
    return { kind: "patch", patch: plan() };
  } catch (failure) {
    return { kind: "message", message: errorMessage(failure) };
  }
};
