import { ORDER_HEADINGS } from "../../src/sheets/orderSheet/orderLayout";
import {
  formula,
  number,
  text,
  type CellContent,
  type PlannedCell,
  type WorkbookPlan,
} from "../../src/workbook/plan";

export type Line = readonly [item: string, toOrder: number | string | null, price: number | null];

const contentOf = (value: string | number | null): CellContent | null => {
  if (value === null) return null;
  if (typeof value === "number") return number(value);
  return value.startsWith("=") ? formula(value) : text(value);
};

/** What a line has in the order's columns, from the first on. */
export const cellsOf = ([item, toOrder, price]: Line): (string | number | null)[] => [
  item,
  "pieces",
  toOrder,
  0,
  toOrder,
  1,
  toOrder,
  "pieces",
  null,
  null,
  price,
];

/** An order of somebody's own making: the headings, and lines that are typed. */
export const smallOrder = (lines: readonly Line[], sheet = "Order"): WorkbookPlan => ({
  sheets: [
    {
      name: sheet,
      columnWidths: [],
      rowHeights: {},
      frozenRows: 0,
      cells: [
        { row: 0, column: 0, content: text("Order: shed") },
        ...ORDER_HEADINGS.map((heading, column): PlannedCell => ({
          row: 1,
          column,
          content: text(heading),
        })),
        ...lines.flatMap((line, index) =>
          cellsOf(line).map((value, column): PlannedCell => ({
            row: 2 + index,
            column,
            content: contentOf(value),
          })),
        ),
      ],
    },
  ],
  names: [],
});
