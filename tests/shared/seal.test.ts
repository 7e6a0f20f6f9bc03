import fc from "fast-check";
import type { Cell } from "../../shared/cell";
import { sealOf } from "../../shared/seal";

const cell: fc.Arbitrary<Cell> = fc.oneof(
  fc.constant(null),
  fc.string(),
  fc.boolean(),
  fc.double({ noNaN: true, min: -1e300, max: 1e300 }),
);
const block = fc.array(fc.array(cell, { minLength: 3, maxLength: 3 }), { minLength: 1, maxLength: 6 });

describe("a seal", () => {
  it("is a whole number that a spreadsheet stores exactly", () => {
    fc.assert(
      fc.property(block, (cells) => {
        const seal = sealOf(cells);
        expect(Number.isInteger(seal) && seal >= 0 && seal < 1e15).toBe(true);
      }),
    );
  });

  it("stays the same when a cell looks the same: empty text, the 16th digit, line ends", () => {
    expect(sealOf([["", 0.1 + 0.2, -0, "a\r\nb"]])).toBe(sealOf([[null, 0.3, 0, "a\nb"]]));
  });

  it("stays the same after a file that keeps 15 digits", () => {
    const throughFile = (each: Cell): Cell =>
      typeof each === "number" ? Number(each.toPrecision(15)) : each;
    fc.assert(
      fc.property(block, (cells) => {
        expect(sealOf(cells.map((row) => row.map(throughFile)))).toBe(sealOf(cells));
      }),
    );
  });

  it("breaks when a cell changes, moves, or changes type", () => {
    const whole = sealOf([
      ["panels", 94],
      [null, true],
    ]);
    const others: Cell[][][] = [
      [
        ["panels", 95],
        [null, true],
      ],
      [
        ["panels", "94"],
        [null, true],
      ],
      [
        ["panels", 94],
        [true, null],
      ],
      [["panels", 94, null, true]],
      [["panels"], [94], [null], [true]],
      [
        ["Panels", 94],
        [null, true],
      ],
      [
        ["panels", 94],
        [null, 1],
      ],
      [
        ["panels", 94],
        [null, true],
        [null, null],
      ],
    ];
    expect(others.filter((cells) => sealOf(cells) === whole)).toEqual([]);
  });
});
