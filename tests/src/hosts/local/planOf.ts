import { formula, value, type PlannedName, type WorkbookPlan } from "../../../../src/workbook/plan";

interface TypedCell {
  readonly row: number;
  readonly column: number;
  /** Text that begins with = is a formula. */
  readonly content: string | number;
}

/** A plan of a few cells, with contents as a person types them. */
export const planOf = (typed: {
  readonly sheets: readonly { readonly name: string; readonly cells: readonly TypedCell[] }[];
  readonly names: readonly PlannedName[];
}): WorkbookPlan => ({
  names: typed.names,
  sheets: typed.sheets.map(({ name, cells }) => ({
    name,
    columnWidths: [],
    rowHeights: {},
    frozenRows: 0,
    cells: cells.map(({ row, column, content }) => ({
      row,
      column,
      content: typeof content === "string" && content.startsWith("=") ? formula(content) : value(content),
    })),
  })),
});
