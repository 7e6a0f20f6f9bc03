/** A cell's place on a sheet, counted from 0. */
export interface Place {
  readonly row: number;
  readonly column: number;
}

/** `A`, `Z`, `AA`: the letters of a column counted from 0. */
export const columnLetters = (column: number): string => {
  const last = String.fromCharCode(65 + (column % 26));
  return column < 26 ? last : columnLetters(Math.floor(column / 26) - 1) + last;
};

/** The column of some letters, counted from 0. */
export const columnOf = (letters: string): number =>
  [...letters.toUpperCase()].reduce((column, letter) => column * 26 + letter.charCodeAt(0) - 64, 0) - 1;

/** `B4`. */
export const a1 = ({ row, column }: Place): string => `${columnLetters(column)}${row + 1}`;

/** `B4:B9`. */
export const a1Range = (from: Place, to: Place): string => `${a1(from)}:${a1(to)}`;

/** `$B$4`, for a name. */
export const absoluteA1 = ({ row, column }: Place): string => `$${columnLetters(column)}$${row + 1}`;

/** A sheet's name as a formula writes it: `'Take-off'!`. */
export const sheetPrefix = (sheet: string): string => `'${sheet.replaceAll("'", "''")}'!`;
