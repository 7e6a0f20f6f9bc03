import type { Argument, Matrix } from "../../../shared/cell";
import { call } from "../../support/call";

const PANEL: Matrix = [
  ["exposed width", 24],
  ["exposed height", 12],
  ["stagger pattern", "1"],
];
const cutList = (...args: Argument[]): Matrix => call("CUTLIST", ...args) as Matrix;
const shapes = (outline: Matrix, openings?: Matrix, start = "left"): unknown[] =>
  cutList(outline, PANEL, openings, start, true, false, false).map((row) => row.slice(1, 7));

const roof: Matrix = [
  [0, 0],
  [4, 0],
  [4, 1],
  [0, 1],
];

describe("the cut list", () => {
  it("gives the corners of a slanted piece as seen on the face", () => {
    const hip: Matrix = [
      [0, 0],
      [3, 0],
      [3, 1],
      [1, 1],
    ];
    expect(shapes(hip)).toEqual([
      [1, 0, 24, 24, "(0, 0) (24, 0) (24, 12) (12, 12)", "right"],
      [2, 24, 12, 12, "(0, 0) (12, 0) (12, 12) (0, 12)", "left"],
    ]);
    // From the right the joint stands 24 in from the right edge: at 12 in, where the hip is at the top.
    expect(shapes(hip, undefined, "right")).toEqual([[2, 24, 12, 12, "(0, 0) (12, 0) (12, 12)", "right"]]);
  });

  it("cuts a notch, and a hole in one piece, and two pieces where an opening is as high as the course", () => {
    const notch: Matrix = [
      [0.5, 0],
      [1, 0],
      [1, 0.5],
      [0.5, 0.5],
    ];
    expect(shapes(roof, notch)).toEqual([
      [1, 0, 24, 24, "(0, 0) (6, 0) (6, 6) (12, 6) (12, 0) (24, 0) (24, 12) (0, 12)", "right"],
    ]);
    const hole: Matrix = [
      [0.5, 0.25],
      [1, 0.25],
      [1, 0.5],
      [0.5, 0.5],
    ];
    expect(shapes(roof, hole)).toEqual([
      [1, 0, 24, 24, "(0, 0) (24, 0) (24, 12) (0, 12); hole (6, 3) (6, 6) (12, 6) (12, 3)", "right"],
    ]);
    const through: Matrix = [
      [0.5, 0],
      [1, 0],
      [1, 1],
      [0.5, 1],
    ];
    expect(shapes(roof, through)).toEqual([
      [1, 0, 6, 6, "(0, 0) (6, 0) (6, 12) (0, 12)", "none"],
      [2, 12, 12, 12, "(0, 0) (12, 0) (12, 12) (0, 12)", "right"],
    ]);
  });

  it("adds feet-and-inches text on request, with its headings", () => {
    const [headings, row] = cutList(
      [
        [0, 0],
        [4.5, 0],
        [4.5, 1],
        [0, 1],
      ],
      PANEL,
      undefined,
      "left",
      true,
      true,
    );
    expect(headings?.slice(8)).toEqual(["position (tape)", "cover (tape)", "width to cut (tape)"]);
    expect(row).toEqual([
      1,
      3,
      48,
      6,
      6,
      "(0, 0) (6, 0) (6, 12) (0, 12)",
      "left",
      "panel 1",
      `4' 0"`,
      `0' 6"`,
      `0' 6"`,
    ]);
  });

  it("reports when nothing is cut", () => {
    expect(cutList(roof, PANEL)[1]).toEqual(["no cuts", "", "", "", "", "", "", ""]);
    expect(cutList(roof, PANEL, undefined, "left", true, true, false)).toEqual([
      ["no cuts", ...Array<string>(10).fill("")],
    ]);
  });
});

describe("the layout's table", () => {
  it("accepts what OUTLINE spills, including the heading row", () => {
    const spilled = call("OUTLINE", "trapezoid", 8, 3, 2) as Matrix;
    const corners: Matrix = [
      [0, 0],
      [8, 0],
      [5, 3],
      [3, 3],
    ];
    expect(call("LAYOUT", spilled, PANEL)).toEqual(call("LAYOUT", corners, PANEL));
    expect(spilled[0]).toEqual(["x (ft)", "y (ft)"]);
  });

  it("adds feet-and-inches text on request", () => {
    const rows = call("LAYOUT", roof, PANEL, undefined, "left", true, true) as Matrix;
    expect(rows[0]?.slice(9)).toEqual([
      "line (tape)",
      "starter cover (tape)",
      "starter blank (tape)",
      "closing piece (tape)",
    ]);
    expect(rows[1]?.slice(9)).toEqual([`0' 0"`, `2' 0"`, `2' 0"`, `2' 0"`]);
    expect(rows[2]?.slice(9)).toEqual(["", "", "", ""]);
  });

  it("leaves the cells of a course empty where an opening covers all of it", () => {
    const rows = call(
      "LAYOUT",
      [
        [0, 0],
        [4, 0],
        [4, 3],
        [0, 3],
      ],
      PANEL,
      [
        [0, 1],
        [4, 1],
        [4, 2],
        [0, 2],
      ],
    ) as Matrix;
    expect(rows[2]).toEqual([2, 1, "", "", 0, 0, 0, "", ""]);
    expect(rows[4]).toEqual(["total", "", "", "", 4, 0, 0, "", ""]);
  });
});
