import type { Argument, Cell, Matrix } from "../../../shared/cell";
import type { LayoutStart } from "../../../shared/layoutStart";
import type { Outline } from "../../../shared/outline";
import { layOut } from "../../../functions/layout/engine/layOut";
import { joinStacked } from "../../../functions/layout/engine/connectedParts";
import type { EndKind, Flank, Trapezoid } from "../../../functions/layout/engine/trapezoid";
import { call } from "../../support/call";
import { cornersOf, LEFT, panelOf, rectangle, RIGHT } from "../../support/layouts";

const panel = (fields: Readonly<Record<string, Cell>> = {}): Matrix =>
  Object.entries({ "exposed width": 24, "exposed height": 12, "stagger pattern": "1", ...fields });
/** Typed in inches, which hold a panel's measurements more exactly than feet. */
const inInches = (...corners: readonly (readonly [number, number])[]): Matrix =>
  corners.map(([x, y]) => [`${x} in`, `${y} in`]);
const box = (left: number, low: number, right: number, high: number): Matrix =>
  inInches([left, low], [right, low], [right, high], [left, high]);

/** Piece, position, cover, blank and kept lock of each cut piece. */
const cuts = (outline: Matrix, opening?: Matrix, fields: Readonly<Record<string, Cell>> = {}): unknown[] =>
  (call("CUTLIST", outline, panel(fields), opening, "left", true, false, false) as Matrix).map((row) => [
    ...row.slice(1, 5),
    row[6],
  ]);
const rows = (outline: Matrix, opening?: Matrix, ...more: Argument[]): Matrix =>
  (call("LAYOUT", outline, panel(), opening, ...more) as Matrix).slice(1);

const ROOF = box(0, 0, 72, 12);

describe("pieces of one panel's place", () => {
  it("are one, with both locks, around a hole", () => {
    expect(cuts(ROOF, box(30, 3, 36, 6))).toEqual([[2, 24, 24, 24, "both"]]);
  });

  it("are two beside a chimney as high as the course, and have no fold there", () => {
    expect(cuts(ROOF, box(30, 0, 42, 12), { "gable fold": 2.5 }).slice(1, 3)).toEqual([
      [2, 24, 6, 6, "left"],
      [3, 42, 6, 6, "right"],
    ]);
  });

  it("are two above and below an opening as wide as the panel", () => {
    expect(cuts(ROOF, box(24, 3, 48, 9))).toEqual([
      [2, 24, 24, 24, "both"],
      [3, 24, 24, 24, "both"],
    ]);
  });

  it("are counted from the start side, also where the farther one lies lower", () => {
    const zigzag = inInches([24, 0], [38, 0], [38, 6], [48, 6], [48, 12], [34, 12], [34, 6], [24, 6]);
    expect(cuts(ROOF, zigzag)).toEqual([
      [2, 24, 10, 10, "left"],
      [3, 38, 10, 10, "right"],
    ]);
    const stepped = inInches([36, 0], [72, 0], [72, 12], [0, 12], [0, 6], [36, 6]);
    expect(cuts(stepped).map((piece) => (piece as Cell[]).slice(0, 2))).toEqual([
      [1, 0],
      [2, 24],
    ]);
  });
});

describe("the ends of a course", () => {
  /** Starter's cover, whole panels, cut pieces, and the closing piece. */
  const ends = (outline: Matrix, opening?: Matrix): unknown[] =>
    rows(outline, opening)
      .slice(0, 1)
      .map((row) => [row[2], row[4], row[5], row[7]]);

  it("are whole panels where those are outermost", () => {
    expect(ends(ROOF)).toEqual([[24, 3, 0, 24]]);
    expect(ends(box(0, 0, 73, 12))).toEqual([[24, 3, 1, 1]]);
    expect(ends(box(0, 0, 96, 12), box(30, 0, 42, 12))).toEqual([[24, 3, 2, 24]]);
  });

  it("are the outermost of several cut pieces", () => {
    expect(ends(box(0, 0, 31, 12), box(6, 0, 12, 12))).toEqual([[6, 0, 3, 7]]);
  });

  it("are absent where an opening covers the whole course, also as feet-and-inches text", () => {
    const [, middle] = rows(box(0, 0, 48, 36), box(0, 12, 48, 24), "left", true, true);
    expect(middle).toEqual([2, 1, "", "", 0, 0, 0, "", "", `1' 0"`, "", "", ""]);
  });

  it("count the pieces of their course that come from another piece's offcut", () => {
    const staggered = call("LAYOUT", box(0, 0, 60, 24), panel({ "stagger pattern": "1, 1/2" })) as Matrix;
    expect(staggered.slice(1).map((row) => [row[0], row[4], row[5], row[6]])).toEqual([
      [1, 2, 1, 0],
      [2, 2, 1, 1],
      ["total", 4, 2, 1],
    ]);
  });
});

describe("a layout as drawn", () => {
  const laid = (outline: Outline, start: LayoutStart, pattern = "1") =>
    layOut({ outline, openings: [] }, panelOf({ "stagger pattern": pattern }), start, true);
  const runs = (outline: Outline, start: LayoutStart, pattern?: string): unknown[] =>
    laid(outline, start, pattern).courses.map(({ wholeRuns }) =>
      wholeRuns.map(({ xIn, count }) => [Math.round(xIn * 1e6) / 1e6, count]),
    );

  it("has runs of whole panels where they lie on the face, from either side", () => {
    const face = rectangle(0, 0, 73 / 12, 1);
    expect([runs(face, LEFT), runs(face, RIGHT)]).toEqual([[[[0, 3]]], [[[1, 3]]]]);
    expect([runs(face, LEFT, "1/2"), runs(face, RIGHT, "1/2")]).toEqual([[[[12, 2]]], [[[13, 2]]]]);
    expect(runs(rectangle(0, 0, 20 / 12, 1), LEFT)).toEqual([[]]);
  });

  it("shows of each course what lies between two lines", () => {
    const courses = laid(rectangle(0, 0, 4, 14.5 / 12), LEFT).courses;
    expect(courses.map(({ lineIn, showsIn }) => [lineIn, showsIn])).toEqual([
      [0, 12],
      [12, 2.5],
    ]);
  });

  it("doesn't depend on the position of the face", () => {
    const hip = cornersOf([0, 0], [9, 0], [9, 5], [4, 5]);
    for (const start of [LEFT, RIGHT])
      expect(
        laid(
          hip.map(({ x, y }) => ({ x: x + 16, y: y + 8 })),
          start,
        ),
      ).toEqual(laid(hip, start));
  });
});

describe("stacked trapezoids", () => {
  const flank = (atLowIn: number, atHighIn: number, kind: EndKind = "slant"): Flank => ({
    atLowIn,
    atHighIn,
    kind,
  });
  const shape = (
    lowIn: number,
    highIn: number,
    near: Flank,
    far: Flank = flank(20, 20, "gable"),
  ): Trapezoid => ({
    lowIn,
    highIn,
    near,
    far,
  });
  const lower = shape(0, 4, flank(0, 1));

  it("are one where both flanks continue straight", () => {
    expect(joinStacked([lower, shape(4, 12, flank(1, 3))])).toEqual([shape(0, 12, flank(0, 3))]);
    expect(joinStacked([lower, shape(4, 6, flank(1, 1.5)), shape(6, 12, flank(1.5, 3))])).toEqual([
      shape(0, 12, flank(0, 3)),
    ]);
  });

  it.each([
    ["bends", shape(4, 12, flank(1, 2))],
    ["is of another kind", shape(4, 12, flank(1, 3, "opening"))],
    ["jumps", shape(4, 12, flank(2, 4))],
    ["goes on, but the other bends", shape(4, 12, flank(1, 3), flank(20, 18, "gable"))],
    ["goes on after a gap", shape(5, 13, flank(1, 3))],
  ])("are two where a flank %s", (_, upper) => {
    expect(joinStacked([lower, upper])).toEqual([lower, upper]);
  });
});
