import { CellError } from "../../shared/cell";
import type { Book, BookCell } from "./book/book";

/** A structured clone turns a CellError into a plain object. */
const withError = (cell: BookCell): BookCell =>
  typeof cell.value === "object" && cell.value !== null
    ? { ...cell, value: new CellError(cell.value.code, cell.value.message) }
    : cell;

/** A book received from a worker, with its cell errors as CellError again. */
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
