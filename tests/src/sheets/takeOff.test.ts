import { CellError, type Cell } from "../../../shared/cell";
import { createHeadlessEngine, type HeadlessEngine } from "../../../src/hosts/local/headless";
import { localCatalogue } from "../../../src/hosts/local/catalogue";
import { a1 } from "../../../src/sheets/address";
import { DEMO_TAKE_OFF } from "../../../src/sheets/takeOff/demo";
import { BLANK_TAKE_OFF, type TakeOffOptions } from "../../../src/sheets/takeOff/options";
import { placeOf } from "../../support/place";
import { takeOffPlan, USUAL_NAMES } from "../../../src/sheets/takeOff/takeOff";

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

  /** Stock 120 in, lap 2 in: eave 720 in: (720-2)/118 = 6.08, 7 pieces; gable 160 in: 158/118 = 1.3, 2 pieces. */
  it("counts trim, clips and nails", () => {
    const eave = rowOf("All eave");
    expect(["E", "F", "H"].map((column) => shown(`${column}${eave}`))).toEqual([
      2 * (60 + 12 / 12),
      14,
      2 * 61,
    ]);
    const gable = rowOf("All gable");
    expect(shown(`E${gable}`)).toBeCloseTo(4 * (13 + 1 / 3 + 2 / 12), 9);
    expect(["F", "G"].map((column) => shown(`${column}${gable}`))).toEqual([8, 4 * 15]);
    const ridge = rowOf("All ridge");
    expect(["E", "F", "G"].map((column) => shown(`${column}${ridge}`))).toEqual([61, 7, 61]);
  });

  /**
   * A plane is 14 courses of 720 in. By hand: courses that start full have 30 pieces, the others 31, so 4 x 30 + 10 x 31 =
   * 430; the three 7 in starters and the three 7 in closings each share a panel with a 13 in piece of the other lock: 424.
   * Underlayment: 162 in up, (162 - 2) / 34, 5 courses of 722 in; (3610 - 4) / 796 = 4.5, 5 rolls a plane.
   * Two planes and 10 % spare: 932.8, so 933 panels, 94 packs of ten; a clip a panel; 121 trim clips.
   */
  it("orders whole packs", () => {
    expect(shown(`F${rowOf("North", rowOf("All planes"))}`)).toBe(424);
    const orders = rowOf("Panels");
    const column = (letter: string): Cell[] =>
      Array.from({ length: 11 }, (_, offset) => shown(`${letter}${orders + offset}`));
    expect(column("A")).toEqual([
      "Panels",
      "Eave trim",
      "Gable trim",
      "Ridge trim",
      "Hip trim",
      "Valley trim",
      "Pitch break trim",
      "Underlayment",
      "Panel clips",
      "Trim clips",
      "Eave nails",
    ]);
    expect(column("B")).toEqual([933, 14, 8, 7, 0, 0, 0, 10, 933, 121, 122]);
    expect(column("E")).toEqual([94, 14, 8, 7, 0, 0, 0, 10, 10, 2, 2]);
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
    expect(shown(`B${rowOf("Panels")}`)).toBe(Math.ceil((424 + northPanels) * 1.1));
  });

  it("the panel sheet: a lower course, more of them", async () => {
    await edit("B5", 6, "Panel");
    expect(shown(`B${rowOf("North", rowOf("All planes"))}`)).toBe(27);
  });

  it("the panel sheet again: text with its unit, and what is left blank", async () => {
    await edit("B4", "2 ft", "Panel");
    expect(shown(`B${rowOf("Panels")}`)).toBe(933);
    for (let row = 6; row <= 28; row++) await edit(`B${row}`, null, "Panel");
    expect(errorsOn(takeOffPlan(DEMO_TAKE_OFF, USUAL_NAMES))).toEqual([]);
    expect(shown(`F${rowOf("All eave")}`)).toBe(12);
    // Without setback and fold every cut leaves what another takes: 30 panels a course, 14 courses, two planes, 10 % spare.
    expect(shown(`E${rowOf("Panels")}`)).toBe(924);
  });

  it("a wrong value on the panel sheet is explained there and wherever it is used", async () => {
    await edit("B22", "long", "Panel");
    const sentence = expect.stringMatching(
      /^panel "trim stock length" takes a length in inches .*got "long"$/,
    ) as string;
    expect(engine.getCell(at("C22", "Panel"))).toMatchObject({ code: "#VALUE!", message: sentence });
    expect(shown(`F${rowOf("eave North")}`)).toMatchObject({ code: "#VALUE!", message: sentence });
  });

  it("an eave of 0, waste of 10, gable edges of -1: none passes in silence", async () => {
    const north = rowOf("North");
    await edit(`I${north}`, -1);
    expect(shown(`M${north}`)).toBe("gable edges must be 0, 1 or 2");
    expect(shown(`E${rowOf("All gable")}`)).toBeInstanceOf(CellError);
    await edit(`I${north}`, 2);
    await edit(`G${rowOf("Panels")}`, 10);
    expect(shown(`B${rowOf("Panels")}`)).toMatchObject({ message: "waste must be at most 1, got 10" });
    await edit(`C${north}`, 0);
    expect(shown(`K${north}`)).toMatchObject({ message: "eave must be more than 0 ft, got 0" });
  });

  it("two planes of one name are pointed out, and so is a name that no plane bears", async () => {
    await edit(`A${rowOf("South")}`, "North");
    expect(shown(`M${rowOf("North")}`)).toBe("another plane bears this name");
    const starters = rowOf("5  Starters for one gable edge, to cut and bend on the ground");
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
    expect(shown(`E${rowOf("All eave")}`)).toBeCloseTo(2 * 61 + 12.5 + 2 / 12, 9);
  });

  it("a gable edge fewer, picked from the drop-down as text", async () => {
    await edit(`I${rowOf("North")}`, "1");
    expect(shown(`F${rowOf("All gable")}`)).toBe(6);
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

  /** Stock 120 in, lap 2 in: a ridge of 192 in takes 2, a hip of 216 in 2, eaves of 480 and 288 in 5 and 3. */
  it("turns the roof's edges into trim", () => {
    const totals = (kind: string): Cell[] =>
      ["E", "F"].map((column) => shown(`${column}${rowOf(`All ${kind}`)}`));
    expect(totals("ridge")).toEqual([expect.closeTo(16 + 2 / 12, 9), 2]);
    expect(totals("hip")).toEqual([expect.closeTo(4 * (18 + 2 / 12), 9), 8]);
    expect(totals("eave")).toEqual([expect.closeTo(128 + (2 * 4 + 2 * 2) * (2 / 12), 9), 16]);
    expect(totals("gable")).toEqual([0, 0]);
    expect(shown(`H${rowOf("All eave")}`)).toBe(2 * 41 + 2 * 25);
  });

  it("lays every plane and orders the panels", () => {
    const laid = [1, 2, 3, 4].map(
      (plane) => shown(`F${rowOf(`Plane ${plane}`, rowOf("All planes"))}`) as number,
    );
    expect(laid[0]).toBe(laid[2]);
    expect(laid[1]).toBe(laid[3]);
    expect((laid[0] ?? 0) * 2).toBeGreaterThan(336 * factor);
    expect(shown(`B${rowOf("Panels")}`)).toBe(Math.ceil(laid.reduce((sum, each) => sum + each, 0) * 1.1));
  });

  it("moves wholly when one number of the footprint changes", async () => {
    await edit("B11", 50, "Roof");
    await edit("B12", 50, "Roof");
    expect(shown(`K${rowOf("All planes")}`)).toBeCloseTo(50 * 24 * factor, 9);
    expect(shown(`E${rowOf("All ridge")}`)).toBeCloseTo(26 + 2 * (2 / 12), 9);
  });

  it("takes gable ends, overhangs and a pitch of its own for a side", async () => {
    await edit("D11", "yes", "Roof");
    await edit("D13", "yes", "Roof");
    expect(shown(`E${rowOf("All ridge")}`)).toBeCloseTo(40 + 4 * (2 / 12), 9);
    expect(shown(`E${rowOf("All gable")}`)).toBeCloseTo(4 * (12 * factor + 2 / 12), 9);
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
    expect(shown(`F${rowOf("All eave")}`)).toBe(17);
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

  it("orders what a pitch break takes, and tells an eave step from a gable", async () => {
    await edit("B5", 1, "Roof");
    await edit("E10", 8, "Roof");
    await edit("E12", 8, "Roof");
    expect(shown(`I${rowOf("Plane 1")}`)).toBe(0);
    expect(shown(`F${rowOf("All gable")}`)).toBe(0);
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
    for (const label of ["All planes", "All ridge", "All eave"])
      expect(shown(`${label === "All planes" ? "K" : "F"}${rowOf(label)}`)).toBeInstanceOf(CellError);
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
      { ...DEMO_TAKE_OFF, job: "=1+1", notes: ["=cmd"], runs: [{ kind: "ridge", name: "=A1", length: 5 }] },
      USUAL_NAMES,
    );
    const formulas = plan.sheets.flatMap(({ cells }) =>
      cells.flatMap(({ content }) => (content?.kind === "formula" ? [content.formula] : [])),
    );
    expect(formulas.filter((each) => each === "=1+1" || each === "=cmd" || each === "=A1")).toEqual([]);
  });
});
