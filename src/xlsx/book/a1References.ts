import { a1, columnOf, type CellAddress } from "../../workbook/address";

/** Cells from one corner to the other, both included. */
export interface CellRange {
  readonly from: CellAddress;
  readonly to: CellAddress;
}

/** `B4` or `$B$4`. */
export const parseA1 = (text: string): CellAddress | undefined => {
  const match = /^\$?([A-Za-z]{1,3})\$?([1-9][0-9]{0,6})$/.exec(text);
  return match ? { row: Number(match[2]) - 1, column: columnOf(match[1] ?? "") } : undefined;
};

/** `B4:D9`, or one cell. */
export const parseRange = (text: string): CellRange | undefined => {
  const [first = "", last = first] = text.split(":");
  const from = parseA1(first);
  const to = parseA1(last);
  return from && to ? { from, to } : undefined;
};

export const rangeText = ({ from, to }: CellRange): string =>
  from.row === to.row && from.column === to.column ? a1(from) : `${a1(from)}:${a1(to)}`;
