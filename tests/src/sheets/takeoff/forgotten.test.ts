import { a1 } from "../../../../src/workbook/address";
import {
  open,
  edit,
  shown,
  rowOf,
  trimOf,
  ordered,
  orderRow,
  errorsOn,
  STOCKS,
  TO_ORDER,
} from "../../../support/takeoffSheet";
import { DEMO_TAKEOFF } from "../../../../src/sheets/newJob/demoTakeoffs";
import { BLANK_TAKEOFF } from "../../../../src/sheets/takeoff/takeoffOptions";
import { takeoffPlan } from "../../../../src/sheets/newJob/takeoffPlan";
import { USUAL_NAMES } from "../../../../src/sheets/newJob/takeoffPlan";
import { CellError, type Cell } from "../../../../shared/cell";

// An edit of a whole takeoff takes a few tenths of a second, and a test makes many.
jest.setTimeout(30_000);

describe("what may be forgotten is said on the order", () => {
  beforeEach(() => open(DEMO_TAKEOFF));

  const warned = (): Cell => shown("A3", "Order");
  const runs = (): number => rowOf("4  Runs that trim follows");

  it("says nothing where nothing is", () => {
    expect(warned()).toBe("");
  });

  it("a run of an edge that no trim follows", async () => {
    const ridge = rowOf("ridge", runs());
    await edit(`B${ridge + 1}`, "rigde"); // cspell:disable-line
    await edit(`C${ridge + 1}`, 60);
    expect(warned()).toBe(
      "1 run has no trim: check the edge, or add a trim that follows it on the Trims sheet",
    );
  });

  it("planes without a ridge or hip", async () => {
    await edit(`C${rowOf("ridge", runs())}`, null);
    expect(warned()).toBe("planes are measured by hand, but no ridge or hip has a length: type all edges");
  });

  it("a chimney that isn't called one, and a pipe with a space too many", async () => {
    const pipe = rowOf("vent pipe");
    await edit(`B${pipe}`, "pipe ");
    await edit(`C${pipe + 1}`, 3);
    expect(warned()).toBe("2 rows of chimneys and pipes not counted: choose chimney or pipe");
  });

  it("a trim that follows nothing", async () => {
    await edit("B5", "eaves", "Trims");
    expect(warned()).toBe("1 trim follows no edge and is not ordered");
    await edit("B5", null, "Trims");
    expect(warned()).toBe("1 trim follows no edge and is not ordered");
    expect(trimOf("drip edge", STOCKS)).toBe(0);
  });

  it("panels without clips", async () => {
    await edit("B18", null, "Panel");
    expect(warned()).toBe("clips per panel is 0 on the panel sheet: no clips are ordered");
  });

  it("numbers typed over formulas, until the formulas are back", async () => {
    const northCourses = `B${rowOf("North", rowOf("2  Courses, starters and panels"))}`;
    await edit(northCourses, 15);
    await edit("L7", 9);
    expect(warned()).toBe("formulas overwritten: 2; these cells no longer update");
    await edit("L7", "=K7/100");
    expect(warned()).toBe("formulas overwritten: 1; these cells no longer update");
  });

  it("a weight or a price below zero, by the item's name", async () => {
    await edit(`I${orderRow("foam backers")}`, -2, "Order");
    await edit(`K${orderRow("underlayment")}`, -0.01, "Order");
    expect(warned()).toBe("the weight is negative: foam backers; the price is negative: underlayment");
    await edit(`I${orderRow("foam backers")}`, "about 2", "Order");
    await edit(`K${orderRow("underlayment")}`, 0, "Order");
    expect(warned()).toBe("");
  });

  it("an order that a shaded cell makes an error, by the item's name", async () => {
    await edit(`D${orderRow("underlayment")}`, 10, "Order");
    expect(warned()).toBe("what to order is an error: underlayment");
  });

  it("a line that is an error, which no total counts", async () => {
    await edit(`C${rowOf("ridge", runs())}`, "long");
    expect(warned()).toMatch(/^what to order is an error: ridge, trim clips, nails/);
    expect(shown(`A${orderRow("ice barrier") + 2}`, "Order")).toBe("a line is an error, and so is the total");
    expect(shown(`L${orderRow("ice barrier") + 2}`, "Order")).toBeInstanceOf(CellError);
  });

  it("a price in words, and an order that is negative", async () => {
    await edit(`K${orderRow("nails")}`, "six", "Order");
    await edit(`G${orderRow("underlayment")}`, -6, "Order");
    expect(warned()).toBe("what to order is negative: underlayment; the price isn't a number: nails");
    expect(shown(`A${orderRow("ice barrier") + 2}`, "Order")).toBe("a line is an error, and so is the total");
  });

  it("a trim that is needed and stands on no line of the order", async () => {
    await edit(`A${orderRow("ridge")}`, "ridges", "Order");
    expect(warned()).toBe("needed, and not on this order: ridge");
  });

  it("which ordered lines have no price", async () => {
    await edit(`K${orderRow("nails")}`, null, "Order");
    await edit(`K${orderRow("underlayment")}`, null, "Order");
    expect(shown(`A${orderRow("ice barrier") + 2}`, "Order")).toBe(
      "ordered without a price, and not in the total: nails, underlayment",
    );
  });
});

describe("the table of trims", () => {
  beforeEach(() => open(DEMO_TAKEOFF));

  it("keeps a trim's price and pack with it when rows change places", async () => {
    const row = (of: number): Cell[] =>
      ["A", "B", "E", "G", "I", "L"].map((column) => shown(`${column}${of}`, "Trims"));
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
    expect(shown("C11", "Trim cuts")).toBe(`0' 2 1/4" run 25`);
    await edit("B33", 12, "Panel");
    expect(shown("C11", "Trim cuts")).toBe(`1' 0" run 25`);
  });

  it("takes a flashing for each pipe, whatever else follows pipes", async () => {
    await edit("A18", "boot", "Trims");
    await edit("B18", "pipe", "Trims");
    await edit("C18", 24, "Trims");
    expect(ordered("boot", TO_ORDER)).toBe(1);
  });
});

describe("an empty takeoff", () => {
  beforeEach(() => open(BLANK_TAKEOFF));

  it("is quiet", () => {
    expect(errorsOn(takeoffPlan(BLANK_TAKEOFF, USUAL_NAMES))).toEqual([]);
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
    for (const { cells } of takeoffPlan(DEMO_TAKEOFF, USUAL_NAMES).sheets)
      for (const { content, numberFormat } of cells)
        expect(content?.kind === "formula" && numberFormat === "@").toBe(false);
  });

  it.each([
    ["blank", BLANK_TAKEOFF],
    ["demo", DEMO_TAKEOFF],
  ])("puts one thing in one cell: %s", (_, options) => {
    for (const { cells } of takeoffPlan(options, USUAL_NAMES).sheets) {
      const places = cells.map((cell) => a1(cell));
      expect(new Set(places).size).toBe(places.length);
    }
  });

  it("keeps what a person typed as text", () => {
    const plan = takeoffPlan(
      { ...DEMO_TAKEOFF, job: "=1+1", notes: ["=cmd"], runs: [{ edge: "ridge", name: "=A1", length: 5 }] },
      USUAL_NAMES,
    );
    const formulas = plan.sheets.flatMap(({ cells }) =>
      cells.flatMap(({ content }) => (content?.kind === "formula" ? [content.formula] : [])),
    );
    expect(formulas.filter((each) => each === "=1+1" || each === "=cmd" || each === "=A1")).toEqual([]);
  });
});
