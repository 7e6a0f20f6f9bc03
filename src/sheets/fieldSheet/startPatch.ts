import { writeStart, type LayoutStart } from "../../../shared/layoutStart";
import type { CellAddress } from "../../workbook/address";
import { valueAt } from "../../workbook/contents";
import type { ActiveSheet } from "../../workbook/activeSheet";
import type { CellPatch } from "../../workbook/patch";
import { text } from "../../workbook/plan";
import { INPUT_ROWS, VALUE_COLUMN } from "./fieldSheetLayout";

export const START_CELL: CellAddress = { row: INPUT_ROWS.start, column: VALUE_COLUMN };

/** Replaces a field sheet's start, if it hasn't changed since it was read. */
export const startPatch = (view: ActiveSheet, start: LayoutStart): CellPatch => {
  const seen = valueAt(view, START_CELL);
  return {
    sheet: view.sheet,
    at: START_CELL,
    cells: [[{ content: text(writeStart(start)) }]],
    mayReplace: (holds) => holds === seen,
  };
};
