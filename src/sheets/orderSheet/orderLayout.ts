import { a1 } from "../../workbook/address";

/** Columns of the order. */
export const ORDER = {
  item: 0,
  unit: 1,
  needed: 2,
  waste: 3,
  withWaste: 4,
  perPack: 5,
  toOrder: 6,
  orderUnit: 7,
  weightEach: 8,
  weight: 9,
  price: 10,
  extended: 11,
} as const;
export type OrderColumn = keyof typeof ORDER;

export const ORDER_HEADINGS = [
  "Item",
  "Unit",
  "Needed",
  "Waste",
  "With waste",
  "Per pack",
  "To order",
  "In",
  "Each (lb)",
  "Weight (lb)",
  "Price of a pack",
  "Extended",
];

export const FIRST_ORDER_ROW = 4;

export const orderCell = (row: number, column: OrderColumn): string => a1({ row, column: ORDER[column] });
