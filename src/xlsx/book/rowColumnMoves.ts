import type { CellAddress } from "../../workbook/address";

/** Whole rows or columns inserted before index `at`, counted from 0. A negative `count` deletes rows or columns from there on. */
export interface RowColumnMove {
  readonly axis: keyof CellAddress;
  readonly at: number;
  readonly count: number;
}

/** The moves on a sheet, in order: whole rows and columns only, or "scattered" where blocks of cells moved too. */
export type SheetMoves = readonly RowColumnMove[] | "scattered";

const indexAfter = (index: number, { at, count }: RowColumnMove): number | undefined => {
  if (index < at) return index;
  return index < at - count ? undefined : index + count;
};

/** The address of a cell after the moves; undefined where it was deleted. */
export const addressAfter = (place: CellAddress, moves: readonly RowColumnMove[]): CellAddress | undefined =>
  moves.reduce<CellAddress | undefined>((now, move) => {
    const index = now && indexAfter(now[move.axis], move);
    return now && index !== undefined ? { ...now, [move.axis]: index } : undefined;
  }, place);
