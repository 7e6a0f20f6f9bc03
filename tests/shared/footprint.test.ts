import type { Matrix } from "../../shared/cell";
import { footprint } from "../../shared/kinds/footprint";

const BUILDING: Matrix = [
  [0, 0],
  [40, 0],
  [40, 30],
  [0, 30],
];
const BLANK: Matrix = [[null, null]];
const box = (left: number, bottom: number, side: number): Matrix => [
  [left, bottom],
  [left + side, bottom],
  [left + side, bottom + side],
  [left, bottom + side],
];
const wheel = (corners: number): Matrix =>
  Array.from({ length: corners }, (_, corner) => [
    50 * Math.cos((2 * Math.PI * corner) / corners),
    50 * Math.sin((2 * Math.PI * corner) / corners),
  ]);
const ringsOf = (cells: Matrix): number[] => footprint.read(cells, "footprint").map((ring) => ring.length);

describe("a footprint", () => {
  it("has at least 3 sides and at most 60", () => {
    expect(ringsOf(wheel(3))).toEqual([3]);
    expect(ringsOf(wheel(60))).toEqual([60]);
    expect(() => ringsOf(wheel(61))).toThrow("footprint must have at most 60 sides, got 61");
    expect(() => ringsOf(BLANK)).toThrow("footprint needs at least 3 corners, got none");
  });

  it("accepts a heading row, blank rows above it, and a closing corner", () => {
    expect(ringsOf([...BLANK, ["x", "y"], ...BUILDING, [0, 0]])).toEqual([4]);
  });

  it("accepts several courtyards next to each other", () => {
    expect(ringsOf([...BUILDING, ...BLANK, ...box(5, 5, 5), ...BLANK, ...box(15, 5, 5)])).toEqual([4, 4, 4]);
  });

  it.each<[string, Matrix]>([
    [
      "footprint encloses no area: its corners are in one line",
      [
        [0, 0],
        [5, 0],
        [10, 0],
      ],
    ],
    ["footprint needs at least 3 corners in each ring, got 1", [[0, 0]]],
    ["footprint has no length on side 1: its two corners are one place", [[0, 0], ...BUILDING]],
    [
      "footprint has no length on side 2: its two corners are one place",
      [[-5, 5], ...box(0, 0, 0).slice(2), ...BUILDING.slice(1)],
    ],
    ["footprint x of corner 1 is missing", [[null, 5], ["x", "y"], ...BUILDING]],
    [
      "footprint crosses itself: side 1 meets side 3",
      [
        [0, 0],
        [10, 10],
        [10, 0],
        [0, 10],
      ],
    ],
    ["footprint crosses itself: side 2 meets side 5", [...BUILDING, ...BLANK, ...box(35, 5, 10)]],
    [
      "footprint crosses itself: side 2 meets side 6",
      [...BUILDING, ...BLANK, [35, 5], [38, 5], [50, 20], [35, 10]],
    ],
    [
      "footprint has a courtyard (sides 5 to 8) that isn't inside the building",
      [...BUILDING, ...BLANK, ...box(50, 5, 5)],
    ],
    [
      "footprint has a courtyard (sides 9 to 12) that isn't inside the building",
      [...BUILDING, ...BLANK, ...box(5, 5, 20), ...BLANK, ...box(10, 10, 5)],
    ],
  ])("%s", (sentence, cells) => {
    expect(() => ringsOf(cells)).toThrow(sentence);
  });
});
