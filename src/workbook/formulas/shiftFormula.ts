import { columnLetters, columnOf, LAST_CELL } from "../address";
import { formulaOf, tokensOf } from "./tokens";

/** A sheet's rows and columns in the file format. A reference shifted past the last one wraps around to the first. */
const ROWS = LAST_CELL.row + 1;
const COLUMNS = LAST_CELL.column + 1;

const shifted = (index: number, by: number, count: number): number =>
  (((index + by) % count) + count) % count;

const shiftPart = (part: string, rows: number, columns: number): string =>
  part.replace(
    /(\$?)([A-Za-z]*)(\$?)([0-9]*)/,
    (_, columnDollar: string, letters: string, rowDollar: string, digits: string) => {
      // In whole rows, as in `$3:5`, the first `$` is the row's.
      const isRowFixed = letters === "" ? columnDollar === "$" : rowDollar === "$";
      const column =
        letters === "" || columnDollar === "$"
          ? letters
          : columnLetters(shifted(columnOf(letters), columns, COLUMNS));
      const row = digits === "" || isRowFixed ? digits : String(shifted(Number(digits) - 1, rows, ROWS) + 1);
      return columnDollar + column + rowDollar + row;
    },
  );

/**
 * A formula as it reads in a cell so many rows below and columns to the right of its own: a file stores a shared formula once,
 * in its first cell. References with `$` stay.
 */
export const shiftFormula = (formula: string, rows: number, columns: number): string =>
  formulaOf(
    tokensOf(formula).map((token) =>
      token.kind === "reference"
        ? {
            ...token,
            text: token.text
              .split(":")
              .map((part) => shiftPart(part, rows, columns))
              .join(":"),
          }
        : token,
    ),
  );
