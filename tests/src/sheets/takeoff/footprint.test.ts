import {
  open,
  edit,
  shown,
  rowOf,
  trimOf,
  ordered,
  errorsOn,
  RUNS,
  FEET,
  STOCKS,
  NAILS,
  WITH_WASTE,
  TO_ORDER,
} from "../../../support/takeoffSheet";
import { DEMO_TAKEOFF } from "../../../../src/sheets/newJob/demoTakeoffs";
import { takeoffPlan } from "../../../../src/sheets/newJob/takeoffPlan";
import { USUAL_NAMES } from "../../../../src/sheets/newJob/takeoffPlan";
import type { TakeoffOptions } from "../../../../src/sheets/takeoff/takeoffOptions";
import type { Cell } from "../../../../shared/cell";
import { CellError } from "../../../../shared/cell";

// An edit of a whole takeoff takes a few tenths of a second, and a test makes many.
jest.setTimeout(30_000);

/** A 40 x 24 ft hip roof at 6 in 12, closed forms: ridge 40 - 24, hips 12 x 1.5, faces 336 and 144 sq ft on plan. */
describe("a takeoff from a footprint", () => {
  const HIP: TakeoffOptions = {
    ...DEMO_TAKEOFF,
    planes: [],
    runs: [],
    roof: {
      corners: [
        [0, 0],
        [40, 0],
        [40, 24],
        [0, 24],
      ],
      pitch: "6:12",
      gables: [],
    },
  };
  const factor = Math.sqrt(1.25);

  beforeEach(() => open(HIP));

  it("shows no error on any sheet", () => {
    expect(errorsOn(takeoffPlan(HIP, USUAL_NAMES))).toEqual([]);
  });

  it("lists the roof's planes in the plane table", () => {
    const [first, last] = [rowOf("Plane 1"), rowOf("Plane 4")];
    expect(shown(`C${first}`)).toBeCloseTo(40, 9);
    expect(shown(`J${first}`)).toBeCloseTo(12 * factor, 9);
    expect([first, first + 1, first + 2, last].map((row) => shown(`K${row}`))).toEqual(
      [336, 144, 336, 144].map((plan) => expect.closeTo(plan * factor, 9) as number),
    );
    expect(shown(`K${rowOf("All planes")}`)).toBeCloseTo(960 * factor, 9);
    expect(shown(`A${last + 1}`)).toBe("");
  });

  /**
   * Stock 120 in, lap 2 in: a ridge of 192 in is a whole piece and one of 74; a hip of 216 in a whole one and one of 98: each
   * of those takes a stock length. Eaves of 480 and 288 in: 4 whole and 8 in, 2 whole and 52 in: the four fit one.
   */
  it("turns the roof's edges into trim", () => {
    const totals = (trim: string): Cell[] => [FEET, STOCKS].map((column) => trimOf(trim, column));
    expect(totals("ridge")).toEqual([expect.closeTo(16 + 2 / 12, 9), 2]);
    expect(totals("hip")).toEqual([expect.closeTo(4 * (18 + 2 / 12), 9), 8]);
    expect(totals("eave starter")).toEqual([expect.closeTo(128 + (2 * 4 + 2 * 2) * (2 / 12), 9), 13]);
    expect(totals("gable channel")).toEqual([0, 0]);
    expect(trimOf("eave starter", NAILS)).toBe(2 * 41 + 2 * 25);
  });

  it("lays every plane and orders the panels", () => {
    const laid = [1, 2, 3, 4].map(
      (plane) => shown(`F${rowOf(`Plane ${plane}`, rowOf("All planes"))}`) as number,
    );
    expect(laid[0]).toBe(laid[2]);
    expect(laid[1]).toBe(laid[3]);
    expect((laid[0] ?? 0) * 2).toBeGreaterThan(336 * factor);
    expect(ordered("panels", WITH_WASTE)).toBe(Math.ceil(laid.reduce((sum, each) => sum + each, 0) * 1.1));
  });

  it("moves wholly when one number of the footprint changes", async () => {
    await edit("B11", 50, "Roof");
    await edit("B12", 50, "Roof");
    expect(shown(`K${rowOf("All planes")}`)).toBeCloseTo(50 * 24 * factor, 9);
    expect(trimOf("ridge", FEET)).toBeCloseTo(26 + 2 * (2 / 12), 9);
  });

  it("takes gable ends, overhangs and a pitch of its own for a side", async () => {
    await edit("D11", "yes", "Roof");
    await edit("D13", "yes", "Roof");
    expect(trimOf("ridge", FEET)).toBeCloseTo(40 + 4 * (2 / 12), 9);
    expect(trimOf("gable channel", FEET)).toBeCloseTo(4 * (12 * factor + 2 / 12), 9);
    expect(shown(`I${rowOf("Plane 1")}`)).toBe(2);
    await edit("B5", `1' 0"`, "Roof");
    expect(shown(`K${rowOf("All planes")}`)).toBeCloseTo(42 * 26 * factor, 9);
    await edit("E10", 12, "Roof");
    expect(shown(`G${rowOf("Plane 1")}`)).toBe(12);
  });

  it("meets planes measured by hand in the same table", async () => {
    const hand = rowOf("All planes") - 4;
    await edit(`A${hand}`, "Porch");
    await edit(`B${hand}`, "rectangle");
    await edit(`C${hand}`, 10);
    await edit(`E${hand}`, 8);
    expect(shown(`K${rowOf("All planes")}`)).toBeCloseTo(960 * factor + 80, 9);
    expect(trimOf("eave starter", RUNS)).toBe(5);
    expect(trimOf("eave starter", STOCKS)).toBe(14);
  });

  it("counts sides on past the blank row of a courtyard, for gables and own pitches", async () => {
    const court = [
      [10, 8],
      [14, 8],
      [14, 12],
      [10, 12],
    ];
    for (const [index, [x, y]] of court.entries()) {
      await edit(`B${15 + index}`, x ?? 0, "Roof");
      await edit(`C${15 + index}`, y ?? 0, "Roof");
    }
    expect([10, 13, 14, 15, 18].map((row) => shown(`A${row}`, "Roof"))).toEqual([1, 4, "", 5, 8]);
    await edit("E15", 5, "Roof");
    expect(shown(`G${rowOf("Plane 5")}`)).toBe(5);
    expect(shown(`K${rowOf("All planes")}`)).not.toBeInstanceOf(CellError);
  });

  it("tells an eave step from a gable, and says that no trim takes it", async () => {
    await edit("B5", 1, "Roof");
    await edit("E10", 8, "Roof");
    await edit("E12", 8, "Roof");
    expect(shown(`I${rowOf("Plane 1")}`)).toBe(0);
    expect(trimOf("gable channel", RUNS)).toBe(0);
    const check = rowOf("ridge", rowOf("5  Trim and its fasteners")) + 4;
    expect(shown(`A${check}`)).toBe(
      "4 runs have no trim: check the edge, or add a trim that follows it on the Trims sheet",
    );
    const ownTrim = 5 + 13;
    await edit(`A${ownTrim}`, "step flashing", "Trims");
    await edit(`B${ownTrim}`, "eave step", "Trims");
    expect(shown(`A${check}`)).toBe("");
    expect(trimOf("step flashing", RUNS)).toBe(4);
    expect(ordered("step flashing", TO_ORDER)).toBeGreaterThan(0);
  });

  it("says when corners stand below the rows that are read", async () => {
    expect(shown("A7", "Roof")).toBe("");
    await edit("B34", 5, "Roof");
    expect(shown("A7", "Roof")).toMatch(/^Corners below row 33 are not read/);
  });

  it("works the roof out before the panel is described", async () => {
    await open({ ...HIP, panel: {} });
    expect(shown(`K${rowOf("All planes")}`)).toBeCloseTo(960 * factor, 9);
    expect(shown("I10", "Roof")).toBe(1);
  });

  it("lets no error of the roof pass for a roof without trim", async () => {
    await edit("B11", "wide", "Roof");
    expect(shown(`K${rowOf("All planes")}`)).toBeInstanceOf(CellError);
    expect(trimOf("ridge", RUNS)).toBeInstanceOf(CellError);
    expect(ordered("eave starter", TO_ORDER)).toBeInstanceOf(CellError);
  });
});
