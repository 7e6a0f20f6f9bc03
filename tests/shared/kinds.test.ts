import { choice, numberChoice } from "../../shared/kinds/choice";
import { flag } from "../../shared/kinds/flag";
import { lengthInFeet, lengthInInches, signedLengthInFeet } from "../../shared/kinds/length";
import { count, degrees, fraction, money, quantity } from "../../shared/kinds/number";
import { outline } from "../../shared/kinds/outline";
import { panelBlock } from "../../shared/kinds/panelBlock";
import { staggerPattern } from "../../shared/kinds/staggerPattern";
import type { Matrix } from "../../shared/cell";
import { bendBands } from "../../shared/kinds/bendBands";
import type { CellKind } from "../../shared/kinds/kind";
import { lengthsInFeet } from "../../shared/kinds/lengths";
import { openings } from "../../shared/kinds/openings";
import { itemKey, orderLines } from "../../shared/kinds/orderLines";
import { perSide } from "../../shared/kinds/perSide";
import { pitch } from "../../shared/kinds/pitch";
import { sideNumbers } from "../../shared/kinds/sideNumbers";
import { PANEL_FIELDS } from "../../shared/kinds/panel";
import { runFunction } from "../../shared/spec/runner";
import { defineFunction, required } from "../../shared/spec/spec";
import { TEXT_RESULT } from "../../shared/result";

/** A function with two parameters of one kind that returns the values it received. */
const echo = <T>(kind: CellKind<T>) =>
  defineFunction({
    id: "ECHO",
    concept: "measure",
    summary: "",
    parameters: [required("one", kind, ""), required("other", kind, "")],
    heading: "",
    result: TEXT_RESULT,
    formula: "",
    source: "",
    examples: [],
    calculate: (one, other) => `${String(one)}, ${String(other)}`,
  });

describe("every kind of one cell", () => {
  const kinds: [string, () => CellKind<unknown>, string, string | undefined][] = [
    ["feet", () => lengthInFeet(), "a length in feet such as 18.5, or text", "Ft"],
    ["inches", () => lengthInInches(), "a length in inches such as 12, or text", "In"],
    ["a pitch", () => pitch(), "a pitch such as 6 (rise on 12)", undefined],
    ["a quantity", () => quantity(""), "a number", undefined],
    ["an area", () => quantity("sq ft"), "a number of sq ft", "SqFt"],
    ["a count", () => count(), "a whole number", undefined],
    ["degrees", () => degrees({}), "an angle in degrees such as 26.57", "Degrees"],
    ["a share", () => fraction(), "a fraction such as 0.1, 10% or 1/2", undefined],
    ["money", () => money(), "an amount of money such as 12.50", undefined],
    ["a choice", () => choice(["1", "2"]), "one of 1, 2", undefined],
    ["a choice of numbers", () => numberChoice([1, 2]), "one of 1, 2", undefined],
  ];

  it.each(kinds)(
    "%s: a column gives a column, and a blank cell's message names what is accepted",
    (_, kindOf, takes) => {
      const kind = kindOf();
      expect(runFunction(echo(kind), [[["1"], ["1"]], "1"])).toEqual([["1, 1"], ["1, 1"]]);
      const missing = runFunction(echo(kind), ["1", null]);
      expect(missing).toMatchObject({
        message: expect.stringContaining(`other is missing: it takes ${takes}`) as string,
      });
      const other = runFunction(echo(kind), ["1", true]);
      expect(other).toMatchObject({ message: expect.stringMatching(/^other takes .*, got TRUE$/) as string });
    },
  );

  it.each(kinds)("%s: a parameter's name ends in the unit of a bare number", (_, kindOf, __, ending) => {
    expect(kindOf().nameEnding).toBe(ending);
  });
});

describe("length", () => {
  it("reads a bare number in the parameter's unit and text in the unit it names", () => {
    expect(lengthInFeet().read(18.5, "eave")).toBe(18.5);
    expect(lengthInFeet().read("18.5", "eave")).toBe(18.5);
    expect(lengthInFeet().read("18.5 in", "eave")).toBeCloseTo(18.5 / 12, 12);
    expect(lengthInInches().read("1 ft", "lap")).toBe(12);
    expect(lengthInInches().read("25.4 mm", "lap")).toBe(1);
  });

  it.each(["-5 ft", "−5'", "-60 in", "-5-0", "- 5", "-5"])(
    "checks the sign of %j against the lower bound",
    (text) => {
      expect(signedLengthInFeet.read(text, "lean")).toBe(-5);
      expect(() => lengthInFeet().read(text, "eave")).toThrow(`eave must be at least 0 ft, got "${text}"`);
    },
  );

  it("must be 0 or more by default", () => {
    expect(() => lengthInInches().read(-1, "lap")).toThrow("lap must be at least 0 in, got -1");
  });

  it("names the unit of a quantity that has one", () => {
    expect(() => quantity("sq ft").read("many", "area")).toThrow("area takes a number of sq ft, got");
    expect(() => quantity("").read("many", "factor")).toThrow("factor takes a number, got");
  });

  it("doesn't read text of many digits as a date", () => {
    expect(() => lengthInFeet().read("46362", "eave")).toThrow('eave must be at most 30000 ft, got "46362"');
  });

  it("skips the blank cells of a range", () => {
    expect(
      lengthsInFeet.read(
        [
          [40, null],
          [" ", "6 in"],
        ],
        "lengths",
      ),
    ).toEqual([40, 0.5]);
  });

  it("names the side of a length when there are several", () => {
    const sides = perSide(lengthInFeet());
    expect([sides.shape, sides.nameEnding, "nameEnding" in perSide(pitch())]).toEqual(["range", "Ft", false]);
    expect(sides.takes).toMatch(/^a length in feet .*: one for all sides, or a range of one for each side$/);
    expect(sides.read([[1], [null], ["6 in"]], "overhang")).toEqual([1, undefined, 0.5]);
    expect(() => sides.read([[1], [-1]], "overhang")).toThrow(
      "overhang of side 2 must be at least 0 ft, got -1",
    );
    expect(() => sides.read([[-1]], "overhang")).toThrow(/^overhang must be at least 0 ft, got -1$/);
  });

  it("recognizes a date that was meant as feet and inches", () => {
    expect(() => lengthInFeet().read(46362, "eave")).toThrow(
      `eave got 46362, which is the date 6 Dec; type feet and inches as 12' 6", or as '12-6 with an apostrophe before it`,
    );
  });

  it.each([
    [-1, "spacing must be more than 0 in, got -1"],
    [0, "spacing must be more than 0 in, got 0"],
    [Infinity, "spacing must be a finite number, got Infinity"],
    [true, "spacing takes a length in inches such as 12, or text with its unit such as 18' 6 1/2\""],
    ["-5 in", 'spacing must be more than 0 in, got "-5 in"'],
    ["wide", 'got "wide"'],
  ])("rejects %j with a message", (cell, sentence) => {
    expect(() => lengthInInches({ moreThan: 0 }).read(cell, "spacing")).toThrow(sentence);
  });
});

describe("numbers", () => {
  it("reads fractions as decimals, percentages and common fractions", () => {
    expect(fraction().read(0.1, "waste")).toBe(0.1);
    expect(fraction().read("10%", "waste")).toBe(0.1);
    expect(fraction().read("1/8", "waste")).toBe(0.125);
    expect(() => fraction().read(10, "waste")).toThrow("waste must be at most 1, got 10");
    for (const text of ["1 2%", "5%5", "1/2%", "most"])
      expect(() => fraction().read(text, "waste")).toThrow(
        `waste takes a fraction such as 0.1, 10% or 1/2, got "${text}"`,
      );
    expect(() => fraction({ lessThan: 1 }).read(1, "margin")).toThrow("margin must be less than 1, got 1");
    expect(fraction({ lessThan: 1 }).read(0.99, "margin")).toBe(0.99);
    expect(() => fraction().read("-10%", "waste")).toThrow('waste must be at least 0, got "-10%"');
  });

  it("reads whole numbers and rejects fractions", () => {
    expect(count().read("7", "course")).toBe(7);
    expect(() => count().read(2.5, "course")).toThrow("course must be a whole number, got 2.5");
    expect(() => count().read(0, "course")).toThrow("course must be at least 1, got 0");
  });

  it("reads money with its sign and commas", () => {
    expect(money().read("$1,234.50", "price")).toBe(1234.5);
    expect(money().read("12.5", "price")).toBe(12.5);
    expect(money().read("12,345", "price")).toBe(12_345);
    expect(money().read("1,234,567.89", "price")).toBe(1_234_567.89);
    expect(() => money().read(-1, "price")).toThrow("price must be at least 0, got -1");
    expect(() => money().read(1e9 + 1, "price")).toThrow("price must be at most 1000000000, got 1000000001");
    expect(() => money().read("1,23", "price")).toThrow(
      'price takes an amount of money such as 12.50, got "1,23"',
    );
  });

  it("reads degrees with or without the sign", () => {
    expect(degrees({ atLeast: 0 }).read("30°", "angle")).toBe(30);
    expect(degrees({ atLeast: 0 }).read(30, "angle")).toBe(30);
    expect(degrees({ atLeast: 0 }).read("30 deg", "angle")).toBe(30);
    expect(degrees({ atLeast: 0 }).read("30 deg.", "angle")).toBe(30);
    expect(() => degrees({ atLeast: 0 }).read("30°5", "angle")).toThrow("angle takes an angle in degrees");
    expect(() => degrees({ atMost: 10 }).read(11, "angle")).toThrow(
      "angle must be at most 10 degrees, got 11",
    );
  });

  it("names the unit that a quantity must have", () => {
    expect(() => quantity("lb").read(-1, "weight")).toThrow("weight must be at least 0 lb, got -1");
    expect(() => quantity("sq ft").read("much", "area")).toThrow('area takes a number of sq ft, got "much"');
  });
});

describe("words and flags", () => {
  it("accepts a choice in any letter case", () => {
    expect(choice(["hip", "eave break"]).read(" Eave  Break ", "joint")).toBe("eave break");
    expect(() => choice(["hip", "valley"]).read("hips", "joint")).toThrow(
      'joint takes one of hip, valley, got "hips"',
    );
    expect(numberChoice([0, 1, 2]).read("2", "ends")).toBe(2);
    expect(() => numberChoice([0, 1, 2]).read("", "ends")).toThrow("ends takes one of 0, 1, 2");
  });

  it("accepts a flag as TRUE or FALSE, as text, or as 1 or 0", () => {
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
  it("reads text and ranges the same way", () => {
    expect(staggerPattern.read([["1, 1/2, 3/4, 1/4"]], "pattern")).toEqual([1, 0.5, 0.75, 0.25]);
    expect(staggerPattern.read([[1], ["1/2"], [null], [0.75], ["25%"]], "pattern")).toEqual([
      1, 0.5, 0.75, 0.25,
    ]);
    expect(staggerPattern.read([["1/2, ".repeat(24)], [" "]], "pattern")).toHaveLength(24);
  });

  it.each([
    [[[46024]], "pattern got the date 2 Jan (46024)"],
    [[["1, 2"]], 'pattern must be at most 1, got " 2"'],
    [[[0]], "pattern must be more than 0, got 0"],
    [[["full"]], "pattern takes a fraction"],
    [[["1,".repeat(25)]], "pattern must have at most 24 steps, got 25"],
    [[["46024"]], 'pattern must be at most 1, got "46024"'],
    [[[","]], "pattern has no steps: it takes fractions of a panel from the eave up"],
    [[[" "], [null]], "pattern has no steps"],
  ])("refuses %j", (cells, sentence) => {
    expect(() => staggerPattern.read(cells as Matrix, "pattern")).toThrow(sentence);
  });
});

describe("numbers of sides", () => {
  it("are read from a range or from text, skipping blanks", () => {
    expect(sideNumbers.read([[2], [null], [4]], "gables")).toEqual([2, 4]);
    expect(sideNumbers.read([["2, 4,, 6"]], "gables")).toEqual([2, 4, 6]);
  });
});

describe("bands that can't be bent", () => {
  it("are read with or without spaces, and may be none", () => {
    expect(bendBands.read(" None ", "bands")).toEqual([]);
    expect(bendBands.read("5 1/2 - 6, 11-12", "bands")).toEqual([
      { fromIn: 5.5, toIn: 6 },
      { fromIn: 11, toIn: 12 },
    ]);
  });

  it.each([5, "x5-6", "5-6 in", ".-6", "5-.", "5"])("rejects %j", (cell) => {
    expect(() => bendBands.read(cell, "bands")).toThrow(
      `bands takes none, or bands in inches from the left lock such as 5-6, 11-12, got ${JSON.stringify(cell)}`,
    );
  });

  it("must run from the smaller to the larger number", () => {
    expect(() => bendBands.read("11-12, 6-5 ", "bands")).toThrow(
      'bands must run from less to more, got "6-5"',
    );
    expect(() => bendBands.read("5-5", "bands")).toThrow('bands must run from less to more, got "5-5"');
  });
});

describe("lines of an order", () => {
  const LINES: Matrix = [
    ["panels", 94, 12.5],
    [null, " ", null],
    ["drip edge", "12", "$8"],
  ];
  const read = [
    { item: "panels", quantity: 94, price: 12.5 },
    { item: "drip edge", quantity: 12, price: 8 },
  ];

  it("are read with or without a heading row, skipping blank rows", () => {
    expect(orderLines.read(LINES, "before")).toEqual(read);
    expect(orderLines.read([["item", "Qty", "Price"], ...LINES], "before")).toEqual(read);
  });

  it.each<[string, Matrix]>([
    ['before: the quantity of "item" takes a number, got "many"', [["item", "many", "price"]]],
    ['before: the quantity of "item" takes a number, got "qty"', [["item", "qty", 5]]],
    ['before: the quantity of "item" takes a number, got "qty"', [...LINES, ["item", "qty", "price"]]],
    [
      'before: the price of "nails" is missing: it takes an amount of money such as 12.50',
      [["nails", 5, null]],
    ],
    ["before has a line without an item", [[null, 5, 5]]],
    ['before has "Drip  Edge" twice: an item may stand there once', [...LINES, ["Drip  Edge", 1, 1]]],
    ["before takes three columns, item, quantity and price, got 2", [["nails", 5]]],
  ])("%s", (sentence, lines) => {
    expect(() => orderLines.read(lines, "before")).toThrow(sentence);
  });

  it("match by item, ignoring letter case and extra spaces", () => {
    expect(itemKey(" Drip\u00a0 Edge ")).toBe("drip edge");
    expect(itemKey("DripEdge")).not.toBe(itemKey("drip edge"));
  });
});

describe("openings", () => {
  const triangle = (place: number): Matrix => [
    [place, 0],
    [place + 1, 0],
    [place, 1],
    [null, null],
  ];
  const disc = (corners: number): Matrix => [
    ...Array.from({ length: corners }, (_, corner) => [
      100 * Math.cos((2 * Math.PI * corner) / corners),
      100 * Math.sin((2 * Math.PI * corner) / corners),
    ]),
    [null, null],
  ];

  it("are at most 200, with at most 1000 corners in total", () => {
    const many = (count: number): Matrix =>
      Array.from({ length: count }, (_, place) => triangle(2 * place)).flat();
    expect(openings.read(many(200), "openings")).toHaveLength(200);
    expect(() => openings.read(many(201), "openings")).toThrow(
      "openings must be at most 200 outlines, got 201",
    );
    const large = [...disc(500), ...disc(497)];
    expect(openings.read([...large, ...triangle(0)], "openings")).toHaveLength(3);
    expect(() => openings.read([...large, ...disc(4)], "openings")).toThrow(
      "openings must have at most 1000 corners together, got 1001",
    );
  });

  it("have at most 500 corners each", () => {
    expect(outline.read(disc(500), "outline")).toHaveLength(500);
    expect(() => outline.read(disc(501), "outline")).toThrow(
      "outline must have at most 500 corners, got 501",
    );
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

  it("accepts a heading row, blank rows and a closing corner, but needs none of them", () => {
    expect(outline.read(square, "outline")).toEqual(corners);
    expect(outline.read([["x (ft)", "y (ft)"], ...square, [0, 0], [null, ""]], "outline")).toEqual(corners);
  });

  it.each(["0ft", " 0 ft"])(
    "doesn't read the first corner as a heading when every corner is text, such as %j",
    (zero) => {
      const texts = [
        [zero, zero],
        ["10 ft", "0 ft"],
        ["10 ft", "10 ft"],
        ["0 ft", "10 ft"],
      ];
      expect(outline.read(texts, "outline")).toEqual(corners);
      expect(outline.read([[" x", " y"], ...texts], "outline")).toEqual(corners);
    },
  );

  it("accepts feet-and-inches text and points left of the reference point", () => {
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
      "outline encloses no area: its corners are in one line",
    ],
    ["nothing", [[null, null]], /^outline takes a range of two columns, .*, got a blank cell$/],
    ["one corner", [[0, 0]], "outline needs at least 3 corners, got 1"],
    ["half a heading", [["x", 0], ...square], "outline x of corner 1 takes a length in feet"],
    ["flags for a heading", [[true, true], ...square], "outline x of corner 1 takes a length in feet"],
    [
      "a speck",
      [
        [0, 0],
        [1e-5, 0],
        [0, 1e-5],
      ],
      /^outline encloses no area$/,
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
    ["one cell", [[5]], /^outline takes a range of two columns, .*, got 1 column$/],
    ["one column", [[0], [10], [20]], /^outline takes a range of two columns, .*, got 1 column$/],
    [
      "a corner too far away, which is no date",
      [
        [0, 0],
        [36000, 0],
        [0, 10],
      ],
      /^outline x of corner 2 must be at most 30000 ft, got 36000$/,
    ],
  ])("rejects %s", (_, cells, sentence) => {
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

  it("finds labels in any order and letter case, and uses defaults for blank or absent ones", () => {
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
      'panel takes the panel sheet\'s block: two columns, label and value, got "exposed width"',
    );
    expect(() => panelBlock.read([...block, ["no-bend bands", "6-5"]], "panel")).toThrow(
      "must run from less to more",
    );
  });

  it("ignores spaces around a label, and rows whose label is a number", () => {
    const panel = panelBlock.read([[5, 6], ...block, [" trim lap ", 2]], "panel");
    expect(panel.trimLapIn).toBe(2);
  });

  it("reads white space as blank", () => {
    expect(panelBlock.read([...block, ["trim lap", "  "]], "panel").trimLapIn).toBe(0);
  });

  it("has a unique label for each field", () => {
    const labels = Object.values(PANEL_FIELDS).map(({ label }) => label);
    expect(new Set(labels).size).toBe(labels.length);
  });
});
