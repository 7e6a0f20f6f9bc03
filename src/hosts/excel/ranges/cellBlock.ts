import type { Area, CellAddress } from "../../../workbook/address";

/** A block of cells with something for each, such as its formulas. */
export interface CellBlock<T = unknown> {
  readonly area: Area;
  /** Row by row. */
  readonly rows: readonly (readonly T[])[];
}

export const blockAt = <T>(
  { area: { from }, rows }: CellBlock<T>,
  { row, column }: CellAddress,
): T | undefined => rows[row - from.row]?.[column - from.column];

/** The rows of the part of a block that covers an area inside it. */
export const rowsIn = <T>({ area, rows }: CellBlock<T>, { from, to }: Area): T[][] =>
  rows
    .slice(from.row - area.from.row, to.row - area.from.row + 1)
    .map((line) => line.slice(from.column - area.from.column, to.column - area.from.column + 1));
