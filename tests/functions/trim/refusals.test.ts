import { call, callForSentence } from "../../support/call";

describe("trim, metal and deck functions reject impossible input with a message", () => {
  it.each([
    [
      "TRIMCUTS",
      [[[40], [12.5]], 120],
      `#N/A run 1, 40' 0", is longer than every stock length: enter a lap, 0 for butt joints`,
    ],
    [
      "TRIMSTOCK",
      [[[5]], 120, 120],
      "#VALUE! lap must be less than the shortest stock length, 120 in, got 120",
    ],
    [
      "TRIMSTOCK",
      [[[5]], [[120], [96]], 100],
      "#VALUE! lap must be less than the shortest stock length, 96 in, got 100",
    ],
    [
      "TRIMSTOCK",
      [[[5]], [[120], [96]], 96],
      "#VALUE! lap must be less than the shortest stock length, 96 in, got 96",
    ],
    [
      "TRIMSTOCK",
      [[[5]], [[120], [96]], 0, 0, 0, null, [[1]]],
      "#VALUE! limits must have one cell for each cell of stock (2), got 1",
    ],
    ["TRIMSTOCK", [[[5]], 120, -1], "#VALUE! lap must be at least 0 in, got -1"],
    ["TRIMSTOCK", [[[5]], 120, 0, -0.1], "#VALUE! kerf must be at least 0 in, got -0.1"],
    ["TRIMSTOCK", [[[5]], 0], "#VALUE! stock must be more than 0 in, got 0"],
    ["TRIMSTOCK", [[[5], [-2]], 120], "#VALUE! lengths must be at least 0 ft, got -2"],
    [
      "TRIMSTOCK",
      [[[50]], 120, 0, 0, 61],
      "#VALUE! shortest must be at most half the longest stock length, 120 in, got 61",
    ],
    [
      "TRIMSTOCK",
      [[[5]], [[120], [96]], 0, 0, 0, [[10]]],
      "#VALUE! prices must have one cell for each cell of stock (2), got 1",
    ],
    [
      "TRIMSTOCK",
      [[[5]], [[120], [96]], 0, 0, 0, [[10], [null]]],
      "#VALUE! prices has no price for the 96 in stock",
    ],
    ["TRIMSTOCK", [[[5]], 120, 0, 0, 0, [[0]]], "#VALUE! prices must be more than 0, got 0"],
    ["TRIMSTOCK", [[[5]], 120, 0, 0, 0, null, 1.5], "#VALUE! limits must be a whole number, got 1.5"],
    ["TRIMSTOCK", [[[5]], 120, 0, 0, 0, null, 0], "#N/A limits leave no stock to cut from"],
    [
      "TRIMSTOCK",
      [[[9], [9]], 120, 0, 0, 0, null, 1],
      "#N/A no plan found: limits leave too little stock for these runs",
    ],
    [
      "TRIMSTOCK",
      [[[12], [12]], [[144], [96]], null, 0, 0, null, [[1], [null]]],
      "#N/A no plan found: limits leave too little stock for these runs",
    ],
    [
      "TRIMSTOCK",
      [[[5], [25]], 120, 0, 0, 0, null, 1],
      "#N/A no plan found: limits leave too little stock for these runs",
    ],
    ["TRIMSTOCK", [[[30000]], 12, 0], "#VALUE! lengths need 30000 pieces: one plan has at most 5000"],
    ["NAILPOUNDS", [100, 0], "#VALUE! perPound must be more than 0 nails, got 0"],
    [
      "THERMALMOVE",
      [10, 100, "tin"],
      '#VALUE! metal takes one of aluminum, aluminium, galvanized steel, galvanised steel, stainless steel, stainless, copper, zinc, got "tin"',
    ],
    ["THERMALMOVE", [10, 900, "zinc"], "#VALUE! temperatureChange must be at most 500 °F, got 900"],
    ["SHEETWEIGHT", ["copper", 26], "#VALUE! thickness must be at most 0.5 in, got 26"],
    ["CHIMNEYTRIM", [0, 2, 6], "#VALUE! width must be more than 0 ft, got 0"],
    [
      "UNDERLAYMENT",
      [40, 16, 36, 800, 36, 4, 1],
      "#VALUE! headLap must be less than the roll's width of 36 in, got 36",
    ],
    [
      "UNDERLAYMENT",
      [40, 16, 36, 800, 2, 900, 1],
      "#VALUE! endLap must be less than the roll's length of 800 in, got 900",
    ],
    ["ICEBARRIER", [4, -1, 0, 36, 2], "#VALUE! overhang must be at least 0 in, got -1"],
    ["ICEBARRIER", [4, 12, 0, 36, 40], "#VALUE! headLap must be less than the roll's width of 36 in, got 40"],
    ["VENTAREA", [-1], "#VALUE! ceilingArea must be at least 0 sq ft, got -1"],
    ["CLIPCOUNT", [20, -12], "#VALUE! spacing must be more than 0 in, got -12"],
  ] as const)("%s(%j)", (id, args, sentence) => {
    expect(callForSentence(id, ...args)).toBe(sentence);
  });
});

describe("empty input gives no error", () => {
  it("needs no stock for runs of length 0, and skips blank cells but keeps the numbering of the runs", () => {
    expect(call("TRIMSTOCK", [[0], [null]], 120)).toBe(0);
    expect(call("TRIMSTOCK", [[null], [null]], null)).toBe("");
    expect(call("TRIMCUTS", [[null], [5]], 120, null, null, null, null, null, false)).toEqual([
      [1, 120, `5' 0" run 2`, 60],
      ["total", 120, "proved fewest", 60],
    ]);
  });

  it("skips blank cells in the stock range", () => {
    expect(call("TRIMSTOCK", [[5]], [[null], [120]])).toBe(1);
  });

  it("accepts a shortest piece of up to half the longest stock", () => {
    expect(call("TRIMSTOCK", [[5]], [[96], [120]], 0, 0, 60)).toBe(1);
  });

  it("needs no rolls for a face of length 0", () => {
    expect(call("UNDERLAYMENT", 0, 16, 36, 800, 2, 4, 1)).toBe(0);
    expect(call("UNDERLAYMENT", 40, 0, 36, 800, 2, 4, 1)).toBe(0);
  });
});
