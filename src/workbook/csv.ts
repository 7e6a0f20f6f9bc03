import Papa from "papaparse";
import { CellError, type Cell, type Matrix } from "../../shared/cell";

/** Tells a spreadsheet that the file is UTF-8. */
const BYTE_ORDER_MARK = "\uFEFF";

const shown = (cell: Cell): string | number => {
  if (cell === null) return "";
  if (typeof cell === "boolean") return cell ? "TRUE" : "FALSE";
  return cell instanceof CellError ? cell.code : cell;
};

/** Matches text that begins like a formula, on one line or several; a negative number is safe. */
const BEGINS_A_FORMULA = /^(?!-\d+(?:\.\d+)?$)[=+\-@\t\r\n]/;

/**
 * A sheet's values as a .csv file (RFC 4180). Text that a spreadsheet would run as a formula when it opens the file (text that
 * begins with = + - @, a tab or a line end) gets an apostrophe in front. Text that is a negative number stays as it is.
 */
export const toCsv = (cells: Matrix): string =>
  BYTE_ORDER_MARK +
  Papa.unparse(
    cells.map((row) => row.map(shown)),
    { newline: "\r\n", escapeFormulae: BEGINS_A_FORMULA },
  );
