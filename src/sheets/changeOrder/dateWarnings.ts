import type { Cell } from "../../../shared/cell";
import { termValue, type ExistingChangeOrder } from "./existingChangeOrders";

/** That a change order bears an earlier date than one before it; nothing where it doesn't. */
export const dateWarnings = (date: Cell, before: readonly ExistingChangeOrder[]): string[] => {
  const later = before.findLast((each) => {
    const dateBefore = termValue(each, "date");
    return typeof date === "number" && typeof dateBefore === "number" && dateBefore > date;
  });
  return later ? [`Its date is before that of "${later.sheet}".`] : [];
};
