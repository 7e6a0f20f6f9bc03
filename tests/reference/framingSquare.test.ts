import { callForNumber } from "../support/call";

/**
 * Lengths per foot of common run as framing squares carry them, to a hundredth of an inch.
 * Rise 16 and 13: US Army Engineer School Subcourse EN0069 Ed. A, Lesson 2 (read there: 20.00 and 17.69).
 * The other rows are the same rule, sqrt(144 + r²) and sqrt(288 + r²), worked out by hand: the engraved table
 * itself was only seen as a picture.
 */
const INCHES_PER_FOOT_OF_RUN: readonly (readonly [rise: number, common: number, hip: number])[] = [
  [2, 12.17, 17.09],
  [3, 12.37, 17.23],
  [4, 12.65, 17.44],
  [5, 13.0, 17.69],
  [6, 13.42, 18.0],
  [7, 13.89, 18.36],
  [8, 14.42, 18.76],
  [9, 15.0, 19.21],
  [10, 15.62, 19.7],
  [11, 16.28, 20.22],
  [12, 16.97, 20.78],
  [13, 17.69, 21.38],
  [14, 18.44, 22.0],
  [15, 19.21, 22.65],
  [16, 20.0, 23.32],
  [17, 20.81, 24.02],
  [18, 21.63, 24.74],
];

describe("framing-square rule, 2 to 18 in 12", () => {
  it.each(INCHES_PER_FOOT_OF_RUN)(
    "rise %d: common %d, hip or valley %d in per foot of run",
    (rise, common, hip) => {
      expect(callForNumber("RAFTERFACTOR", rise) * 12).toBeCloseTo(common, 2);
      expect(callForNumber("HIPFACTOR", rise) * 12).toBeCloseTo(hip, 2);
    },
  );
});

/**
 * Slope and hip conversions printed in a trade journal's field guide (Journal of Light Construction), to +-0.001;
 * only the entries of that table that are correctly rounded.
 */
describe("a published conversion table", () => {
  it.each([
    [4, 1.054],
    [5, 1.083],
    [6, 1.118],
    [8, 1.202],
    [9, 1.25],
    [10, 1.302],
    [12, 1.414],
  ])("slope factor of %d in 12 is %d", (rise, factor) => {
    expect(Math.abs(callForNumber("RAFTERFACTOR", rise) - factor)).toBeLessThanOrEqual(0.001);
  });

  it.each([
    [5, 1.474],
    [6, 1.5],
    [8, 1.564],
    [9, 1.6],
    [10, 1.642],
    [12, 1.732],
  ])("hip factor of %d in 12 is %d", (rise, factor) => {
    expect(Math.abs(callForNumber("HIPFACTOR", rise) - factor)).toBeLessThanOrEqual(0.001);
  });
});

/** I. S. Griffith, Carpentry (1916), section 20: the hip's run is 16.97 in per foot of common run. */
it("a flat hip runs 16.97 in per foot of common run", () => {
  expect(callForNumber("HIPFACTOR", 0) * 12).toBeCloseTo(16.97, 2);
});

/**
 * EN0069, figure 2-17: span 20 ft 8 in, rise 13 in a foot. The manual takes 17.69 x 10 1/3 = 182.79 in and reads
 * 15 ft 3 in; unrounded it is 182.81 in.
 */
it("the manual's worked rafter is 15 ft 3 in to the nearest quarter foot", () => {
  const lengthFt = callForNumber("RAFTERLENGTH", `10' 4"`, 13);
  expect(Math.abs(lengthFt * 12 - 182.79)).toBeLessThan(0.03);
  expect(Math.round(lengthFt * 4) / 4).toBe(15.25);
});

/** Degrees, backing and dihedral derived by hand: atan(r/12), asin(sin(pitch) cos 45°), 180° - 2 x backing. */
describe("angles", () => {
  it.each([
    [2, 9.46, 166.649],
    [4, 18.43, 154.158],
    [5, 22.62, 148.438],
    [6, 26.57, 143.13],
    [8, 33.69, 133.813],
    [9, 36.87, 129.792],
    [12, 45.0, 120.0],
    [16, 53.13, 111.1],
  ])("%d in 12 is %d°, and its hip's planes meet at %d°", (rise, degrees, dihedral) => {
    expect(callForNumber("PITCHANGLE", rise)).toBeCloseTo(degrees, 2);
    expect(180 - callForNumber("BENDANGLE", "hip", rise)).toBeCloseTo(dihedral, 2);
  });
});
