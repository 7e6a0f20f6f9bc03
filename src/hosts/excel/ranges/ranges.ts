import { splitByRows, type Area } from "../../../workbook/address";

/** Excel's own range for a block. */
export const rangeOf = (sheet: Excel.Worksheet, { from, to }: Area): Excel.Range =>
  sheet.getRangeByIndexes(from.row, from.column, to.row - from.row + 1, to.column - from.column + 1);

/** Excel on the web refuses requests of more than 5 MB, and one that is small is soon answered. */
const CELLS_AT_ONCE = 5_000;

/** A block cut across into blocks that Excel takes at once. */
export const slicesOf = (area: Area): Area[] => splitByRows(area, CELLS_AT_ONCE);

/** Things in their order, in groups of no more cells than Excel takes at once. */
export const grouped = <T>(things: readonly T[], cellsOf: (thing: T) => number): T[][] => {
  const groups: T[][] = [];
  let room = 0;
  for (const thing of things) {
    const cells = cellsOf(thing);
    if (cells > room) {
      groups.push([]);
      room = CELLS_AT_ONCE;
    }
    groups.at(-1)?.push(thing);
    room -= cells;
  }
  return groups;
};

/** The block of a range whose place and size are loaded. */
export const areaOf = ({ rowIndex, columnIndex, rowCount, columnCount }: Excel.Range): Area => ({
  from: { row: rowIndex, column: columnIndex },
  to: { row: rowIndex + rowCount - 1, column: columnIndex + columnCount - 1 },
});

export const PLACE_AND_SIZE = "rowIndex,columnIndex,rowCount,columnCount";

/** Blocks such as `Bid!A1:B2,Bid!D4:E5`; the sheet's name may hold commas in its quotes. */
export const splitAddress = (address: string): string[] =>
  address.match(/\$?[A-Z]+\$?\d+:\$?[A-Z]+\$?\d+(?=,|$)/g) ?? [];
