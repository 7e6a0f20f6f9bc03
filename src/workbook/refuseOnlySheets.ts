import { InputError } from "../../shared/inputError";
import type { WorkbookPlan } from "./plan";

/** A workbook keeps one sheet at least: where those that were built are all it has, they can't be taken away. */
export const refuseOnlySheets = ({ sheets: built }: WorkbookPlan, now: Iterable<string>): void => {
  if ([...now].every((sheet) => built.some(({ name }) => name === sheet)))
    throw new InputError(
      "The workbook has no other sheets any more, and it must keep one. Nothing was undone.",
    );
};
