import fc from "fast-check";
import { readStart, SIDES, writeStart } from "../../shared/layoutStart";

describe("the text of a start", () => {
  it.each([
    ["left", { side: "left", shiftIn: 0, step: 1 }],
    ["  Right ", { side: "right", shiftIn: 0, step: 1 }],
    ["left 3 1/4", { side: "left", shiftIn: 3.25, step: 1 }],
    ["left 3¼ in", { side: "left", shiftIn: 3.25, step: 1 }],
    ["right 1' 2\"", { side: "right", shiftIn: 14, step: 1 }],
    ["right 50.8 mm from step 3", { side: "right", shiftIn: 2, step: 3 }],
    ["left from step 2", { side: "left", shiftIn: 0, step: 2 }],
    ["LEFT 0.5 FROM STEP 4", { side: "left", shiftIn: 0.5, step: 4 }],
  ])("reads %s", (text, start) => {
    expect(readStart(text)).toEqual(start);
  });

  it.each([
    "",
    "up",
    "leftish", // cspell:disable-line
    "left from",
    "left step 2",
    "left 3 4",
    "left 3 from step",
    "left from step two",
    "begin from left",
  ])("doesn't read %j", (text) => {
    expect(readStart(text)).toBeUndefined();
  });

  it("reads back the same after it is written", () => {
    const starts = fc.record({
      side: fc.constantFrom(...SIDES),
      shiftIn: fc.nat(400).map((sixteenths) => sixteenths / 16),
      step: fc.integer({ min: 1, max: 100 }),
    });
    fc.assert(
      fc.property(starts, (start) => {
        expect(readStart(writeStart(start))).toEqual(start);
      }),
    );
  });

  it("leaves out default values", () => {
    expect(writeStart({ side: "left", shiftIn: 0, step: 1 })).toBe("left");
    expect(writeStart({ side: "right", shiftIn: 0.25, step: 2 })).toBe("right 1/4 from step 2");
  });
});
