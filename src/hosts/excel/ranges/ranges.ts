import { splitByRows, type Area } from "../../../workbook/address";

/** The Excel range of an area. */
export const rangeOf = (sheet: Excel.Worksheet, { from, to }: Area): Excel.Range =>
  sheet.getRangeByIndexes(from.row, from.column, to.row - from.row + 1, to.column - from.column + 1);

/** Excel on the web rejects requests over 5 MB, and answers small ones quickly. */
const CELLS_AT_ONCE = 5_000;

/** An area split into slices of whole rows, each small enough for one request. */
export const slicesOf = (area: Area): Area[] => splitByRows(area, CELLS_AT_ONCE);

/** Items in order, in groups small enough for one request. */
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

/** The area of a range whose position and size are loaded. */
export const areaOf = ({ rowIndex, columnIndex, rowCount, columnCount }: Excel.Range): Area => ({
  from: { row: rowIndex, column: columnIndex },
  to: { row: rowIndex + rowCount - 1, column: columnIndex + columnCount - 1 },
});

export const PLACE_AND_SIZE = "rowIndex,columnIndex,rowCount,columnCount";

/** Splits an address such as `Bid!A1:B2,Bid!D4:E5`. A quoted sheet name may contain commas. */
export const splitAddress = (address: string): string[] =>
  address.match(/\$?[A-Z]+\$?\d+:\$?[A-Z]+\$?\d+(?=,|$)/g) ?? [];
