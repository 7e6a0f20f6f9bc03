import type { Cell } from "../../../shared/cell";
import { termShown, type Earlier } from "./earlier";

/** That a change order bears an earlier date than one before it; nothing where it doesn't. */
export const datedBefore = (date: Cell, before: readonly Earlier[]): string[] => {
  const later = before.findLast((each) => {
    const dateBefore = termShown(each, "date");
    return typeof date === "number" && typeof dateBefore === "number" && dateBefore > date;
  });
  return later ? [`Its date is before that of "${later.sheet}".`] : [];
};
