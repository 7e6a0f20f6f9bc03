import { columnOf, type Area, type CellAddress } from "../../workbook/address";

/** `B4` or `$B$4`. */
export const parseA1 = (text: string): CellAddress | undefined => {
  const match = /^\$?([A-Za-z]{1,3})\$?([1-9][0-9]{0,6})$/.exec(text);
  return match ? { row: Number(match[2]) - 1, column: columnOf(match[1] ?? "") } : undefined;
};

/** `B4:D9`, or one cell. */
export const parseRange = (text: string): Area | undefined => {
  const [first = "", last = first] = text.split(":");
  const from = parseA1(first);
  const to = parseA1(last);
  return from && to ? { from, to } : undefined;
};
