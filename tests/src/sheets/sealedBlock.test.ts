import fc from "fast-check";
import { CellError, type Cell } from "../../../shared/cell";
import type { SheetContents } from "../../../src/workbook/contents";
import { onlyWithin, currentSeal } from "../../../src/sheets/sealedBlock";

const SIZE = 5;
/** Rows and columns 1 to 3. */
const AREA = { from: { row: 1, column: 1 }, to: { row: 3, column: 3 } };

const cell = fc.oneof(fc.string({ minLength: 1 }), fc.integer(), fc.constant(null));
const block = fc.array(fc.array(cell, { minLength: SIZE, maxLength: SIZE }), {
  minLength: SIZE,
  maxLength: SIZE,
});
const place = fc.nat(SIZE - 1);

const sheetOf = (cells: readonly (readonly Cell[])[]): SheetContents => ({
  cells,
  formulas: cells.map((line) => line.map(() => "")),
});

const withCell = (
  cells: readonly (readonly Cell[])[],
  row: number,
  column: number,
  value: Cell,
): SheetContents =>
  sheetOf(cells.map((line, y) => line.map((old, x) => (y === row && x === column ? value : old))));

const isIn = (row: number, column: number): boolean => row >= 1 && row <= 3 && column >= 1 && column <= 3;

describe("a sealed block", () => {
  it("has another seal after an edit in it, and the same after one around it", () => {
    fc.assert(
      fc.property(block, place, place, cell, (cells, row, column, typed) => {
        fc.pre(cells[row]?.[column] !== typed);
        const [before, after] = [sheetOf(cells), withCell(cells, row, column, typed)].map((sheet) =>
          currentSeal(sheet, AREA),
        );
        expect(before === after).toBe(!isIn(row, column));
      }),
    );
  });

  it("is all that is left of its sheet where only it is read", () => {
    fc.assert(
      fc.property(block, place, place, (cells, row, column) => {
        const inside = onlyWithin(sheetOf(cells), AREA);
        expect(inside.cells[row]?.[column]).toBe(isIn(row, column) ? cells[row]?.[column] : null);
        expect(currentSeal(inside, AREA)).toBe(currentSeal(sheetOf(cells), AREA));
      }),
    );
  });

  it("has no seal with an error in it", () => {
    const cells = Array.from({ length: SIZE }, () => Array.from({ length: SIZE }, () => 1));
    expect(currentSeal(withCell(cells, 2, 2, new CellError("#N/A", "")), AREA)).toBeUndefined();
    expect(currentSeal(withCell(cells, 4, 4, new CellError("#N/A", "")), AREA)).toBe(
      currentSeal(sheetOf(cells), AREA),
    );
  });
});
