import Papa from "papaparse";
import { CellError, type Cell, type Matrix } from "../../shared/cell";

/** A spreadsheet that opens the file takes it for UTF-8 by this. */
const BYTE_ORDER_MARK = "\uFEFF";

const shown = (cell: Cell): string | number => {
  if (cell === null) return "";
  if (typeof cell === "boolean") return cell ? "TRUE" : "FALSE";
  return cell instanceof CellError ? cell.code : cell;
};

/** What such a text begins with, however many lines it has; a negative number comes to itself. */
const BEGINS_A_FORMULA = /^(?!-\d+(?:\.\d+)?$)[=+\-@\t\r\n]/;

/**
 * What a sheet shows as a .csv file (RFC 4180). Text that a spreadsheet would take for a formula when it opens the file, such
 * as one that begins with = + - @, a tab or a line end, gets an apostrophe before it; a text that is a negative number stays
 * one.
 */
export const toCsv = (cells: Matrix): string =>
  BYTE_ORDER_MARK +
  Papa.unparse(
    cells.map((row) => row.map(shown)),
    { newline: "\r\n", escapeFormulae: BEGINS_A_FORMULA },
  );
