import type { SheetPlan } from "../../src/workbook/plan";

/** A sheet with a name and nothing on it. */
export const blankSheet = (name: string): SheetPlan => ({
  name,
  cells: [],
  columnWidths: [],
  rowHeights: {},
  frozenRows: 0,
});
