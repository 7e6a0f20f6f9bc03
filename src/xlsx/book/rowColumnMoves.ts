import type { CellAddress } from "../../workbook/address";

/** Whole rows or columns put in before the one at `at`, counted from 0; or taken out from there on, where `count` is below 0. */
export interface RowColumnMove {
  readonly axis: keyof CellAddress;
  readonly at: number;
  readonly count: number;
}

/** What was moved on a sheet: whole rows and columns, one after the other, or also cells that nobody follows. */
export type SheetMoves = readonly RowColumnMove[] | "scattered";

const indexAfter = (index: number, { at, count }: RowColumnMove): number | undefined => {
  if (index < at) return index;
  return index < at - count ? undefined : index + count;
};

/** Where a cell stands after the moves; nowhere where it was taken out. */
export const addressAfter = (place: CellAddress, moves: readonly RowColumnMove[]): CellAddress | undefined =>
  moves.reduce<CellAddress | undefined>((now, move) => {
    const index = now && indexAfter(now[move.axis], move);
    return now && index !== undefined ? { ...now, [move.axis]: index } : undefined;
  }, place);
