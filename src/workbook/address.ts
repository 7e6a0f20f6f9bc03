/** A cell's row and column on a sheet, counted from 0. */
export interface CellAddress {
  readonly row: number;
  readonly column: number;
}

/** A cell's address in a workbook, with the name of its sheet. */
export interface SheetCellAddress extends CellAddress {
  readonly sheet: string;
}

/** The last cell of an Excel sheet, XFD1048576. */
export const LAST_CELL: CellAddress = { row: 1_048_575, column: 16_383 };

/** `A`, `Z`, `AA`: the letters of a column counted from 0. */
export const columnLetters = (column: number): string => {
  const last = String.fromCharCode(65 + (column % 26));
  return column < 26 ? last : columnLetters(Math.floor(column / 26) - 1) + last;
};

/** The column of some letters, counted from 0. */
export const columnOf = (letters: string): number =>
  [...letters.toUpperCase()].reduce((column, letter) => column * 26 + letter.charCodeAt(0) - 64, 0) - 1;

/** `B4`. */
export const a1 = ({ row, column }: CellAddress): string => `${columnLetters(column)}${row + 1}`;

/** `B4:B9`. */
export const a1Range = (from: CellAddress, to: CellAddress): string => `${a1(from)}:${a1(to)}`;

/** `$B$4`, for a defined name. */
export const absoluteA1 = ({ row, column }: CellAddress): string => `$${columnLetters(column)}$${row + 1}`;

/** A sheet's name as a formula refers to it: `'Takeoff'!`. */
export const sheetPrefix = (sheet: string): string => `'${sheet.replaceAll("'", "''")}'!`;

/** A rectangle of cells, both corners included. */
export interface Area {
  readonly from: CellAddress;
  readonly to: CellAddress;
}

/** `B4` for one cell, `B4:D9` for more. */
export const areaAddress = ({ from, to }: Area): string =>
  from.row === to.row && from.column === to.column ? a1(from) : a1Range(from, to);

const readAddress = (address: string): CellAddress => {
  const [, letters = "", digits = ""] = /^\$?([A-Z]+)\$?(\d+)$/.exec(address) ?? [];
  const column = [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
  return { row: Number(digits) - 1, column };
};

/** `Sheet1!B4:D9` or `B4` as an area. Doesn't read whole rows or columns. */
export const readArea = (address: string): Area => {
  const [from = "", to = from] = address.slice(address.lastIndexOf("!") + 1).split(":");
  return { from: readAddress(from), to: readAddress(to) };
};

export const cellCount = ({ from, to }: Area): number =>
  (to.row - from.row + 1) * (to.column - from.column + 1);

export const overlap = (a: Area, b: Area): boolean =>
  a.from.row <= b.to.row &&
  b.from.row <= a.to.row &&
  a.from.column <= b.to.column &&
  b.from.column <= a.to.column;

/** Splits an area into areas of whole rows, each of at most `cellsAtMost` cells but at least one row. */
export const splitByRows = ({ from, to }: Area, cellsAtMost: number): Area[] => {
  const rows = Math.max(1, Math.floor(cellsAtMost / (to.column - from.column + 1)));
  const count = Math.ceil((to.row - from.row + 1) / rows);
  return Array.from({ length: count }, (_, index) => ({
    from: { row: from.row + index * rows, column: from.column },
    to: { row: Math.min(to.row, from.row + (index + 1) * rows - 1), column: to.column },
  }));
};

/** Every address in an area, row by row. */
export const addressesIn = ({ from, to }: Area): CellAddress[] =>
  Array.from({ length: to.row - from.row + 1 }, (_, row) =>
    Array.from({ length: to.column - from.column + 1 }, (_each, column) => ({
      row: from.row + row,
      column: from.column + column,
    })),
  ).flat();
