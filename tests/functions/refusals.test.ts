import { callForSentence } from "../support/call";

describe("input that can't be right is refused with a sentence", () => {
  it.each([
    ["CLIPCOUNT", [20, 0], "#VALUE! spacing must be more than 0 in, got 0"],
    ["COURSES", [-1, 12], "#VALUE! slopeLength must be at least 0 ft, got -1"],
    ["TAPE", [5, 10], "#VALUE! denominator takes one of 1, 2, 4, 8, 16, 32, 64, got 10"],
    ["PITCHANGLE", ["30:12"], '#VALUE! pitch must be at most 24 in 12, got "30:12"'],
    ["ANGLEPITCH", [90], "#VALUE! angle must be at most 63.44 degrees, got 90"],
    ["HIPFACTOR", [6, 0], "#VALUE! otherPitch must be more than 0 in 12 where the pitches differ, got 0"],
    ["BENDANGLE", ["eave break", 6], "#VALUE! otherPitch is missing: an eave break lies between two pitches"],
    [
      "BENDANGLE",
      ["gutter", 6],
      '#VALUE! joint takes one of ridge, hip, valley, eave break, side wall, got "gutter"',
    ],
    ["STARTERCOVER", [4, 24, 6], "#VALUE! setback must be less than the starter of course 4, 6 in, got 6"],
    ["STAGGEROFFSET", [1.5, 24], "#VALUE! course must be a whole number, got 1.5"],
    ["TRIMPIECES", [40, 10, 10], "#VALUE! lap must be less than the stock's 10 in, got 10"],
    ["SQUARES", [100, 10], "#VALUE! waste must be at most 1, got 10"],
    ["PACKS", [10, 0], "#VALUE! perPack must be more than 0, got 0"],
    [
      "OUTLINE",
      ["trapezoid", 40, 15],
      "#VALUE! top is missing: a trapezoid takes the length of its top edge in ft",
    ],
    ["OUTLINE", ["triangle", 40, 15, 3], "#VALUE! top must be left out for a triangle, or be 0 ft, got 3"],
    [
      "OUTLINE",
      ["rectangle", 40, 15, null, 2],
      "#VALUE! lean must be left out for a rectangle, got 2; a parallelogram leans",
    ],
    [
      "OUTLINE",
      ["parallelogram", 40, 15],
      "#VALUE! lean is missing: a parallelogram takes the ft by which its top stands to the right of its eave",
    ],
  ] as const)("%s(%j)", (id, args, sentence) => {
    expect(callForSentence(id, ...args)).toBe(sentence);
  });
});
