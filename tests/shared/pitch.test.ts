import fc from "fast-check";
import { pitch } from "../../shared/kinds/pitch";

const read = (cell: number | string | boolean): number => pitch().read(cell, "pitch");
const DAY_ZERO = Date.UTC(1899, 11, 30);
const serialOf = (year: number, month: number, day: number): number =>
  (Date.UTC(year, month - 1, day) - DAY_ZERO) / 86_400_000;

describe("pitch", () => {
  it.each([
    [6, 6],
    ["6", 6],
    ["6:12", 6],
    ["6/12", 6],
    ["6 in 12", 6],
    ["6 on 12", 6],
    ["6 1/2 in 12", 6.5],
    ["6 1/2", 6.5],
    ["50%", 6],
    ["45°", 12],
    ["45 deg", 12],
    ["26.57 deg", 12 * Math.tan((26.57 * Math.PI) / 180)],
    ["0.25 in 12", 0.25],
    [1.05, 1.05],
    [1, 1],
    [1e-12, 1e-12],
    [0, 0],
  ])("reads %j as a rise of %d", (cell, rise) => {
    expect(read(cell)).toBeCloseTo(rise, 12);
  });

  it("recovers the pitch when a spreadsheet turns h:12 into a time", () => {
    for (let rise = 0; rise <= 24; rise++) expect(read((rise * 60 + 12) / 1440)).toBe(rise);
  });

  it("recovers the pitch when a spreadsheet turns m/12 into a date, in either order of day and month", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1991, max: 2098 }), fc.integer({ min: 1, max: 12 }), (year, rise) => {
        expect(read(serialOf(year, rise, 12))).toBe(rise);
        if (rise !== 12) expect(read(serialOf(year, 12, rise))).toBe(rise);
      }),
    );
    expect(read(serialOf(2026, 12, 18))).toBe(18);
    expect(read(serialOf(2026, 12, 24))).toBe(24);
  });

  it.each([
    [serialOf(2026, 6, 13), "the date 13 Jun, which is no pitch on 12"],
    [serialOf(2026, 6, 12) + 0.5, "the date 12 Jun, which is no pitch on 12"],
    [serialOf(2026, 12, 25), "the date 25 Dec, which is no pitch on 12"],
    [0.5, "0.5, which may be 50%, or the time 12:00, or 6/12 worked out"],
    [0.45, "0.45, which may be 45%, or the time 10:48"],
    [1 / 7, "0.1429, which may be 14.29%"],
    [1 / 1440, "0.0007, which may be 0.07%, or the time 0:01"],
    [390 / 1440, "0.2708, which may be 27.08%, or the time 6:30"],
    [1 / 3, "0.3333, which may be 33.33%, or the time 8:00, or 4/12 worked out"],
    [5 / 12, "0.4167, which may be 41.67%, or the time 10:00, or 5/12 worked out"],
  ])("tells how to type the pitch that %d was meant to be", (cell, what) => {
    expect(() => read(cell)).toThrow(`pitch got ${what}: type the rise alone, as 6, or the pitch as 6 in 12`);
  });

  it("shows the rise of an out-of-range date or time, not its serial number", () => {
    expect(() => pitch({ atMost: 10 }).read(serialOf(2026, 12, 18), "pitch")).toThrow(
      "pitch must be at most 10 in 12, got 18",
    );
  });

  it.each([
    [-1, "pitch must be at least 0 in 12, got -1"],
    [25, "pitch must be at most 24 in 12, got 25"],
    ["-10°", 'pitch must be at least 0 in 12, got "-10°"'],
    ["-6:12", 'pitch must be at least 0 in 12, got "-6:12"'],
    ["-50%", 'pitch must be at least 0 in 12, got "-50%"'],
    ["80°", 'pitch must be at most 24 in 12, got "80°"'],
    [NaN, "pitch must be a finite number, got NaN"],
  ])("rejects %j as out of range", (cell, sentence) => {
    expect(() => read(cell)).toThrow(sentence);
  });

  it.each([
    "1/4",
    "-1/4",
    "--6",
    "6:10",
    "90°",
    "steep",
    true,
    "6//12",
    "6:120",
    "about 6°",
    "6°5",
    "about 50%",
    "50%5",
    "1/2%",
    "11/16",
    "1/16",
  ])("rejects %j, which isn't a pitch on 12", (cell) => {
    expect(() => read(cell)).toThrow(/^pitch takes a pitch such as 6 \(rise on 12\)/);
  });

  it("accepts 50% as text only: a cell that shows 50% holds a number, which is rejected", () => {
    expect(pitch().takes).toContain("or 50% as a text");
    expect(read("50%")).toBe(6);
    expect(() => read(0.5)).toThrow();
  });
});
