import type { Matrix } from "../../../shared/cell";
import { call, callForNumber, callForSentence } from "../../support/call";

const RECTANGLE: Matrix = [
  [0, 0],
  [40, 0],
  [40, 24],
  [0, 24],
];
const L: Matrix = [
  [0, 0],
  [40, 0],
  [40, 24],
  [20, 24],
  [20, 44],
  [0, 44],
];

/** A court that opens upward, its left wall hooked over toward the right one: 2 ft are left between sides 4 and 8. */
const HOOK: Matrix = [[0, 0], [40, 0], [40, 30], [26, 30], [26, 10], [10, 10], [10, 20], [24, 20], [24, 30], [0, 30]]; // prettier-ignore

describe("what a footprint may look like", () => {
  const hips = callForNumber("EDGEFEET", RECTANGLE, 6, "hip");
  const same: Readonly<Record<string, Matrix>> = {
    "with a heading row": [["x", "y"], ...RECTANGLE],
    "closed": [...RECTANGLE, [0, 0]],
    "walked round the other way": [...RECTANGLE].reverse(),
    "with a blank row under its heading": [["x (ft)", "y (ft)"], ["", ""], ...RECTANGLE],
    "with blank rows around it": [[null, null], ...RECTANGLE, ["", null], [null, null]],
    "in text": [["0", "0"], ["40 ft", "0"], ["40' 0\"", "24-0"], ["0", "288 in"]],
    "moved": RECTANGLE.map(([x, y]) => [(x as number) - 500, (y as number) + 7]),
  }; // prettier-ignore
  it.each(Object.entries(same))("%s", (_, footprint) => {
    expect(callForNumber("EDGEFEET", footprint, "6:12", "hip")).toBeCloseTo(hips, 9);
  });

  it("a courtyard follows after a blank row, its sides numbered on", () => {
    const rings: Matrix = [
      [0, 0], [60, 0], [60, 60], [0, 60], [null, null],
      [20, 20], [40, 20], [40, 40], [20, 40],
    ]; // prettier-ignore
    expect(callForNumber("EDGEFEET", rings, 6, "ridge")).toBeCloseTo(160, 9);
    const sides = (call("ROOFPLANES", rings, 6) as Matrix).slice(1).map((row) => row[1]);
    expect(sides).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
  });

  it("side numbers are the person's, also in a ring walked round the other way", () => {
    const reversed = [...RECTANGLE].reverse();
    // Corners (0, 24), (40, 24), (40, 0), (0, 0): sides 2 and 4 are the short ones.
    const planes = call("ROOFPLANES", reversed, 6, [[2], [4]]) as Matrix;
    expect(planes.slice(1).map((row) => [row[1], row[3]])).toEqual([
      [1, 40],
      [3, 40],
    ]);
  });
});

describe("what stands on the sides", () => {
  it("one pitch, or one a side, a gable's left blank", () => {
    const mixed = call("ROOFPLANES", RECTANGLE, [[4], [null], ["12 in 12"], [null]], "2, 4") as Matrix;
    expect(mixed.slice(1).map((row) => [row[0], row[1], row[2]])).toEqual([
      [1, 1, 4],
      [2, 3, 12],
    ]);
    expect(mixed[1]?.[4]).toBeCloseTo(40 * 18, 9);
  });

  it("a list of one a side may run on with blank cells", () => {
    const list = [[6], [6], [6], [6], [null], [null]];
    expect(call("ROOFPLANES", RECTANGLE, list)).toEqual(call("ROOFPLANES", RECTANGLE, 6));
  });

  it("the rake overhang is the overhang where it is left out", () => {
    expect(callForNumber("EDGEFEET", RECTANGLE, 6, "ridge", [[2], [4]], 1)).toBeCloseTo(42, 9);
    expect(callForNumber("EDGEFEET", RECTANGLE, 6, "ridge", [[2], [4]], 1, 0)).toBeCloseTo(40, 9);
    expect(callForNumber("EDGEFEET", RECTANGLE, 6, "eave", [[2], [4]], [[1], [3], [1], [5]])).toBeCloseTo(
      96,
      9,
    );
  });

  it("counts courses by the panel sheet's exposed height", () => {
    const panel: Matrix = [
      ["exposed width", 24],
      ["exposed height", "12 in"],
    ];
    const planes = call("ROOFPLANES", RECTANGLE, 9, null, null, null, panel) as Matrix;
    expect(planes.slice(1).map((row) => row[8])).toEqual([15, 15, 15, 15]);
  });

  it("names the sides of a plane that has several", () => {
    const split: Matrix = [[0, 0], [15, 0], [40, 0], [40, 24], [0, 24]]; // prettier-ignore
    expect((call("ROOFPLANES", split, 6) as Matrix).map((row) => row[1])).toEqual(["side", "1, 2", 3, 4, 5]);
  });

  it("gives each kind its feet, and 0 where there is none", () => {
    // Hips: three with a run of 12, two with 10, and 2 between the ridges; each by 1.5.
    const kinds = [["eave", "rake", "ridge", "hip", "valley", "pitch break"]];
    const [feet] = call("EDGEFEET", L, 6, kinds) as Matrix;
    expect(feet?.map((value) => Math.round((value as number) * 1000) / 1000)).toEqual([
      168, 0, 36, 87, 15, 0,
    ]);
  });

  it("PLANEOUTLINE's area is the plane's sloped area, for every plane", () => {
    const planes = (call("ROOFPLANES", L, 7, [[5]], 1) as Matrix).slice(1);
    expect(planes).toHaveLength(5);
    for (const [plane, , , , , area] of planes) {
      const outline = call("PLANEOUTLINE", L, 7, plane as number, [[5]], 1) as Matrix;
      expect(callForNumber("OUTLINEAREA", outline)).toBeCloseTo(area as number, 8);
      expect(outline[1]?.[1]).toBe(0);
    }
  });

  it("two gables in line with one overhang are one gable", () => {
    const split: Matrix = [[5, 5], [25, 5], [45, 5], [45, 29], [5, 29]]; // prettier-ignore
    // The planes are those of the long sides' ends: the ridge runs from the gables to the hip end, 20 ft in.
    expect(callForNumber("EDGEFEET", split, 6, "rake", "1, 2, 4", 1)).toBeCloseTo(
      callForNumber(
        "EDGEFEET",
        split.filter((_, corner) => corner !== 1),
        6,
        "rake",
        "1, 3",
        1,
      ),
      9,
    );
  });

  it("sides out of parallel by less than any tape shows make the roof of those that are parallel", () => {
    const footprint = (y: number): Matrix => [[0, 0], [20, 0], [40, 0], [40, 24], [0, y]]; // prettier-ignore
    const planes = (y: number): Matrix =>
      call("ROOFPLANES", footprint(y), [[3], [3], [null], [9], [3]], 3, null, null, null, false) as Matrix;
    const square = planes(24);
    planes(24 + 4e-9).forEach((row, plane) => {
      row.forEach((cell, column) => {
        const parallel = square[plane]?.[column];
        if (typeof cell === "number") expect(cell).toBeCloseTo(parallel as number, 6);
        else expect(cell).toBe(parallel);
      });
    });
    expect(square).toHaveLength(3);
  });

  it("stays quiet on an unfilled row", () => {
    expect(call("ROOFPLANES", null, null)).toBe("");
    expect(call("EDGEFEET", null, null, null)).toBe("");
  });
});

it("a column of 50,000 corners is rejected at once, before its sides are compared", () => {
  const start = performance.now();
  const many = Array.from({ length: 50_000 }, (_, index) => [index % 997, index % 1009]);
  expect(callForSentence("ROOFPLANES", many, 6)).toMatch(/must have at most 60 sides, got 50000/);
  expect(performance.now() - start).toBeLessThan(5000);
});

describe("what is rejected, with a message", () => {
  const cases: readonly (readonly [sentence: string, id: string, args: Parameters<typeof call>[1][]])[] = [
    ["#VALUE! footprint is missing: it takes a range of two columns", "ROOFPLANES", [null, 6]],
    ["#VALUE! footprint takes a range of two columns, x and y of the wall corners in ft, a row a corner; a courtyard's corners follow after a blank row, got 5", "ROOFPLANES", [5, 6]],
    ["#VALUE! footprint needs at least 3 corners in each ring, got 2", "ROOFPLANES", [[[0, 0], [9, 0]], 6]],
    ["#VALUE! footprint needs at least 3 corners, got none", "ROOFPLANES", [[["x", "y"], [null, null]], 6]],
    ["#VALUE! footprint y of corner 2 is missing", "ROOFPLANES", [[[0, 0], [9, null], [9, 9]], 6]],
    ["#VALUE! footprint x of corner 2 takes a length in feet", "ROOFPLANES", [[[0, 0], ["nine", 0], [9, 9]], 6]],
    ["#VALUE! footprint has no length on side 2: its two corners are one place", "ROOFPLANES", [[[0, 0], [9, 0], [9, 0], [9, 9]], 6]],
    ["#VALUE! footprint crosses itself: side 1 meets side 3", "ROOFPLANES", [[[0, 0], [10, 10], [10, 0], [0, 10]], 6]],
    ["#VALUE! footprint has a courtyard (sides 5 to 7) that isn't inside the building", "ROOFPLANES", [[...RECTANGLE, [null, null], [50, 0], [60, 0], [55, 5]], 6]],
    ["#VALUE! footprint crosses itself: side 2 meets side 5", "ROOFPLANES", [[...RECTANGLE, [null, null], [30, 5], [50, 5], [35, 9]], 6]],
    ["#VALUE! footprint must have at most 60 sides, got 61", "ROOFPLANES", [Array.from({ length: 61 }, (_, i) => [100 * Math.cos((i * 2 * Math.PI) / 61), 100 * Math.sin((i * 2 * Math.PI) / 61)]), 6]],
    ["#VALUE! pitch is missing: it takes a pitch such as 6", "ROOFPLANES", [RECTANGLE, null]],
    ["#VALUE! pitch must be at least 0.25 in 12, got 0", "ROOFPLANES", [RECTANGLE, 0]],
    ["#VALUE! pitch must be at most 24 in 12, got 30", "ROOFPLANES", [RECTANGLE, 30]],
    ["#VALUE! pitch takes one value, or one for each of the 4 sides, got 3", "ROOFPLANES", [RECTANGLE, [[6], [6], [6]]]],
    ["#VALUE! pitch takes one value, or one for each of the 4 sides, got 5", "ROOFPLANES", [RECTANGLE, [[6], [6], [6], [6], [6]]]],
    ["#VALUE! pitch takes one value, or one for each of the 4 sides, got 6", "ROOFPLANES", [RECTANGLE, [[6], [6], [6], [6], [null], [6]]]],
    ["#VALUE! pitch takes one value, or one for each of the 4 sides, got 5", "ROOFPLANES", [RECTANGLE, [[6], [6], [6], [6], [6], [null]]]],
    ["#VALUE! pitch takes one value, or one for each of the 4 sides, got 3", "ROOFPLANES", [RECTANGLE, [[6], [6], [null]]]],
    ["#VALUE! overhang takes one value, or one for each of the 4 sides, got 2", "ROOFPLANES", [RECTANGLE, 6, null, [[1], [1]]]],
    ["#VALUE! overhang of side 2 is missing", "ROOFPLANES", [RECTANGLE, 6, "2, 4", [[1], [null], [1], [1]]]],
    ["#VALUE! rakeOverhang takes one value, or one for each of the 4 sides, got 2", "ROOFPLANES", [RECTANGLE, 6, "2, 4", 1, [[1], [1]]]],
    ["#VALUE! pitch of side 2 is missing", "ROOFPLANES", [RECTANGLE, [[6], [null], [6], [6]]]],
    ["#VALUE! gables must be side numbers from 1 to 4, got 5", "ROOFPLANES", [RECTANGLE, 6, 5]],
    ["#VALUE! gables must be a whole number, got 1.5", "ROOFPLANES", [RECTANGLE, 6, 1.5]],
    ["#VALUE! overhang must be at least 0 ft, got -1", "ROOFPLANES", [RECTANGLE, 6, null, -1]],
    ["#VALUE! plane must be a plane of the roof, 1 to 4, got 9", "PLANEOUTLINE", [RECTANGLE, 6, 9]],
    ["#VALUE! edge takes one of eave, rake, ridge, hip, valley, pitch break, eave step, got \"gutter\"", "EDGEFEET", [RECTANGLE, 6, "gutter"]],
    ["#VALUE! ROOFEDGES takes at most 6 values, got 7", "ROOFEDGES", [RECTANGLE, 6, null, null, null, true, 1]],
    ["#N/A every side is a gable, so no side carries a plane", "ROOFPLANES", [RECTANGLE, 6, "1,2,3,4"]],
    ["#N/A side 3 can't be a gable: at the inner corner of sides 3 and 4 its wall would stand up through the roof", "ROOFPLANES", [L, 6, 3]],
    ["#N/A side 4 can't be a gable: at the inner corner of sides 3 and 4 its wall would stand up through the roof", "ROOFPLANES", [L, 6, 4]],
    ["#N/A the plane of side 1 would end in mid-roof, with a wall above or below it", "ROOFPLANES", [[[0, 0], [60, 0], [60, 40], [40, 40], [40, 20], [20, 20], [20, 40], [0, 40]], [[10], [11], [11], [null], [null], [null], [10], [10]], "4, 5, 6", 1]],
    ["#N/A sides 1 and 2 are in one line, so their planes take the same pitch, got 6 and 8 in 12", "ROOFPLANES", [[[0, 0], [20, 0], [40, 0], [40, 24], [0, 24]], [[6], [8], [6], [6], [6]]]],
    ["#N/A sides 1 and 2 are in one line, one a gable and one not: the roof can't close between them", "ROOFPLANES", [[[0, 0], [20, 0], [40, 0], [40, 24], [0, 24]], 6, 2]],
    ["#N/A sides 1 and 2 are gables in line, so they take the same rake overhang", "ROOFPLANES", [[[0, 0], [20, 0], [40, 0], [40, 24], [0, 24]], 6, "1, 2", [[1], [2], [1], [1], [1]]]],
    ["#N/A the overhangs at the two ends of side 5 run into each other", "ROOFPLANES", [[[0, 0], [60, 0], [60, 40], [31, 40], [31, 20], [29, 20], [29, 40], [0, 40]], 6, null, 1.5]],
    ["#N/A the overhangs of sides 3 and 8 run into each other", "ROOFPLANES", [HOOK, 6, null, 1.5]],
  ]; // prettier-ignore

  it("a narrow gap between walls bears the overhangs for which it is wide enough", () => {
    expect((call("ROOFPLANES", HOOK, 6, null, 0.9) as Matrix).length).toBeGreaterThan(1);
  });

  it.each(cases)("%s", (sentence, id, args) => {
    expect(callForSentence(id, ...args)).toContain(sentence);
  });
});
