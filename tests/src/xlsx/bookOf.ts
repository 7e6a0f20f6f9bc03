import type { Book, BookCell, BookName, BookSheet } from "../../../src/xlsx/book/book";
import { parseA1 } from "../../../src/xlsx/book/a1References";

/** A sheet with some cells, by address. */
export const sheetOf = (name: string, typed: Readonly<Record<string, BookCell>>): BookSheet => {
  const cells = new Map<number, Map<number, BookCell>>();
  for (const [address, cell] of Object.entries(typed)) {
    const place = parseA1(address);
    if (!place) throw new Error(`${address} is no address`);
    cells.set(place.row, (cells.get(place.row) ?? new Map<number, BookCell>()).set(place.column, cell));
  }
  return {
    name,
    isHidden: false,
    cells,
    rows: new Map(),
    columns: new Map(),
    merges: [],
    frozen: { rows: 0, columns: 0 },
    dropDowns: [],
  };
};

/** A book of one sheet. */
export const bookOf = (
  typed: Readonly<Record<string, BookCell>>,
  { names = [], sheet = "Bid" }: { names?: readonly BookName[]; sheet?: string } = {},
): Book => ({ sheets: [sheetOf(sheet, typed)], names, styles: new Map() });
