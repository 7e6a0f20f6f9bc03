import { text, type PlannedCell } from "../workbook/plan";
import { CAUTIONS } from "./safety";

/** The cautions at a sheet's foot, a row each from `row` on. */
export const cautionCells = (row: number): PlannedCell[] =>
  CAUTIONS.map((caution, index) => ({
    row: row + index,
    column: 0,
    content: text(caution),
    style: "caution",
  }));
