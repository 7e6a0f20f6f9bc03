import type { Matrix } from "../../../shared/cell";
import { call, callForNumber } from "../../support/call";

/** Common practice, no published source. */
const PANEL: Matrix = [
  ["exposed width", 24],
  ["exposed height", 12],
  ["gable setback", 1.5],
  ["gable fold", 2.5],
  ["lock flange gain", 1],
];
const GABLE: Matrix = [
  [0, 0],
  [30, 0],
  [30, 20],
  [0, 20],
];

const layoutRows = (panel: Matrix): Matrix =>
  call("LAYOUT", GABLE, panel, undefined, "left", true, false, false) as Matrix;

describe("a 20 ft gable, 24 x 12 in, four-course stagger", () => {
  const rows = layoutRows(PANEL).slice(0, 20);

  it("has starters that cover 22 1/2, 10 1/2, 16 1/2 and 4 1/2 in, five of each", () => {
    const covers = rows.map((row) => row[2]);
    for (const cover of [22.5, 10.5, 16.5, 4.5])
      expect(covers.filter((each) => each === cover)).toHaveLength(5);
    expect(covers.slice(0, 4)).toEqual([22.5, 10.5, 16.5, 4.5]);
  });

  it("cuts the three-quarter blank to 19 in and the full blank to 25 in, the panel with its side lock opened flat", () => {
    expect(rows.slice(0, 4).map((row) => row[3])).toEqual([25, 13, 19, 7]);
    expect(rows.every((row) => row[8] === "")).toBe(true);
  });

  it("warns that no panel is wide enough for the full blank if opening the lock adds no width", () => {
    const warned = layoutRows(PANEL.filter(([label]) => label !== "lock flange gain"));
    expect(warned[0]?.[8]).toBe(
      "piece 1 needs a blank of 25 in, more than the 24 in that a panel gives; " +
        "piece 15 needs a blank of 25 in, more than the 24 in that a panel gives",
    );
    expect(warned[1]?.[8]).toBe("");
    expect(warned[20]?.[8]).toBe("10 warnings");
  });

  it("counts 20 courses and a total row, by hand", () => {
    // Full courses: 2 gable pieces and 13 whole; the others: 2 gable pieces and 14 whole.
    expect(layoutRows(PANEL)).toHaveLength(21);
    expect(layoutRows(PANEL)[20]).toEqual(["total", "", "", "", 5 * 13 + 15 * 14, 40, 10, "", ""]);
    // Starters and closing pieces of 25, 13, 19 and 7 in, five of each: only a 7 shares a panel, and there are ten.
    expect(callForNumber("PANELCOUNT", GABLE, PANEL)).toBe(275 + 40 - 10);
  });

  it("cuts a 7 in starter and a 13 in closing piece from one panel, not two of 13", () => {
    // Ten pairs out of ten pieces of 7 in and ten of 13: 13 + 13 = 26 don't fit, so each 7 goes with a 13.
    const list = call("CUTLIST", GABLE, PANEL, undefined, "left", true, false, false) as Matrix;
    const offcuts = list.filter((row) => String(row[7]).startsWith("off-cut"));
    const widths = offcuts.map((row) => {
      const opener = list.find((each) => `off-cut of ${String(each[7])}` === row[7]);
      return [Number(opener?.[4]), Number(row[4])].sort((a, b) => a - b);
    });
    expect(widths).toEqual(Array.from({ length: 10 }, () => [7, 13]));
  });
});
