import fc from "fast-check";
import { LEVELS } from "../../../functions/practice/level";
import { measuringOf, UNITS, type Units } from "../../../functions/practice/measuring";
import { randomOf } from "../../../functions/practice/random";

const MARKS = {
  "feet and inches": { "first hour": 1, "half day": 1 / 4, "full roof": 1 / 16 },
  metric: { "first hour": 50, "half day": 5, "full roof": 1 },
};
/** Inches in one of what the marks count. */
const UNIT_IN: Readonly<Record<Units, number>> = { "feet and inches": 1, metric: 1 / 25.4 };
const FOOT: Readonly<Record<Units, number>> = { "feet and inches": 12, metric: 300 };

const level = fc.constantFrom(...LEVELS);
const units = fc.constantFrom(...UNITS);

describe("how a class measures", () => {
  it("draws lengths on the marks that its level reads, within the requested range", () => {
    fc.assert(
      fc.property(level, units, fc.string(), fc.integer({ min: 1, max: 40 }), (of, by, seed, leastFt) => {
        const measuring = measuringOf(by, of);
        expect(measuring.units).toBe(by);
        const length = measuring.drawLengthIn(randomOf(seed), leastFt, leastFt + 10) / UNIT_IN[by];
        const marks = length / MARKS[by][of];
        expect(marks).toBeCloseTo(Math.round(marks), 9);
        expect(length).toBeGreaterThanOrEqual(leastFt * FOOT[by] - 1e-9);
        expect(length).toBeLessThanOrEqual((leastFt + 10) * FOOT[by] + 1e-9);
      }),
    );
  });

  it("picks one of the usual sizes for its tape", () => {
    fc.assert(
      fc.property(level, units, fc.string(), (of, by, seed) => {
        const picked = measuringOf(by, of).pickIn(randomOf(seed), [20, 24], [500, 600]);
        const usual = by === "metric" ? [500, 600] : [20, 24];
        expect(usual).toContain(Math.round((picked / UNIT_IN[by]) * 1e9) / 1e9);
      }),
    );
  });
});
