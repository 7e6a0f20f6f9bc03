import {
  DataValidationErrorStyle,
  DataValidationType,
  type IRange,
  type ISheetDataValidationRule,
} from "@univerjs/core";
import type { SheetPlan } from "../../sheets/plan";

/** A plan's drop-downs as the engine's rules: one a list of words, over every cell that offers it. */
export const dropDownRules = ({ cells }: SheetPlan): ISheetDataValidationRule[] => {
  const rangesByList = new Map<string, IRange[]>();
  for (const { row, column, choices } of cells) {
    if (!choices) continue;
    const list = choices.join(",");
    const range = { startRow: row, endRow: row, startColumn: column, endColumn: column };
    rangesByList.set(list, [...(rangesByList.get(list) ?? []), range]);
  }
  return [...rangesByList].map(([list, ranges], index) => ({
    uid: `list-${index}`,
    type: DataValidationType.LIST,
    formula1: list,
    allowBlank: true,
    showErrorMessage: true,
    errorStyle: DataValidationErrorStyle.WARNING,
    error: `Pick one of ${list.replaceAll(",", ", ")}.`,
    ranges,
  }));
};
