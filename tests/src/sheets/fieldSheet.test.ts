import type { Cell, Matrix } from "../../../shared/cell";
import { createHeadlessEngine, type HeadlessEngine } from "../../../src/hosts/local/workbook/headless";
import { localCatalog } from "../../../src/hosts/local/formulas/catalog";
import { fieldSheetPlan } from "../../../src/sheets/fieldSheet/fieldSheet";
import { captionPatch } from "../../../src/sheets/fieldSheet/pictureCaption";
import { readArea } from "../../../src/workbook/address";
import { valuesIn } from "../../../src/workbook/contents";
import type { ActiveSheet } from "../../../src/workbook/activeSheet";
import type { Undo } from "../../../src/workbook/patch";
import { formula, number, text, type WorkbookPlan } from "../../../src/workbook/plan";
import { PANEL_NAME, panelSheet } from "../../../src/sheets/panelSheet";
import { placeOf } from "../../support/place";

/** Common practice, no published source: 24 x 12 in, four-course stagger, setback 1 1/2 in, fold 2 1/2 in. */
const PANEL = panelSheet("Panel", {
  exposedWidthIn: 24,
  exposedHeightIn: 12,
  gableSetbackIn: 1.5,
  gableFoldIn: 2.5,
  lockFlangeGainIn: 1,
});

const GABLE = fieldSheetPlan({
  sheetName: "Field North",
  inputs: { plane: text("North"), shape: text("rectangle"), eave: number(30), slopeLength: text("20 ft") },
  courses: 20,
});

const planOf = (...sheets: WorkbookPlan["sheets"]): WorkbookPlan => ({
  sheets: [...sheets, PANEL.sheet],
  names: PANEL.names,
});

let engine: HeadlessEngine;
const shown = (address: string): Cell => engine.getCell({ sheet: "Field North", ...placeOf(address) });
const edit = async (address: string, content: string | number | null): Promise<void> => {
  engine.setCell({ sheet: "Field North", ...placeOf(address) }, content);
  await engine.calculated();
};

describe("the field sheet of a 20 ft gable", () => {
  beforeEach(async () => {
    engine = createHeadlessEngine(localCatalog, planOf(GABLE));
    await engine.calculated();
  });
  afterEach(() => {
    engine.dispose();
  });

  it("has a chalk line for each of the twenty courses, a foot apart, and the totals below", () => {
    const headings = ["A", "B", "C", "D", "E", "F", "G", "H"].map((column) => shown(`${column}19`));
    expect(headings).toEqual([
      "course",
      "line (tape)",
      "starter blank (tape)",
      "whole",
      "cut",
      "from off-cuts",
      "closing piece (tape)",
      "warnings",
    ]);
    const lines = Array.from({ length: 20 }, (_, index) => [
      shown(`A${20 + index}`),
      shown(`B${20 + index}`),
    ]);
    expect(lines).toEqual(lines.map((_, index) => [index + 1, `${index}' 0"`]));
    expect(shown("A40")).toBe("total");
  });

  it("gathers the starters: five each of 25, 13, 19 and 7 in", () => {
    const rows = [20, 21, 22, 23].map((row) =>
      ["J", "K", "L", "M", "N"].map((column) => shown(`${column}${row}`)),
    );
    expect(rows).toEqual([
      ["starter", 22.5, 2.5, 25, 5],
      ["starter", 10.5, 2.5, 13, 5],
      ["starter", 16.5, 2.5, 19, 5],
      ["starter", 4.5, 2.5, 7, 5],
    ]);
    expect(shown("O20")).toBe("1, 5, 9, 13, 17");
  });

  it("follows its cells: start, measures, openings", async () => {
    await edit("B10", "left from step 2");
    expect(shown("C20")).toBe(`1' 1"`);
    await edit("B8", 10);
    expect(shown("A30")).toBe("total");
    const before = shown("B11");
    for (const [row, [x, y]] of [
      [10, 4],
      [14, 4],
      [14, 8],
      [10, 8],
    ].entries()) {
      await edit(`D${row + 5}`, x ?? 0);
      await edit(`E${row + 5}`, y ?? 0);
    }
    expect(shown("B11")).toBeLessThan(before as number);
  });

  it("says what is wrong with a start that can't be read", async () => {
    await edit("B10", "middle");
    expect(shown("A20")).toMatchObject({
      code: "#VALUE!",
      message: expect.stringMatching(/^start takes left or right/) as string,
    });
    expect(shown("A19")).toBe("course");
  });
});

describe("a field sheet's plan", () => {
  it("leaves room above the foot for a long slope", () => {
    const foot = (courses: number): number =>
      Math.min(
        ...fieldSheetPlan({ sheetName: "F", inputs: {}, courses })
          .cells.filter(({ style }) => style === "caution")
          .map(({ row }) => row),
      );
    expect(foot(100) - 19).toBeGreaterThan(101);
    expect(foot(5)).toBe(foot(8));
  });

  it("takes a plane's name as text, whatever it begins with", () => {
    const plan = fieldSheetPlan({ sheetName: "F", inputs: { plane: text("=1+1") }, courses: 1 });
    expect(
      plan.cells.filter(({ content }) => content?.kind === "formula" && content.formula === "=1+1"),
    ).toEqual([]);
    expect(plan.cells.map(({ content }) => content)).not.toContainEqual(formula("=1+1"));
  });
});

describe("the line beneath a field sheet's picture", () => {
  const AS_DRAWN = "Picture: matches this sheet.";
  const viewNow = (): ActiveSheet => ({
    sheet: "Field North",
    selected: { row: 0, column: 0 },
    cells: engine.contents().sheets.get("Field North")?.cells ?? [],
  });
  const block = readArea(PANEL.names.find(({ name }) => name === PANEL_NAME)?.range ?? "");
  const panelNow = (): Matrix =>
    valuesIn({ cells: engine.contents().sheets.get("Panel")?.cells ?? [] }, block);
  const draw = async (start?: string): Promise<Undo> => {
    const undo = await engine.putCells(captionPatch(viewNow(), panelNow(), start));
    await engine.calculated();
    return undo;
  };

  beforeEach(async () => {
    engine = createHeadlessEngine(localCatalog, planOf(GABLE));
    await engine.calculated();
  });
  afterEach(() => {
    engine.dispose();
  });

  it.each([
    ["the start", "B10", "right"],
    ["a measure", "B6", 31],
    ["an opening", "D5", 4],
    ["a corner", "H16", 4],
  ])("says so when %s has changed, and takes it back", async (_, address, content) => {
    const before = shown(address);
    await draw();
    expect(shown("J17")).toBe(AS_DRAWN);
    await edit(address, content);
    expect(shown("J17")).toBe(
      "Picture: insert it again: it was drawn for Shape rectangle, Eave (ft) 30, Slope length (ft) 20 ft, Start left.",
    );
    await edit(address, before as string | number | null);
    expect(shown("J17")).toBe(AS_DRAWN);
  });

  it("says so when the panel has changed", async () => {
    await draw();
    engine.setCell({ sheet: "Panel", ...block.to }, 20);
    await engine.calculated();
    expect(shown("J17")).toMatch(/^Picture: insert it again/);
  });

  it("has no longer text than a formula takes, whatever was typed", async () => {
    await edit("B5", "rectangle, as far as anybody can tell ".repeat(20));
    const { content } = captionPatch(viewNow(), panelNow(), undefined).cells[0]?.[0] ?? {};
    const texts = content?.kind === "formula" ? content.formula.split('"') : [];
    expect(Math.max(...texts.map(({ length }) => length))).toBeGreaterThan(200);
    expect(Math.max(...texts.map(({ length }) => length))).toBeLessThan(256);
  });

  it("holds a picture of another start for old until that start is typed", async () => {
    await draw("left 3 1/4");
    expect(shown("J17")).toMatch(/^Picture: insert it again: it was drawn for .*, Start left 3 1\/4\.$/);
    await edit("B10", "left 3 1/4");
    expect(shown("J17")).toBe(AS_DRAWN);
  });

  it("takes the place of an earlier one and of nothing else", async () => {
    await draw();
    await edit("B10", "right");
    const undo = await draw();
    expect(shown("J17")).toBe(AS_DRAWN);
    await undo();
    await engine.calculated();
    expect(shown("J17")).toMatch(/^Picture: insert it again/);
    await edit("J17", null);
    await edit("J17", "Picture: see the crew");
    await expect(draw()).rejects.toThrow('J17 holds "Picture: see the crew". Nothing was written.');
  });
});
