import type { Cell } from "../../shared/cell";
import { readArea } from "../../src/workbook/address";
import type { Survey } from "../../src/workbook/survey";

/** A cell that shows a value which a formula has worked out. */
export interface Calculated {
  readonly formula: string;
  readonly shows: Cell;
}

const isCalculated = (cell: Cell | Calculated): cell is Calculated =>
  typeof cell === "object" && cell !== null && "formula" in cell;

/** A sheet as a host would survey it, from rows that start at A1. */
export const surveyOf = (
  rows: readonly (readonly (Cell | Calculated)[])[],
  selected = "A1",
  more: Partial<Survey> = {},
): Survey => ({
  sheet: "Bid",
  selected: readArea(selected),
  cells: rows.map((row) => row.map((cell) => (isCalculated(cell) ? cell.shows : cell))),
  formulas: rows.map((row) => row.map((cell) => (isCalculated(cell) ? cell.formula : ""))),
  end: { row: 1000, column: 25 },
  merged: [],
  isProtected: false,
  isFiltered: false,
  hiddenRows: [],
  names: [],
  ...more,
});
