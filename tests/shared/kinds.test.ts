import { choice, numberChoice } from "../../shared/kinds/choice";
import { flag } from "../../shared/kinds/flag";
import { lengthInFeet, lengthInInches } from "../../shared/kinds/length";
import { count, degrees, fraction, money, quantity } from "../../shared/kinds/number";
import { outline } from "../../shared/kinds/outline";
import { panelBlock } from "../../shared/kinds/panelBlock";
import { staggerPattern } from "../../shared/kinds/staggerPattern";
import type { Matrix } from "../../shared/cell";
import { PANEL_FIELDS } from "../../shared/panel";

describe("length", () => {
  it("takes a bare number in its own unit and text in the unit it names", () => {
    expect(lengthInFeet().read(18.5, "eave")).toBe(18.5);
    expect(lengthInFeet().read("18.5", "eave")).toBe(18.5);
    expect(lengthInFeet().read("18.5 in", "eave")).toBeCloseTo(18.5 / 12, 12);
    expect(lengthInInches().read("1 ft", "lap")).toBe(12);
    expect(lengthInInches().read("25.4 mm", "lap")).toBe(1);
  });

  it("knows a date that was meant to be feet and inches", () => {
    expect(() => lengthInFeet().read(46362, "eave")).toThrow(
      `eave got 46362, which is the date 6 Dec; type feet and inches as 12' 6", or as '12-6 with an apostrophe before it`,
    );
  });

  it.each([
    [-1, "spacing must be more than 0 in, got -1"],
    [0, "spacing must be more than 0 in, got 0"],
    [Infinity, "spacing must be a finite number, got Infinity"],
    [true, "spacing takes a length in in"],
    ["wide", 'got "wide"'],
  ])("refuses %j with a sentence", (cell, sentence) => {
    expect(() => lengthInInches({ moreThan: 0 }).read(cell, "spacing")).toThrow(sentence);
  });
});

describe("numbers", () => {
  it("reads fractions as decimals, percentages and common fractions", () => {
    expect(fraction().read(0.1, "waste")).toBe(0.1);
    expect(fraction().read("10%", "waste")).toBe(0.1);
    expect(fraction().read("1/8", "waste")).toBe(0.125);
    expect(() => fraction().read(10, "waste")).toThrow("waste must be at most 1, got 10");
  });

  it("reads whole numbers and refuses parts", () => {
    expect(count().read("7", "course")).toBe(7);
    expect(() => count().read(2.5, "course")).toThrow("course must be a whole number, got 2.5");
    expect(() => count().read(0, "course")).toThrow("course must be at least 1, got 0");
  });

  it("reads money with its sign and commas", () => {
    expect(money().read("$1,234.50", "price")).toBe(1234.5);
    expect(money().read("12.5", "price")).toBe(12.5);
    expect(() => money().read("1,23", "price")).toThrow(
      'price takes an amount of money such as 12.50, got "1,23"',
    );
  });

  it("reads degrees with or without the sign", () => {
    expect(degrees({ atLeast: 0 }).read("30°", "angle")).toBe(30);
    expect(degrees({ atLeast: 0 }).read(30, "angle")).toBe(30);
  });

  it("names the unit that a quantity must have", () => {
    expect(() => quantity("sq ft").read("much", "area")).toThrow('area takes a number of sq ft, got "much"');
  });
});

describe("words and flags", () => {
  it("takes a choice in any letter case", () => {
    expect(choice(["hip", "eave break"]).read(" Eave  Break ", "joint")).toBe("eave break");
    expect(() => choice(["hip", "valley"]).read("hips", "joint")).toThrow(
      'joint takes one of hip, valley, got "hips"',
    );
    expect(numberChoice([0, 1, 2]).read("2", "ends")).toBe(2);
    expect(() => numberChoice([0, 1, 2]).read("", "ends")).toThrow("ends takes one of 0, 1, 2");
  });

  it("takes a flag as value, text or 1 and 0", () => {
    expect([true, 1, "TRUE", "true"].map((cell) => flag.read(cell, "headings"))).toEqual([
      true,
      true,
      true,
      true,
    ]);
    expect([false, 0, "False"].map((cell) => flag.read(cell, "headings"))).toEqual([false, false, false]);
    expect(() => flag.read("maybe", "headings")).toThrow('headings takes TRUE or FALSE, got "maybe"');
  });
});

describe("stagger pattern", () => {
  it("reads text and ranges alike", () => {
    expect(staggerPattern.read([["1, 1/2, 3/4, 1/4"]], "pattern")).toEqual([1, 0.5, 0.75, 0.25]);
    expect(staggerPattern.read([[1], ["1/2"], [null], [0.75], ["25%"]], "pattern")).toEqual([
      1, 0.5, 0.75, 0.25,
    ]);
  });

  it.each([
    [[[46024]], "pattern got the date 2 Jan (46024)"],
    [[["1, 2"]], 'pattern must be at most 1, got " 2"'],
    [[[0]], "pattern must be more than 0, got 0"],
    [[["full"]], "pattern takes a fraction"],
    [[["1,".repeat(101)]], "pattern must have at most 100 steps, got 101"],
  ])("refuses %j", (cells, sentence) => {
    expect(() => staggerPattern.read(cells as Matrix, "pattern")).toThrow(sentence);
  });
});

describe("outline", () => {
  const square: Matrix = [
    [0, 0],
    [10, 0],
    [10, 10],
    [0, 10],
  ];
  const corners = [
    { x: 0, y: 0 },
    { x: 10, y: 0 },
    { x: 10, y: 10 },
    { x: 0, y: 10 },
  ];

  it("takes a heading row, blank rows and a closing corner or does without", () => {
    expect(outline.read(square, "outline")).toEqual(corners);
    expect(outline.read([["x (ft)", "y (ft)"], ...square, [0, 0], [null, ""]], "outline")).toEqual(corners);
  });

  it("takes tape text and places left of the point of reference", () => {
    const read = outline.read(
      [
        [-3, 0],
        [`3' 6"`, 0],
        [0, "2 m"],
      ],
      "outline",
    );
    expect(read[0]).toEqual({ x: -3, y: 0 });
    expect(read[1]?.x).toBe(3.5);
    expect(read[2]?.y).toBeCloseTo(2000 / 304.8, 12);
  });

  it.each([
    [
      "fewer than three corners",
      [
        [0, 0],
        [1, 1],
      ],
      "outline needs at least 3 corners, got 2",
    ],
    [
      "no area",
      [
        [0, 0],
        [5, 0],
        [10, 0],
      ],
      "outline encloses no area: its corners stand in line",
    ],
    [
      "a bow tie",
      [
        [0, 0],
        [10, 10],
        [10, 0],
        [0, 10],
      ],
      "outline crosses itself: side 1 meets side 3",
    ],
    [
      "a side that touches a corner",
      [
        [0, 0],
        [10, 0],
        [10, 10],
        [5, 0],
        [0, 10],
      ],
      "outline crosses itself: side 1 meets side 3",
    ],
    [
      "text",
      [
        [0, 0],
        [10, "wide"],
        [10, 10],
      ],
      "outline y of corner 2 takes a length",
    ],
    [
      "a missing coordinate",
      [
        [0, 0],
        [10, null],
        [10, 10],
      ],
      "outline y of corner 2 is missing",
    ],
    [
      "three columns",
      [
        [0, 0, 1],
        [10, 0, 1],
        [10, 10, 1],
      ],
      "outline takes a range of two columns",
    ],
    ["one cell", [[5]], "outline takes a range of two columns"],
  ])("refuses %s", (_, cells, sentence) => {
    expect(() => outline.read(cells as Matrix, "outline")).toThrow(sentence);
  });
});

describe("panel block", () => {
  const block: Matrix = [
    ["Exposed Height", 12],
    ["maker's note", "anything"],
    ["exposed width", "2 ft"],
    ["no-bend bands", "5-6, 11 1/2-12"],
    ["gable setback", null],
  ];

  it("finds labels in any order and letter case, and fills in what is blank or absent", () => {
    const panel = panelBlock.read(block, "panel");
    expect(panel.exposedHeightIn).toBe(12);
    expect(panel.exposedWidthIn).toBe(24);
    expect(panel.noBendBands).toEqual([
      { fromIn: 5, toIn: 6 },
      { fromIn: 11.5, toIn: 12 },
    ]);
    expect(panel.gableSetbackIn).toBe(0);
    expect(panel.staggerPattern).toEqual([1, 0.5, 0.75, 0.25]);
    expect(panel.rollLengthIn).toBe(800);
  });

  it("names the label that is missing or wrong", () => {
    expect(() => panelBlock.read([["exposed width", 24]], "panel")).toThrow(
      'panel "exposed height" is missing',
    );
    expect(() => panelBlock.read([...block, ["trim lap", -1]], "panel")).toThrow(
      'panel "trim lap" must be at least 0 in, got -1',
    );
    expect(() => panelBlock.read([["exposed width"]], "panel")).toThrow(
      "panel takes the panel sheet's block",
    );
    expect(() => panelBlock.read([...block, ["no-bend bands", "6-5"]], "panel")).toThrow(
      "must run from less to more",
    );
  });

  it("has one label a field", () => {
    const labels = Object.values(PANEL_FIELDS).map(({ label }) => label);
    expect(new Set(labels).size).toBe(labels.length);
  });
});
