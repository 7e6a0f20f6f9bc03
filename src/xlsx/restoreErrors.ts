import { CellError } from "../../shared/cell";
import type { Book, BookCell } from "./book/book";

/** A message carries an error as bare data. */
const withError = (cell: BookCell): BookCell =>
  typeof cell.value === "object" && cell.value !== null
    ? { ...cell, value: new CellError(cell.value.code, cell.value.message) }
    : cell;

/** A book as it was before it went through a message. */
export const restoreErrors = (book: Book): Book => ({
  ...book,
  sheets: book.sheets.map((sheet) => ({
    ...sheet,
    cells: new Map(
      [...sheet.cells].map(([row, cells]) => [
        row,
        new Map([...cells].map(([column, cell]) => [column, withError(cell)])),
      ]),
    ),
  })),
});
