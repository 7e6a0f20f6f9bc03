import {
  open,
  edit,
  shown,
  rowOf,
  trimOf,
  ordered,
  orderRow,
  errorsOn,
  RUNS,
  FEET,
  STOCKS,
  CLIPS,
  NAILS,
  NEEDED,
  WITH_WASTE,
  TO_ORDER,
} from "../../../support/takeoffSheet";
import { DEMO_TAKEOFF } from "../../../../src/sheets/newJob/demoTakeoffs";
import { takeoffPlan } from "../../../../src/sheets/newJob/takeoffPlan";
import { USUAL_NAMES } from "../../../../src/sheets/newJob/takeoffPlan";
import type { Cell } from "../../../../shared/cell";

// An edit of a whole takeoff takes a few tenths of a second, and a test makes many.
jest.setTimeout(30_000);

/**
 * US Army Engineer School Subcourse EN0069 Ed. A, Lesson 3 self-test: gable roof, 60 ft long, rafter line 11 ft 4 in,
 * overhang 2 ft. The question was read there; 1600 sq ft and 16 squares are worked out by hand: 2 x 60 x 13 1/3.
 */
describe("the takeoff of the published roof", () => {
  beforeAll(() => open(DEMO_TAKEOFF));

  it("shows no error anywhere", () => {
    expect(errorsOn(takeoffPlan(DEMO_TAKEOFF, USUAL_NAMES))).toEqual([]);
  });

  it("finds the published rafter and roof", () => {
    const north = rowOf("North");
    expect(shown(`J${north}`)).toBeCloseTo(13 + 1 / 3, 9);
    const total = rowOf("All planes");
    expect(shown(`K${total}`)).toBeCloseTo(1600, 9);
    expect(shown(`L${total}`)).toBeCloseTo(16, 9);
    expect(shown(`M${north}`)).toBe(
      "at or above the minimum of 3 in 12; steep: over 4 in 12 (OSHA 1926.500(b))",
    );
  });

  it("counts courses, top course and starters", () => {
    const north = rowOf("North", rowOf("All planes"));
    expect(["B", "C", "D", "E"].map((column) => shown(`${column}${north}`))).toEqual([
      14,
      expect.closeTo(4, 9),
      4,
      8,
    ]);
  });

  /**
   * Stock 120 in, lap 2 in. An eave of 720 in takes six whole pieces and one of 720 + 6 x 2 - 6 x 120 = 12 in; the two
   * short ones come from one stock length: 13. A gable of 160 in takes a whole one and one of 42 in; two of those to a stock
   * length: 4 + 2. Ridge: 6 whole ones and one of 12 in. Drip edge 10 in on center: 72 spaces, 73 nails an eave.
   */
  it("cuts trim from the fewest stock lengths, and counts clips and nails", () => {
    expect([RUNS, FEET, STOCKS, CLIPS, NAILS].map((column) => trimOf("eave starter", column))).toEqual([
      2,
      2 * (60 + 12 / 12),
      13,
      0,
      2 * 61,
    ]);
    expect([STOCKS, NAILS].map((column) => trimOf("drip edge", column))).toEqual([13, 2 * 73]);
    expect(trimOf("gable channel", FEET)).toBeCloseTo(4 * (13 + 1 / 3 + 2 / 12), 9);
    expect([STOCKS, CLIPS].map((column) => trimOf("gable channel", column))).toEqual([6, 4 * 15]);
    expect([FEET, STOCKS, CLIPS].map((column) => trimOf("ridge", column))).toEqual([61, 7, 2 * 61]);
    expect([STOCKS, NAILS].map((column) => trimOf("pipe flashing", column))).toEqual([1, 9]);
  });

  /**
   * A plane is 14 courses of 720 in. By hand: courses that start full have 30 pieces, the others 31, so 4 x 30 + 10 x 31 =
   * 430; the three 7 in starters and the three 7 in closings each share a panel with a 13 in piece of the other lock: 424.
   * Underlayment: 162 in up, (162 - 2) / 34, 5 courses of 722 in; (3610 - 4) / 796 = 4.5, 5 rolls a plane.
   * Two planes and 10 % spare: 932.8, so 933 panels, 94 packs of ten; a clip a panel; 60 + 122 trim clips. Nails: 122 + 146
   * along the eaves, 9 at the pipe, two for each of 933 + 182 clips.
   */
  it("orders whole packs", () => {
    expect(shown(`F${rowOf("North", rowOf("All planes"))}`)).toBe(424);
    expect([NEEDED, WITH_WASTE, TO_ORDER].map((column) => ordered("panels", column))).toEqual([848, 933, 94]);
    const lines = [
      "drip edge",
      "gable channel",
      "ridge",
      "hip",
      "panel clips",
      "trim clips",
      "nails",
      "underlayment",
    ];
    expect(lines.map((item) => ordered(item, NEEDED))).toEqual([
      13,
      6,
      7,
      0,
      933,
      182,
      122 + 146 + 9 + 2 * 1115,
      10,
    ]);
    expect(lines.map((item) => ordered(item, TO_ORDER))).toEqual([13, 6, 7, 0, 10, 2, 3, 10]);
    expect(ordered("ice barrier", TO_ORDER)).toBe("");
  });

  it("orders a trim by the piece, or in packs where the table of trims says what a pack holds", async () => {
    expect(["G", "H"].map((column) => ordered("ridge", column))).toEqual([7, "pieces"]);
    await edit("K17", 4, "Trims");
    expect(["G", "H"].map((column) => ordered("ridge", column))).toEqual([2, "packs"]);
    await edit("K17", null, "Trims");
  });

  /** By hand: 94 packs of ten at 1.9 lb; ridge 7 x 1 ft x 10 ft x 0.456192 lb per sq ft of 0.032 in aluminum. */
  it("weighs and prices the order, and says what it couldn't", () => {
    expect(ordered("panels", "J")).toBeCloseTo(1786, 9);
    expect(ordered("ridge", "J")).toBeCloseTo(7 * 10 * 0.456192, 9);
    expect([ordered("panels", "L"), ordered("ridge", "L")]).toEqual([94 * 73.5, 138.6]);
    const first = orderRow("ice barrier") + 2;
    const summary = (offset: number): Cell[] =>
      ["I", "L", "A"].map((column) => shown(`${column}${first + offset}`, "Order"));
    expect(summary(0)).toEqual(["Total, before tax", 8361.45, "every line that is ordered has a price"]);
    expect(summary(1)[0]).toBe("Weight of all (lb)");
    const weight = summary(1)[1] as number;
    // Drip edge 6 in and starter 5 in wide, 13 each; gable channel 8 in, 6; clips in whole boxes, nails 180 to the pound.
    const trim = (0.456192 * 10 * (13 * 6 + 13 * 5 + 6 * 8 + 7 * 12)) / 12;
    expect(weight).toBeCloseTo(1786 + trim + 1.5 + 0.02 * 1200 + 3000 / 180 + 300, 6);
    expect(summary(1)[2]).toBe("every line that is ordered has a weight");
    expect(summary(2)[1]).toBeCloseTo(weight / 1600, 9);
    expect(summary(3)).toEqual(["Pallets of panels", 4, ""]);
  });

  it("asks for the vents that the code does", () => {
    expect(shown(`C${rowOf("Net free vent area (sq in)")}`)).toBe((1200 * 144) / 150);
  });

  it("lists the cuts of one trim, with the runs they belong to", () => {
    const cut = (address: string): Cell => shown(address, "Trim cuts");
    expect(["A", "B", "C", "D"].map((column) => cut(`${column}16`))).toEqual([
      7,
      120,
      `1' 0" run 1, 1' 0" run 4`,
      96,
    ]);
    expect(cut("C23")).toBe("proved fewest");
    expect(["F", "G", "H"].map((column) => cut(`${column}11`))).toEqual([4, "eave South", 60]);
  });

  it("lists the starters of one gable edge", () => {
    const first = rowOf("first course");
    const rows = [1, 2, 3, 4].map((offset) =>
      ["A", "B", "C", "D", "E", "F"].map((column) => shown(`${column}${first + offset}`)),
    );
    expect(rows).toEqual([
      [1, 1, 22.5, 2.5, 25, 4],
      [2, 0.5, 10.5, 2.5, 13, 4],
      [3, 0.75, 16.5, 2.5, 19, 3],
      [4, 0.25, 4.5, 2.5, 7, 3],
    ]);
  });
});
