import type { CellAddress } from "../../workbook/address";

/** Whole rows or columns put in before the one at `at`, counted from 0; or taken out from there on, where `count` is below 0. */
export interface LineMove {
  readonly axis: keyof CellAddress;
  readonly at: number;
  readonly count: number;
}

/** What was moved on a sheet: whole rows and columns, one after the other, or also cells that nobody follows. */
export type SheetMoves = readonly LineMove[] | "scattered";

const lineAfter = (index: number, { at, count }: LineMove): number | undefined => {
  if (index < at) return index;
  return index < at - count ? undefined : index + count;
};

/** Where a cell stands after the moves; nowhere where it was taken out. */
export const placeAfter = (place: CellAddress, moves: readonly LineMove[]): CellAddress | undefined =>
  moves.reduce<CellAddress | undefined>((now, move) => {
    const index = now && lineAfter(now[move.axis], move);
    return now && index !== undefined ? { ...now, [move.axis]: index } : undefined;
  }, place);
