import type { Cell, Matrix } from "../../../shared/cell";
import { call } from "../../support/call";

const panel = (fields: Record<string, Cell>): Matrix =>
  Object.entries({ "exposed width": 24, "exposed height": 12, ...fields });
const face = (widthFt: number, heightFt: number): Matrix => [
  [0, 0],
  [widthFt, 0],
  [widthFt, heightFt],
  [0, heightFt],
];
const warnings = (outline: Matrix, fields: Record<string, Cell>, start = "left", openings?: Matrix): Cell[] =>
  (call("LAYOUT", outline, panel(fields), openings, start, true, false, false) as Matrix).map(
    (row) => row[8] ?? null,
  );

describe("warnings of a course", () => {
  it("a piece shorter than the shortest: the closing piece past the last joint", () => {
    // 73 in: joints at 24, 48, 72; at 12, 36, 60: 13 in are left.
    expect(warnings(face(73 / 12, 2), { "shortest piece": 3 })).toEqual([
      "piece 4 covers 1 in, under the shortest piece of 3 in",
      "",
      "1 warning",
    ]);
    expect(warnings(face(75 / 12, 2), { "shortest piece": 3 })).toEqual(["", "", ""]);
  });

  it("a top course that shows less than the shortest piece", () => {
    const [first, top] = warnings(face(4, 14.5 / 12), { "shortest piece": 3, "stagger pattern": "1" });
    expect([first, top]).toEqual(["", "the course shows 2 1/2 in, under the shortest piece of 3 in"]);
    expect(warnings(face(4, 15 / 12), { "shortest piece": 3, "stagger pattern": "1" })).toEqual(["", "", ""]);
  });

  it("a course too narrow to leave anything to cover between the setbacks at both gables", () => {
    expect(warnings(face(2 / 12, 2), { "gable setback": 1.5 })).toEqual([
      "the course is 2 in wide, of which setbacks of 1 1/2 in leave nothing to cover",
      "the course is 2 in wide, of which setbacks of 1 1/2 in leave nothing to cover",
      "2 warnings",
    ]);
    expect(warnings(face(4 / 12, 2), { "gable setback": 1.5 })).toEqual(["", "", ""]);
  });

  it("a bend in a no-bend band, counted from the left lock whichever side the courses start at", () => {
    const fields = {
      "gable setback": 1.5,
      "gable fold": 2.5,
      "lock flange gain": 1,
      "no-bend bands": "13-14",
    };
    // The half starter covers the right 10 1/2 in of its panel: bent 13 1/2 in from the left lock, cut at 11.
    expect(warnings(face(5, 2), fields)[1]).toBe(
      "piece 1 is bent 13 1/2 in from its left lock, in the no-bend band 13-14 in",
    );
    // From the right the half starter covers the left 10 1/2 in of its panel and is cut at 13.
    expect(warnings(face(5, 2), { ...fields, "no-bend bands": "12-14" }, "right")[1]).toBe(
      "piece 1 is cut 13 in from its left lock, in the no-bend band 12-14 in",
    );
  });

  it("a bend exactly on the edge of a band is allowed", () => {
    const fields = { "gable setback": 1.5, "gable fold": 2.5, "lock flange gain": 1 };
    expect(warnings(face(5, 2), { ...fields, "no-bend bands": "13 1/2-14" })[1]).toBe("");
    expect(warnings(face(5, 2), { ...fields, "no-bend bands": "13-13 1/2" })[1]).toBe("");
  });

  it("a cut beside an opening in a band, but no slanted cut", () => {
    const chimney: Matrix = [
      [2.5, 0],
      [3.5, 0],
      [3.5, 1],
      [2.5, 1],
    ];
    // 30 in is 6 in into the second panel, 42 in is 18 in.
    expect(warnings(face(6, 1), { "no-bend bands": "5-7" }, "left", chimney)).toEqual([
      "piece 2 is cut 6 in from its left lock, in the no-bend band 5-7 in",
      "1 warning",
    ]);
    const hip: Matrix = [
      [0, 0],
      [8, 0],
      [4, 4],
    ];
    expect(warnings(hip, { "no-bend bands": "1-23" }).at(-1)).toBe("");
  });

  it("beside an opening a panel is cut, not bent, and at a gable without a fold too", () => {
    const chimney: Matrix = [
      [2.5, 0],
      [3.5, 0],
      [3.5, 1],
      [2.5, 1],
    ];
    const folded = { "gable fold": 2.5, "lock flange gain": 2.5, "no-bend bands": "5-7" };
    expect(warnings(face(6, 1), folded, "left", chimney)[0]).toBe(
      "piece 2 is cut 6 in from its left lock, in the no-bend band 5-7 in",
    );
    // Half a panel starts at the gable: without setback and fold it is cut 12 in from its left lock.
    expect(warnings(face(5, 2), { "no-bend bands": "11-13" })[1]).toBe(
      "piece 1 is cut 12 in from its left lock, in the no-bend band 11-13 in",
    );
  });

  it("a full-height course isn't thin, however long the shortest piece is", () => {
    expect(warnings(face(6, 2), { "shortest piece": 20, "stagger pattern": "1" })).toEqual(["", "", ""]);
  });

  it("a blank that no panel is wide enough for: the slant allowance exceeds a panel's width", () => {
    const hip: Matrix = [
      [0, 0],
      [8, 0],
      [8, 8],
    ];
    expect(warnings(hip, { "slant allowance": 1 })[0]).toBe(
      "piece 1 needs a blank of 25 in, more than the 24 in that a panel gives",
    );
    expect(warnings(hip, { "slant allowance": 1, "lock flange gain": 1 })[0]).toBe("");
  });
});
