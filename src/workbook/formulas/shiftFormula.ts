import { columnLetters, columnOf, LAST_CELL } from "../address";
import { formulaOf, tokensOf } from "./tokens";

/** One past the last row and column of a sheet in the format; references that leave the sheet come in again at its other side. */
const ROWS = LAST_CELL.row + 1;
const COLUMNS = LAST_CELL.column + 1;

const shifted = (index: number, by: number, count: number): number =>
  (((index + by) % count) + count) % count;

const shiftPart = (part: string, rows: number, columns: number): string =>
  part.replace(
    /(\$?)([A-Za-z]*)(\$?)([0-9]*)/,
    (_, columnSign: string, letters: string, rowSign: string, digits: string) => {
      // A row alone, as in `$3:5`, has its sign where a column's would be.
      const isRowFixed = letters === "" ? columnSign === "$" : rowSign === "$";
      const column =
        letters === "" || columnSign === "$"
          ? letters
          : columnLetters(shifted(columnOf(letters), columns, COLUMNS));
      const row = digits === "" || isRowFixed ? digits : String(shifted(Number(digits) - 1, rows, ROWS) + 1);
      return columnSign + column + rowSign + row;
    },
  );

/** A formula as it reads in a cell so many rows below and columns to the right: that is how a file shares one formula. */
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
