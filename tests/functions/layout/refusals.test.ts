import type { Cell, Matrix } from "../../../shared/cell";
import { call, callForNumber, callForSentence } from "../../support/call";

const PANEL: Matrix = [
  ["exposed width", 24],
  ["exposed height", 12],
];
const ROOF: Matrix = [
  [0, 0],
  [30, 0],
  [30, 20],
  [0, 20],
];
const block = (left: number, low: number, right: number, high: number): Cell[][] => [
  [left, low],
  [right, low],
  [right, high],
  [left, high],
];

describe("an outline that can't be laid is rejected with a message", () => {
  it.each<[string, Matrix, string]>([
    [
      "crosses itself",
      [
        [0, 0],
        [10, 10],
        [10, 0],
        [0, 10],
      ],
      "outline crosses itself: side 1 meets side 3",
    ],
    [
      "fewer than 3 corners",
      [
        [0, 0],
        [10, 0],
      ],
      "outline needs at least 3 corners, got 2",
    ],
    [
      "no area",
      [
        [0, 0],
        [10, 0],
        [20, 0],
      ],
      "outline encloses no area: its corners are in one line",
    ],
    [
      "not numeric",
      [
        [0, 0],
        ["east", 0],
        [0, 10],
      ],
      "outline x of corner 2 takes a length in feet such as 18.5",
    ],
    [
      "a coordinate missing",
      [
        [0, 0],
        [10, null],
        [0, 10],
      ],
      "outline y of corner 2 is missing",
    ],
    ["one column", [[0], [10], [20]], "outline takes a range of two columns"],
  ])("%s", (_, outline, sentence) => {
    for (const id of ["LAYOUT", "CUTLIST", "PANELCOUNT", "BESTSTART"])
      expect(callForSentence(id, outline, PANEL)).toContain(`#VALUE! ${sentence}`);
  });

  it("accepts more courses than any roof has", () => {
    const thin: Matrix = [
      ["exposed width", 24],
      ["exposed height", 0.01],
    ];
    expect(callForSentence("PANELCOUNT", ROOF, thin)).toBe(
      "#VALUE! the outline must take at most 2000 courses, got 24000 of 0.01 in",
    );
    const narrow: Matrix = [
      ["exposed width", 0.01],
      ["exposed height", 12],
    ];
    expect(callForSentence("LAYOUT", ROOF, narrow)).toBe(
      "#VALUE! the outline must take at most 200000 panels, got 720000",
    );
    const wide: Matrix = [
      ["exposed width", 2400],
      ["exposed height", 12],
    ];
    expect(callForSentence("BESTSTART", ROOF, wide)).toBe(
      "#VALUE! BESTSTART tries at most 300000 courses, got 76800 starts of 20 courses",
    );
  });
});

describe("openings outside the roof are rejected with a message", () => {
  const with2 = (first: Cell[][], second: Cell[][]): Matrix => [...first, [null, null], ...second];

  it.each<[string, Matrix, string]>([
    ["outside", block(40, 5, 42, 7), "opening 1 is outside the outline"],
    ["across the eave", block(5, -1, 7, 2), "opening 1 is outside the outline"],
    ["across a side", block(29, 5, 31, 7), "opening 1 is outside the outline"],
    ["all around", block(-1, -1, 31, 21), "opening 1 is outside the outline"],
    [
      "slanted across a side",
      [
        [28, 5],
        [31, 6],
        [28, 7],
      ],
      "opening 1 crosses the outline",
    ],
    ["over another", with2(block(5, 5, 8, 8), block(7, 7, 10, 10)), "opening 1 and opening 2 overlap"],
    ["inside another", with2(block(5, 5, 10, 10), block(6, 6, 7, 7)), "opening 1 and opening 2 overlap"],
    ["the same twice", with2(block(5, 5, 8, 8), block(5, 5, 8, 8)), "opening 1 and opening 2 overlap"],
    [
      "a second one crossing itself",
      with2(block(5, 5, 8, 8), [
        [10, 5],
        [12, 7],
        [12, 5],
        [10, 7],
      ]),
      "opening 2 crosses itself: side 1 meets side 3",
    ],
    [
      "a second of two corners",
      with2(block(5, 5, 8, 8), [
        [10, 5],
        [12, 7],
      ]),
      "opening 2 needs at least 3 corners, got 2",
    ],
    [
      "not numeric",
      [
        [5, 5],
        ["wide", 5],
        [8, 8],
      ],
      "opening 1 x of corner 2 takes a length in feet",
    ],
  ])("%s", (_, openings, sentence) => {
    expect(callForSentence("PANELCOUNT", ROOF, PANEL, openings)).toContain(`#VALUE! ${sentence}`);
  });

  it("but may touch the outline and each other, and have headings and spare blank rows", () => {
    const openings: Matrix = [
      [null, null],
      ["x (ft)", "y (ft)"],
      ...block(0, 0, 2, 2),
      ["", ""],
      [null, " "],
      ["x (ft)", "y (ft)"],
      ...block(2, 0, 4, 2),
      [null, null],
    ];
    // The first two courses are 26 ft long: 13 panels, and 14 where the joints are half a panel off.
    expect(callForNumber("PANELCOUNT", ROOF, PANEL, openings, "left", false)).toBe(315 - 15 - 16 + 13 + 14);
    expect(callForNumber("PANELCOUNT", ROOF, PANEL, block(0, 0, 4, 2), "left", false)).toBe(311);
  });

  it("blank openings are ignored", () => {
    expect(
      callForNumber("PANELCOUNT", ROOF, PANEL, [
        [null, null],
        ["", null],
      ]),
    ).toBe(300);
  });
});

describe("a start", () => {
  it("that isn't understood is rejected with a message", () => {
    const takes =
      "start takes left or right, then if wanted a shift in inches and a step of the stagger, such as left 3 1/4 from step 2";
    for (const start of ["middle", "left of it", 3, true, "left from", "left 3 from step"])
      expect(callForSentence("PANELCOUNT", ROOF, PANEL, undefined, start)).toContain(
        `#VALUE! ${takes}, got `,
      );
    expect(callForSentence("PANELCOUNT", ROOF, PANEL, undefined, "left -3")).toBe(
      `#VALUE! start's shift must be at least 0 in, got "left -3"`,
    );
    expect(callForSentence("PANELCOUNT", ROOF, PANEL, undefined, "left from step 0")).toBe(
      "#VALUE! start counts the stagger's steps from 1, got step 0",
    );
    expect(callForSentence("PANELCOUNT", ROOF, PANEL, undefined, "right from step 5")).toBe(
      "#VALUE! start takes a step from 1 to 4 of the stagger, got 5",
    );
  });

  it("may be a column: one count each", () => {
    expect(call("PANELCOUNT", ROOF, PANEL, undefined, [["left"], ["right 3 in"], ["middle"]], false)).toEqual(
      [[315], [20 * 16], [expect.objectContaining({ code: "#VALUE!" })]],
    );
  });

  it("a row with no input stays blank", () => {
    expect(call("LAYOUT", [[null, null]], [[null, null]])).toBe("");
  });
});
