import { a1, a1Range, absoluteA1 } from "../../workbook/address";
import { TRIM_ROWS } from "./trimsSheet";
import type { TakeoffLayout } from "./takeoffLayout";

/** Columns of the takeoff's trim section. */
export const TRIM_COLUMNS = {
  label: 0,
  follows: 1,
  stock: 2,
  lap: 3,
  runs: 4,
  feet: 5,
  stocks: 6,
  clips: 7,
  nails: 8,
  weightEach: 9,
} as const;
export type TrimColumn = keyof typeof TRIM_COLUMNS;

export const trimCell = (row: number, column: TrimColumn): string =>
  a1({ row, column: TRIM_COLUMNS[column] });

export const trimColumn = (layout: TakeoffLayout, column: TrimColumn): string =>
  a1Range(
    { row: layout.trim, column: TRIM_COLUMNS[column] },
    { row: layout.trim + TRIM_ROWS - 1, column: TRIM_COLUMNS[column] },
  );

/** The same as an absolute range, for formulas on another sheet. */
export const absoluteTrimColumn = (layout: TakeoffLayout, column: TrimColumn): string =>
  `${absoluteA1({ row: layout.trim, column: TRIM_COLUMNS[column] })}:${absoluteA1({ row: layout.trim + TRIM_ROWS - 1, column: TRIM_COLUMNS[column] })}`;
