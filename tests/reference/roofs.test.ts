import type { Matrix } from "../../shared/cell";
import { call, callForNumber } from "../support/call";

const rectangle = (length: number, width: number): Matrix => [
  [0, 0],
  [length, 0],
  [length, width],
  [0, width],
];

const column = (table: unknown, index: number): number[] =>
  (table as Matrix).slice(1).map((row) => row[index] as number);
const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

/**
 * US Army Engineer School Subcourse EN0069 Ed. A, self-test: a gable roof 60 ft long, rafter line 11 ft 4 in, overhang
 * 2 ft along the slope. The question was read there; its answer, 1600 sq ft and 16 squares, is worked out:
 * 60 x 13 1/3 x 2.
 */
it.each([4, 6, 12])(
  "EN0069: 60 ft of gable roof with 13 ft 4 in rafters takes 16 squares, at %d in 12",
  (rise) => {
    const factor = Math.hypot(1, rise / 12);
    const [spanFt, overhangFt] = [(2 * (11 + 4 / 12)) / factor, 2 / factor];
    const planes = call("ROOFPLANES", rectangle(60, spanFt), rise, [[2], [4]], overhangFt, 0);
    expect(sum(column(planes, 6))).toBeCloseTo(16, 9);
    expect(column(planes, 7)).toEqual([expect.closeTo(13 + 4 / 12, 9), expect.closeTo(13 + 4 / 12, 9)]);
  },
);

/** "Estimating in Building Construction", chapter 14: a hip roof has the area of the gable roof of its span, pitch and length. */
it.each([
  [40, 24, 6],
  [60, 33.5, 9],
  [30, 30, 4],
])(
  "textbook: %d x %d at %d in 12 is ridge (the building's length) x rafter x 2, hip or gable",
  (length, width, rise) => {
    const rafterFt = callForNumber("RAFTERLENGTH", width / 2, rise);
    const hip = sum(column(call("ROOFPLANES", rectangle(length, width), rise), 5));
    const gable = sum(column(call("ROOFPLANES", rectangle(length, width), rise, [[2], [4]]), 5));
    expect(hip).toBeCloseTo(length * rafterFt * 2, 8);
    expect(gable).toBeCloseTo(length * rafterFt * 2, 8);
  },
);

/** Journal of Light Construction field guide, hip and valley factors to 0.001 (its correctly rounded rows). */
it.each([
  [5, 1.474],
  [6, 1.5],
  [8, 1.564],
  [9, 1.6],
  [10, 1.642],
  [12, 1.732],
])("field guide: at %d in 12 a hip is %d x the common run", (rise, factor) => {
  const hipsFt = callForNumber("EDGEFEET", rectangle(40, 24), rise, "hip");
  expect(Math.abs(hipsFt / 4 / 12 - factor)).toBeLessThanOrEqual(0.001);
});

/** I. S. Griffith, Carpentry (1916), section 20: a hip or valley runs 16.97 in on plan per foot of common run. */
it("Griffith: a valley runs 16.97 in per foot of common run", () => {
  const L: Matrix = [
    [0, 0],
    [40, 0],
    [40, 24],
    [20, 24],
    [20, 44],
    [0, 44],
  ];
  const valley = (call("ROOFEDGES", L, 6) as Matrix).find((row) => row[1] === "valley");
  expect((((valley?.[4] as number) / 10) * 12).toFixed(2)).toBe("16.97");
});

/** Framing-square backing: the dihedral of an equal-pitch hip, 180° less the bend. */
it.each([
  [4, 154.158],
  [6, 143.13],
  [8, 133.813],
  [9, 129.792],
  [12, 120],
])("hip backing: at %d in 12 two planes meet at %d degrees", (rise, dihedral) => {
  const hips = (call("ROOFEDGES", rectangle(40, 24), rise) as Matrix).filter((row) => row[1] === "hip");
  expect(hips).toHaveLength(4);
  for (const hip of hips) expect(180 - (hip[7] as number)).toBeCloseTo(dihedral, 3);
});
