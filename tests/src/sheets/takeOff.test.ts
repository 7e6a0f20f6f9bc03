import { CellError, type Cell } from "../../../shared/cell";
import { createHeadlessEngine, type HeadlessEngine } from "../../../src/hosts/local/headless";
import { localCatalogue } from "../../../src/hosts/local/catalogue";
import { a1 } from "../../../src/sheets/address";
import { DEMO_TAKE_OFF } from "../../../src/sheets/takeOff/demo";
import { BLANK_TAKE_OFF, type TakeOffOptions } from "../../../src/sheets/takeOff/options";
import { placeOf } from "../../support/place";
import { takeOffPlan, USUAL_NAMES } from "../../../src/sheets/takeOff/takeOff";

// An edit of a whole take-off takes a few tenths of a second, and a test makes many.
jest.setTimeout(30_000);

let engine: HeadlessEngine;

const SHEET = "Take-off";

const at = (address: string, sheet = SHEET) => ({ sheet, ...placeOf(address) });

const shown = (address: string): Cell => engine.getCell(at(address));

const open = async (options: TakeOffOptions): Promise<void> => {
  engine = createHeadlessEngine(localCatalogue, takeOffPlan(options, USUAL_NAMES));
  await engine.calculated();
};

const edit = async (address: string, content: string | number | null, sheet = SHEET): Promise<void> => {
  engine.setCell(at(address, sheet), content);
  await engine.calculated();
};

/** The row, as a person reads it, of the first cell in column A that shows this text, at or below a row. */
const rowOf = (label: string, from = 1): number => {
  for (let row = from; row < 200; row++) if (shown(`A${row}`) === label) return row;
  throw new Error(`no row is labelled ${label}`);
};

/** A row of the trim table: what a trim comes to. */
const trimOf = (trim: string, column: string): Cell =>
  shown(`${column}${rowOf(trim, rowOf("5  Trim and its fasteners"))}`);
const [RUNS, FEET, STOCKS, CLIPS, NAILS] = ["E", "F", "G", "H", "I"] as const;

/** A line of the order. */
const ordered = (item: string, column: string): Cell => {
  for (let row = 5; row < 60; row++)
    if (engine.getCell(at(`A${row}`, "Order")) === item)
      return engine.getCell(at(`${column}${row}`, "Order"));
  throw new Error(`nothing on the order is ${item}`);
};
const [NEEDED, WITH_WASTE, TO_ORDER] = ["C", "E", "G"] as const;

const orderRow = (item: string): number => {
  for (let row = 5; row < 60; row++) if (engine.getCell(at(`A${row}`, "Order")) === item) return row;
  throw new Error(`nothing on the order is ${item}`);
};

const errorsOn = (plan: ReturnType<typeof takeOffPlan>): string[] =>
  plan.sheets.flatMap(({ name, cells }) =>
    cells.flatMap((cell) => {
      const value = engine.getCell({ sheet: name, row: cell.row, column: cell.column });
      return value instanceof CellError ? [`${name}!${a1(cell)} ${value.code} ${value.message}`] : [];
    }),
  );

/**
 * US Army Engineer School Subcourse EN0069 Ed. A, Lesson 3 self-test: gable roof, 60 ft long, rafter line 11 ft 4 in,
 * overhang 2 ft. The question was read there; 1600 sq ft and 16 squares are worked out by hand: 2 x 60 x 13 1/3.
 */
describe("the take-off of the published roof", () => {
  beforeAll(() => open(DEMO_TAKE_OFF));

  it("shows no error anywhere", () => {
    expect(errorsOn(takeOffPlan(DEMO_TAKE_OFF, USUAL_NAMES))).toEqual([]);
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
   * length: 4 + 2. Ridge: 6 whole ones and one of 12 in. Drip edge 10 in on centre: 72 spaces, 73 nails an eave.
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
      ["I", "L", "A"].map((column) => engine.getCell(at(`${column}${first + offset}`, "Order")));
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
    const cut = (address: string): Cell => engine.getCell(at(address, "Trim cuts"));
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

describe("a changed cell moves everything", () => {
  beforeEach(() => open(DEMO_TAKE_OFF));

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
    for (let row = 6; row <= 35; row++) await edit(`B${row}`, null, "Panel");
    expect(errorsOn(takeOffPlan(DEMO_TAKE_OFF, USUAL_NAMES))).toEqual([]);
    expect(trimOf("eave starter", STOCKS)).toBe(12);
    // Without setback and fold every cut leaves what another takes: 30 panels a course, 14 courses, two planes, 10 % spare.
    expect(ordered("panels", WITH_WASTE)).toBe(924);
  });

  it("a wrong value on the panel sheet is explained there and wherever it is used", async () => {
    await edit("B22", "long", "Panel");
    const sentence = expect.stringMatching(
      /^panel "trim stock length" takes a length in inches .*got "long"$/,
    ) as string;
    expect(engine.getCell(at("C22", "Panel"))).toMatchObject({ code: "#VALUE!", message: sentence });
    expect(trimOf("eave starter", STOCKS)).toMatchObject({ code: "#VALUE!" });
    expect(ordered("eave starter", TO_ORDER)).toMatchObject({ code: "#VALUE!" });
  });

  it("an eave of 0, waste of 10, gable edges of -1: none passes in silence", async () => {
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

  it("two planes of one name are pointed out, and so is a name that no plane bears", async () => {
    await edit(`A${rowOf("South")}`, "North");
    expect(shown(`M${rowOf("North")}`)).toBe("another plane bears this name");
    const starters = rowOf("7  Starters for one gable edge, to cut and bend on the ground");
    await edit(`B${starters + 1}`, "West");
    expect(shown(`A${starters + 3}`)).toBe("no plane bears this name");
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

/** A 40 x 24 ft hip roof at 6 in 12, closed forms: ridge 40 - 24, hips 12 x 1.5, faces 336 and 144 sq ft on plan. */
describe("a take-off from a footprint", () => {
  const HIP: TakeOffOptions = {
    ...DEMO_TAKE_OFF,
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
    expect(errorsOn(takeOffPlan(HIP, USUAL_NAMES))).toEqual([]);
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
    expect([10, 13, 14, 15, 18].map((row) => engine.getCell(at(`A${row}`, "Roof")))).toEqual([
      1,
      4,
      "",
      5,
      8,
    ]);
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
      "4 runs take no trim: check the edge, or let a trim of the Trims sheet follow it",
    );
    const ownTrim = 5 + 13;
    await edit(`A${ownTrim}`, "step flashing", "Trims");
    await edit(`B${ownTrim}`, "eave step", "Trims");
    expect(shown(`A${check}`)).toBe("");
    expect(trimOf("step flashing", RUNS)).toBe(4);
    expect(ordered("step flashing", TO_ORDER)).toBeGreaterThan(0);
  });

  it("says when corners stand below the rows that are read", async () => {
    expect(engine.getCell(at("A7", "Roof"))).toBe("");
    await edit("B34", 5, "Roof");
    expect(engine.getCell(at("A7", "Roof"))).toMatch(/^Corners below row 33 are not read/);
  });

  it("works the roof out before the panel is described", async () => {
    await open({ ...HIP, panel: {} });
    expect(shown(`K${rowOf("All planes")}`)).toBeCloseTo(960 * factor, 9);
    expect(engine.getCell(at("I10", "Roof"))).toBe(1);
  });

  it("lets no error of the roof pass for a roof without trim", async () => {
    await edit("B11", "wide", "Roof");
    expect(shown(`K${rowOf("All planes")}`)).toBeInstanceOf(CellError);
    expect(trimOf("ridge", RUNS)).toBeInstanceOf(CellError);
    expect(ordered("eave starter", TO_ORDER)).toBeInstanceOf(CellError);
  });
});

describe("what may be forgotten is said on the order", () => {
  beforeEach(() => open(DEMO_TAKE_OFF));

  const warned = (): Cell => engine.getCell(at("A3", "Order"));
  const runs = (): number => rowOf("4  Runs that trim follows");

  it("says nothing where nothing is", () => {
    expect(warned()).toBe("");
  });

  it("a run of an edge that no trim follows", async () => {
    const ridge = rowOf("ridge", runs());
    await edit(`B${ridge + 1}`, "rigde");
    await edit(`C${ridge + 1}`, 60);
    expect(warned()).toBe("1 run takes no trim: check the edge, or let a trim of the Trims sheet follow it");
  });

  it("planes without a ridge or hip", async () => {
    await edit(`C${rowOf("ridge", runs())}`, null);
    expect(warned()).toBe(
      "planes are measured by hand, and no ridge or hip has a length: are all edges typed?",
    );
  });

  it("a chimney that isn't called one, and a pipe with a space too many", async () => {
    const pipe = rowOf("vent pipe");
    await edit(`B${pipe}`, "pipe ");
    await edit(`C${pipe + 1}`, 3);
    expect(warned()).toBe("2 rows of chimneys and pipes say neither, and are not counted");
  });

  it("a trim that follows nothing", async () => {
    await edit("B5", "eaves", "Trims");
    expect(warned()).toBe("1 trim follows no edge, and comes to nothing");
    await edit("B5", null, "Trims");
    expect(warned()).toBe("1 trim follows no edge, and comes to nothing");
    expect(trimOf("drip edge", STOCKS)).toBe(0);
  });

  it("panels without clips", async () => {
    await edit("B18", null, "Panel");
    expect(warned()).toBe("the panel sheet gives no clips per panel: none are ordered");
  });

  it("a weight or a price below zero, by the item's name", async () => {
    await edit(`I${orderRow("foam backers")}`, -2, "Order");
    await edit(`K${orderRow("underlayment")}`, -0.01, "Order");
    expect(warned()).toBe("foam backers: the weight is negative; underlayment: the price is negative");
    await edit(`I${orderRow("foam backers")}`, "about 2", "Order");
    await edit(`K${orderRow("underlayment")}`, 0, "Order");
    expect(warned()).toBe("");
  });

  it("an order that a shaded cell makes an error, by the item's name", async () => {
    await edit(`D${orderRow("underlayment")}`, 10, "Order");
    expect(warned()).toBe("underlayment: what to order is an error");
  });

  it("a line that is an error, which no total counts", async () => {
    await edit(`C${rowOf("ridge", runs())}`, "long");
    expect(warned()).toMatch(
      /^ridge: what to order is an error; trim clips: what to order is an error; nails: what to order is an error/,
    );
    expect(engine.getCell(at(`A${orderRow("ice barrier") + 2}`, "Order"))).toBe(
      "lines with an error are not counted",
    );
  });
});

describe("the table of trims", () => {
  beforeEach(() => open(DEMO_TAKE_OFF));

  it("keeps a trim's price and pack with it when rows change places", async () => {
    const row = (of: number): Cell[] =>
      ["A", "B", "E", "G", "I", "L"].map((column) => engine.getCell(at(`${column}${of}`, "Trims")));
    const [gable, ridge] = [row(8), row(17)];
    for (const [index, column] of ["A", "B", "E", "G", "I", "L"].entries()) {
      await edit(`${column}8`, ridge[index] as string | number, "Trims");
      await edit(`${column}17`, gable[index] as string | number, "Trims");
    }
    expect(ordered("ridge", "L")).toBe(138.6);
    expect(ordered("gable channel", "L")).toBe(97.2);
  });

  it("cuts no piece shorter than the panel sheet allows", async () => {
    const ridge = rowOf("ridge", rowOf("4  Runs that trim follows"));
    await edit(`C${ridge}`, `10' 0 1/4"`);
    await edit("B7", "ridge", "Trim cuts");
    expect(engine.getCell(at("C11", "Trim cuts"))).toBe(`0' 2 1/4" run 25`);
    await edit("B33", 12, "Panel");
    expect(engine.getCell(at("C11", "Trim cuts"))).toBe(`1' 0" run 25`);
  });

  it("takes a flashing for each pipe, whatever else follows pipes", async () => {
    await edit("A18", "boot", "Trims");
    await edit("B18", "pipe", "Trims");
    await edit("C18", 24, "Trims");
    expect(ordered("boot", TO_ORDER)).toBe(1);
  });
});

describe("an empty take-off", () => {
  beforeEach(() => open(BLANK_TAKE_OFF));

  it("is quiet", () => {
    expect(errorsOn(takeOffPlan(BLANK_TAKE_OFF, USUAL_NAMES))).toEqual([]);
  });

  it("asks for the panel as soon as a plane is measured", async () => {
    const row = 6;
    await edit(`A${row}`, "Main");
    await edit(`B${row}`, "rectangle");
    await edit(`C${row}`, 30);
    await edit(`E${row}`, 20);
    const courses = shown(`B${rowOf("Main", row + 1)}`);
    expect(courses).toMatchObject({
      code: "#VALUE!",
      message: expect.stringMatching(/^exposure is missing/) as string,
    });
  });
});

describe("the plan", () => {
  it("never formats a formula as text, which a spreadsheet would then show instead of its result", () => {
    for (const { cells } of takeOffPlan(DEMO_TAKE_OFF, USUAL_NAMES).sheets)
      for (const { content, numberFormat } of cells)
        expect(content?.kind === "formula" && numberFormat === "@").toBe(false);
  });

  it.each([
    ["blank", BLANK_TAKE_OFF],
    ["demo", DEMO_TAKE_OFF],
  ])("puts one thing in one cell: %s", (_, options) => {
    for (const { cells } of takeOffPlan(options, USUAL_NAMES).sheets) {
      const places = cells.map((cell) => a1(cell));
      expect(new Set(places).size).toBe(places.length);
    }
  });

  it("keeps what a person typed as text", () => {
    const plan = takeOffPlan(
      { ...DEMO_TAKE_OFF, job: "=1+1", notes: ["=cmd"], runs: [{ edge: "ridge", name: "=A1", length: 5 }] },
      USUAL_NAMES,
    );
    const formulas = plan.sheets.flatMap(({ cells }) =>
      cells.flatMap(({ content }) => (content?.kind === "formula" ? [content.formula] : [])),
    );
    expect(formulas.filter((each) => each === "=1+1" || each === "=cmd" || each === "=A1")).toEqual([]);
  });
});
