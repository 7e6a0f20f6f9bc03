import { highest } from "../../../shared/highest";
import { bookSnapshot } from "../../../src/hosts/local/book/bookSnapshot";
import type { Contents } from "../../../src/workbook/contents";
import { referencesOf } from "../../../src/sheets/trace/references";
import { bookOf } from "../xlsx/bookOf";

/** More than a call may have arguments. */
const ROWS = 200_000;

test.each([
  [[3, 9, 4], -1, 9],
  [[], 5, 5],
  [[2], 7, 7],
])("the highest of %j, and no less than %d, is %d", (numbers, least, most) => {
  expect(highest(numbers, least)).toBe(most);
});

test("a file's sheet with more rows than a call may have arguments is opened as high as it is", () => {
  const book = bookOf({ A1: { value: 1 } });
  const rows = new Map(Array.from({ length: ROWS }, (_, row) => [row, { sizePx: 24 }]));
  const { sheets = {} } = bookSnapshot("long", {
    ...book,
    sheets: book.sheets.map((sheet) => ({ ...sheet, rows })),
  });
  expect(Object.values(sheets)[0]?.rowCount).toBeGreaterThan(ROWS);
});

test("a whole column of as many rows is followed to its end", () => {
  const lines = Array.from({ length: ROWS }, () => []);
  const bid = { cells: lines, formulas: [["", "=SUM(A:A)"]] };
  const contents: Contents = { sheets: new Map([["Bid", bid]]), targets: new Map() };
  expect(referencesOf(contents, "Bid", { row: 0, column: 1 })[0]?.area.to.row).toBe(ROWS - 1);
});
