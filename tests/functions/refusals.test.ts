import { call, callForSentence } from "../support/call";

describe("impossible input is rejected with a message", () => {
  it.each([
    ["CLIPCOUNT", [20, 0], "#VALUE! spacing must be more than 0 in, got 0"],
    ["COURSES", [-1, 12], "#VALUE! slopeLength must be at least 0 ft, got -1"],
    ["TAPE", [5, 10], "#VALUE! denominator takes one of 1, 2, 4, 8, 16, 32, 64, got 10"],
    ["PITCHANGLE", ["30:12"], '#VALUE! pitch must be at most 24 in 12, got "30:12"'],
    ["ANGLEPITCH", [90], "#VALUE! angle must be at most 63.43 degrees, which is 24 in 12, got 90"],
    ["ANGLEPITCH", ["63.44°"], "#VALUE! angle must be at most 63.43 degrees, which is 24 in 12, got 63.44"],
    ["ANGLEPITCH", [135], "#VALUE! angle must be at most 63.43 degrees, which is 24 in 12, got 135"],
    ["PACKS", [1e9, 0.5], "#VALUE! the count comes to more than 1,000,000,000: check the units"],
    ["PACKS", [1, 1e-320], "#VALUE! the count comes to more than 1,000,000,000: check the units"],
    ["NAILCOUNT", [30000, 1, 1e6], "#VALUE! the count comes to more than 1,000,000,000: check the units"],
    ["CLIPCOUNT", [30000, 0.0001], "#VALUE! the count comes to more than 1,000,000,000: check the units"],
    [
      "STAGGEROFFSET",
      [1, 24, ","],
      "#VALUE! pattern has no steps: it takes fractions of a panel from the eave up, as a range or as text such as 1, 1/2, 3/4, 1/4",
    ],
    ["COURSES", ["-5 ft", 12], '#VALUE! slopeLength must be at least 0 ft, got "-5 ft"'],
    ["COURSES", [NaN, 12], "#VALUE! slopeLength must be a finite number, got NaN"],
    ["HIPFACTOR", [6, 0], "#VALUE! otherPitch must be more than 0 in 12 if the pitches differ, got 0"],
    ["BENDANGLE", ["eave break", 6], "#VALUE! otherPitch is missing: an eave break needs two pitches"],
    [
      "BENDANGLE",
      ["gutter", 6],
      '#VALUE! joint takes one of ridge, hip, valley, eave break, side wall, got "gutter"',
    ],
    ["STARTERCOVER", [4, 24, 6], "#VALUE! setback must be less than the starter of course 4, 6 in, got 6"],
    ["STAGGEROFFSET", [1.5, 24], "#VALUE! course must be a whole number, got 1.5"],
    ["TRIMPIECES", [40, 10, 10], "#VALUE! lap must be less than the stock length, 10 in, got 10"],
    ["SQUARES", [100, 10], "#VALUE! waste must be at most 1, got 10"],
    [
      "UNDERLAYMENT",
      [40, 12, 36, 800, 36, 4, 1],
      "#VALUE! headLap must be less than the roll's width of 36 in, got 36",
    ],
    [
      "UNDERLAYMENT",
      [40, 12, 36, 800, 2, 800, 1],
      "#VALUE! endLap must be less than the roll's length of 800 in, got 800",
    ],
    ["PACKS", [10, 0], "#VALUE! perPack must be more than 0, got 0"],
    [
      "OUTLINE",
      ["trapezoid", 40, 15],
      "#VALUE! top is missing: a trapezoid needs the length of its top edge in ft",
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
      "#VALUE! lean is missing: a parallelogram needs the distance in ft that its top is to the right of its eave",
    ],
  ] as const)("%s(%j)", (id, args, sentence) => {
    expect(callForSentence(id, ...args)).toBe(sentence);
  });
});

describe("a difference that is only floating-point error is accepted", () => {
  it("accepts a top that differs from the eave's length only in its last digits", () => {
    expect(callForSentence("OUTLINE", "rectangle", 0.3, 1, 0.301)).toContain("top must be left out");
    const answer = call("OUTLINE", "rectangle", 0.3, 1, 0.1 + 0.2, undefined, false);
    expect(answer).toEqual(call("OUTLINE", "rectangle", 0.3, 1, undefined, undefined, false));
  });
});
