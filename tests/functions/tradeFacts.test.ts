import type { Matrix } from "../../shared/cell";
import { call, callForNumber } from "../support/call";

/** Common practice, no published source: a 24 x 12 in exposure laid full, half, three-quarter, quarter. */
describe("facts of the trade", () => {
  it("starters cover 22 1/2, 10 1/2, 16 1/2, 4 1/2 in at a setback of 1 1/2 in", () => {
    expect([1, 2, 3, 4].map((course) => callForNumber("STARTERCOVER", course, 24, `1 1/2"`))).toEqual([
      22.5, 10.5, 16.5, 4.5,
    ]);
  });

  it("with a fold of 2 1/2 in the full blank is 25 in and the three-quarter blank 19 in", () => {
    expect(callForNumber("STARTERBLANK", 1, 24, 1.5, 2.5)).toBe(25);
    expect(callForNumber("STARTERBLANK", 3, 24, 1.5, 2.5)).toBe(19);
  });

  it("a 20 ft gable at 12 in exposure takes 20 courses, five sets of starters", () => {
    expect(callForNumber("COURSES", 20, 12)).toBe(20);
    expect(callForNumber("STARTERSETS", 20, 12)).toBe(5);
    const list = call("STARTERLIST", 20, 12, 24, 1.5, 2.5, undefined, false) as Matrix;
    expect(list.map((row) => row[5])).toEqual([5, 5, 5, 5]);
  });

  it("a starter list has only the steps that occur", () => {
    expect(call("STARTERLIST", 1, 12, 24, 7, 2.5, undefined, false)).toEqual([[1, 1, 17, 2.5, 19.5, 1]]);
    expect(call("STARTERLIST", 0, 12, 24, 7, 2.5, undefined, false)).toEqual([
      ["no starters", "", "", "", "", ""],
    ]);
    expect(call("STARTERLIST", 4, 12, 24, 7, 2.5)).toMatchObject({
      message: "setback must be less than the starter of course 4, 6 in, got 7",
    });
  });

  it("clips and starter nails are 12 in on center", () => {
    expect(callForNumber("CLIPCOUNT", 20, 12)).toBe(21);
    expect(callForNumber("NAILCOUNT", 20, 12)).toBe(21);
  });

  it("interlocking shingles start at 3 in 12", () => {
    expect(call("SLOPECHECK", "2 1/2 in 12", 3)).toBe("below the minimum of 3 in 12");
    expect(call("SLOPECHECK", "3:12", 3)).toBe("at or above the minimum of 3 in 12");
  });
});
