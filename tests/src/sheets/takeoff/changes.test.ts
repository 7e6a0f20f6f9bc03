import {
  open,
  edit,
  editAll,
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
  NEEDED,
  WITH_WASTE,
  TO_ORDER,
} from "../../../support/takeoffSheet";
import { DEMO_TAKEOFF } from "../../../../src/sheets/newJob/demoTakeoffs";
import { takeoffPlan } from "../../../../src/sheets/newJob/takeoffPlan";
import { USUAL_NAMES } from "../../../../src/sheets/newJob/takeoffPlan";
import { CellError } from "../../../../shared/cell";

// An edit of a whole takeoff takes a few tenths of a second, and a test makes many.
jest.setTimeout(30_000);

describe("a changed cell updates everything that depends on it", () => {
  beforeEach(() => open(DEMO_TAKEOFF));

  it("a steeper pitch: longer slope, more courses, trim and panels", async () => {
    const north = rowOf("North");
    await edit(`G${north}`, "12:12");
    expect(shown(`J${north}`)).toBeCloseTo(10 * Math.SQRT2 + 2, 9);
    expect(shown(`B${rowOf("North", rowOf("All planes"))}`)).toBe(17);
    expect(shown(`K${rowOf("All planes")}`)).toBeCloseTo(800 + 60 * (10 * Math.SQRT2 + 2), 6);
    const northPanels = shown(`F${rowOf("North", rowOf("All planes"))}`) as number;
    expect(northPanels).toBeGreaterThan(424);
    expect(ordered("panels", WITH_WASTE)).toBe(Math.ceil((424 + northPanels) * 1.1));
  });

  it("the panel sheet: a lower course, more of them", async () => {
    await edit("B5", 6, "Panel");
    expect(shown(`B${rowOf("North", rowOf("All planes"))}`)).toBe(27);
  });

  it("the panel sheet again: text with its unit, and what is left blank", async () => {
    await edit("B4", "2 ft", "Panel");
    expect(ordered("panels", WITH_WASTE)).toBe(933);
    const rows = Array.from({ length: 30 }, (_, index) => 6 + index);
    await editAll(Object.fromEntries(rows.map((row) => [`B${row}`, null])), "Panel");
    expect(errorsOn(takeoffPlan(DEMO_TAKEOFF, USUAL_NAMES))).toEqual([]);
    expect(trimOf("eave starter", STOCKS)).toBe(12);
    // Without setback and fold every cut leaves what another takes: 30 panels a course, 14 courses, two planes, 10 % spare.
    expect(ordered("panels", WITH_WASTE)).toBe(924);
  });

  it("a wrong value on the panel sheet is explained there and wherever it is used", async () => {
    await edit("B22", "long", "Panel");
    const sentence = expect.stringMatching(
      /^panel "trim stock length" takes a length in inches .*got "long"$/,
    ) as string;
    expect(shown("C22", "Panel")).toMatchObject({ code: "#VALUE!", message: sentence });
    expect(trimOf("eave starter", STOCKS)).toMatchObject({ code: "#VALUE!" });
    expect(ordered("eave starter", TO_ORDER)).toMatchObject({ code: "#VALUE!" });
  });

  it("an eave of 0, waste of 10, gable edges of -1: each gives an error or a warning", async () => {
    const north = rowOf("North");
    await edit(`I${north}`, -1);
    expect(shown(`M${north}`)).toBe("gable edges must be 0, 1 or 2");
    expect(trimOf("gable channel", STOCKS)).toBeInstanceOf(CellError);
    expect(trimOf("eave starter", STOCKS)).toBe(13);
    await edit(`I${north}`, 2);
    await edit(`D${orderRow("panels")}`, 10, "Order");
    expect(ordered("panels", WITH_WASTE)).toMatchObject({ message: "waste must be at most 1, got 10" });
    await edit(`C${north}`, 0);
    expect(shown(`K${north}`)).toMatchObject({ message: "eave must be more than 0 ft, got 0" });
  });

  it.each([
    ["eave", "C"],
    ["run", "F"],
  ])("a plane without its %s: no panels or rolls are ordered for half a roof", async (_, column) => {
    await edit(`${column}${rowOf("South")}`, null);
    expect(shown(`K${rowOf("South")}`)).toMatchObject({
      message: expect.stringMatching(/is missing/) as string,
    });
    expect(["panels", "underlayment"].map((item) => ordered(item, NEEDED))).toEqual([
      expect.any(CellError),
      expect.any(CellError),
    ]);
  });

  it("the only ridge with a length below 0 is refused, not left out", async () => {
    await edit(`C${rowOf("ridge", rowOf("4  Runs that trim follows"))}`, -60);
    expect(trimOf("ridge", STOCKS)).toMatchObject({ message: "lengths must be at least 0 ft, got -60" });
    expect(ordered("ridge", TO_ORDER)).toBeInstanceOf(CellError);
  });

  it("a chimney that lacks its pitch spoils the trim of chimneys, and no other", async () => {
    const row = rowOf("3  Chimneys and pipes") + 3;
    await edit(`B${row}`, "chimney");
    await edit(`C${row}`, 3);
    await edit(`D${row}`, 4);
    expect(trimOf("chimney side", STOCKS)).toBeInstanceOf(CellError);
    expect(["eave starter", "ridge"].map((trim) => trimOf(trim, STOCKS))).toEqual([13, 7]);
    await edit(`E${row}`, 9);
    expect(["chimney front", "chimney side", "chimney back"].map((trim) => trimOf(trim, FEET))).toEqual([
      3, 10, 3,
    ]);
  });

  it.each(["two", -1, 0.5])(
    "clipped edges of %p are no edges at all: the clips are an error",
    async (edges) => {
      await edit("E17", edges, "Trims");
      expect(trimOf("ridge", CLIPS)).toBeInstanceOf(CellError);
      await edit("E17", "2", "Trims");
      expect(trimOf("ridge", CLIPS)).toBe(122);
    },
  );

  /** 7 + 6 + 24 in level are 37 x 1.1333 = 41.9 in on the slope, more than one course of 36. */
  it("a wall typed as a tape's text counts, and one that is no length is refused", async () => {
    const wall = rowOf("Wall, to the wall line (in)");
    await edit(`C${wall - 1}`, 7);
    await edit(`C${wall}`, `6"`);
    expect(shown(`C${rowOf("Ice barrier, sheet (ft)")}`)).toBe(240);
    await edit(`C${wall}`, "thick");
    expect(ordered("ice barrier", TO_ORDER)).toBeInstanceOf(CellError);
  });

  it("two planes of the same name get a warning, and so does a name that no plane has", async () => {
    await edit(`A${rowOf("South")}`, "North");
    expect(shown(`M${rowOf("North")}`)).toBe("another plane has this name");
    const starters = rowOf("7  Starters for one gable edge, to cut and bend on the ground");
    await edit(`B${starters + 1}`, "West");
    expect(shown(`A${starters + 3}`)).toBe("no plane has this name");
  });

  it("a third plane: typed into a blank row, measured as text", async () => {
    const row = rowOf("South") + 1;
    await edit(`A${row}`, "Porch");
    await edit(`B${row}`, "triangle");
    await edit(`C${row}`, `12' 6"`);
    await edit(`E${row}`, "8-0");
    expect(shown(`K${row}`)).toBeCloseTo((12.5 * 8) / 2, 9);
    expect(shown(`K${rowOf("All planes")}`)).toBeCloseTo(1650, 9);
    expect(trimOf("eave starter", FEET)).toBeCloseTo(2 * 61 + 12.5 + 2 / 12, 9);
  });

  it("a gable edge fewer, picked from the drop-down as text", async () => {
    await edit(`I${rowOf("North")}`, "1");
    expect(trimOf("gable channel", RUNS)).toBe(3);
    expect(shown(`E${rowOf("North", rowOf("All planes"))}`)).toBe(4);
  });

  it("a half-filled row says what is missing, and a wrong cell says what is wrong", async () => {
    const north = rowOf("North");
    await edit(`G${north}`, null);
    expect(shown(`J${north}`)).toMatchObject({
      code: "#VALUE!",
      message: expect.stringMatching(/^pitch is missing/) as string,
    });
    await edit(`G${north}`, "steep");
    expect(shown(`J${north}`)).toMatchObject({
      message: expect.stringMatching(/^pitch takes a pitch .*got "steep"$/) as string,
    });
  });
});
