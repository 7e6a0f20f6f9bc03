import type { Argument, Matrix } from "../../../shared/cell";
import { call } from "../../support/call";

const PANEL: Matrix = [
  ["exposed width", 24],
  ["exposed height", 12],
  ["gable setback", 1.5],
  ["gable fold", 2.5],
];

/** The table without its headings. */
const endPieces = (...args: Argument[]): Matrix => (call("ENDPIECES", ...args) as Matrix).slice(1);

const rectangle = (widthFt: number, heightFt: number): Matrix => [
  [0, 0],
  [widthFt, 0],
  [widthFt, heightFt],
  [0, heightFt],
];

describe("the pieces at the ends of courses", () => {
  it("on a gable 8 ft wide of ten courses: four starters and four closing pieces, as worked by hand", () => {
    // Joints from the left at 24, 12, 18 or 6 in, then every 24 in; to 96 in are left 24, 12, 6 or 18 in. A piece at a
    // gable covers 1 1/2 in less, and is cut 2 1/2 in longer for its fold.
    expect(endPieces(rectangle(8, 10), PANEL)).toEqual([
      ["starter", 22.5, 2.5, 25, 3, "1, 5, 9", ""],
      ["starter", 10.5, 2.5, 13, 3, "2, 6, 10", ""],
      ["starter", 16.5, 2.5, 19, 2, "3, 7", ""],
      ["starter", 4.5, 2.5, 7, 2, "4, 8", ""],
      ["closing", 22.5, 2.5, 25, 3, "1, 5, 9", ""],
      ["closing", 10.5, 2.5, 13, 3, "2, 6, 10", ""],
      ["closing", 4.5, 2.5, 7, 2, "3, 7", ""],
      ["closing", 16.5, 2.5, 19, 2, "4, 8", ""],
    ]);
  });

  it("the starters are where laying begins: on a face that is alike from both sides, the same from the right", () => {
    const [left, right] = ["left", "right"].map((start) => endPieces(rectangle(8, 4), PANEL, null, start));
    expect(right).toEqual(left);
    const uneven = rectangle(7, 1);
    expect(endPieces(uneven, PANEL, null, "right")).toEqual(endPieces(uneven, PANEL, null, "left"));
  });

  it("a piece that fills its course is bent at both ends, and has no mark for a single bend", () => {
    // 12 in, less 1 1/2 in at both gables, and a fold of 2 1/2 in at both.
    expect(endPieces(rectangle(1, 2), [...PANEL, ["stagger pattern", "1"]])).toEqual([
      ["only piece", 9, "", 14, 2, "1, 2", ""],
    ]);
  });

  it("whole panels at the ends need no work on the ground, and without a fold there is nothing to mark", () => {
    const plain: Matrix = PANEL.slice(0, 2);
    expect(endPieces(rectangle(4, 2), [...plain, ["stagger pattern", "1"]])).toEqual([
      ["no cuts", "", "", "", "", "", ""],
    ]);
    expect(endPieces(rectangle(4, 2), [...plain, ["stagger pattern", "1/2"]])).toEqual([
      ["starter", 12, "", 12, 2, "1, 2", ""],
      ["closing", 12, "", 12, 2, "1, 2", ""],
    ]);
  });

  // Flanks at 45°: each course is 12 in shorter at both ends, at its top as much again.
  const hip: Matrix = [
    [0, 0],
    [8, 0],
    [6, 2],
    [2, 2],
  ];

  it("identical slanted pieces are listed together", () => {
    // Joints of course 1 at 24, 48 and 72 in; of course 2, which lies from 12 to 84 in, at 36 and 60 in.
    expect(endPieces(hip, [...PANEL.slice(0, 2), ["stagger pattern", "1, 1/2"]])).toEqual([
      ["starter", 24, "", 24, 2, "1, 2", "(0, 0) (24, 0) (24, 12) (12, 12)"],
      ["closing", 24, "", 24, 2, "1, 2", "(0, 0) (24, 0) (12, 12) (0, 12)"],
    ]);
  });

  it("slanted pieces with different corners are listed apart, and a slant allowance has no mark", () => {
    // Joints of both courses at 24, 48 and 72 in: course 2 ends in triangles.
    const panel: Matrix = [...PANEL.slice(0, 2), ["stagger pattern", "1"], ["slant allowance", 2]];
    expect(endPieces(hip, panel)).toEqual([
      ["starter", 24, "", 26, 1, "1", "(0, 0) (24, 0) (24, 12) (12, 12)"],
      ["starter", 12, "", 14, 1, "2", "(0, 0) (12, 0) (12, 12)"],
      ["closing", 24, "", 26, 1, "1", "(0, 0) (24, 0) (12, 12) (0, 12)"],
      ["closing", 12, "", 14, 1, "2", "(0, 0) (12, 0) (0, 12)"],
    ]);
  });

  it("pieces with the same width and different corners are listed apart", () => {
    // The left flank leans 6 in in course 1 and stands upright in course 2, above a step of 6 in.
    const leaning: Matrix = [
      [0, 0],
      [4, 0],
      [4, 2],
      [0, 2],
      [0, 1],
      [0.5, 1],
    ];
    const rows = endPieces(leaning, [...PANEL.slice(0, 2), ["stagger pattern", "1/2"]]);
    expect(rows.filter((row) => row[0] === "starter").map((row) => [row[1], row[5], row[6]])).toEqual([
      [12, "1", "(0, 0) (12, 0) (12, 12) (6, 12)"],
      [12, "2", ""],
    ]);
  });

  it("a notched piece isn't a rectangle, so it has no bend mark", () => {
    const notch: Matrix = [
      [0.5, 0],
      [1, 0],
      [1, 0.5],
      [0.5, 0.5],
    ];
    const [first] = endPieces(rectangle(4, 1), PANEL, notch);
    expect(first).toEqual([
      "starter",
      22.5,
      "",
      25,
      1,
      "1",
      "(0, 0) (4 1/2, 0) (4 1/2, 6) (10 1/2, 6) (10 1/2, 0) (22 1/2, 0) (22 1/2, 12) (0, 12)",
    ]);
  });
});
