import { localCatalogue } from "../../../../src/hosts/local/catalogue";
import { createHeadlessEngine } from "../../../../src/hosts/local/headless";
import type { Book } from "../../../../src/hosts/xlsx/book";
import { openXlsx, saveXlsx } from "../../../../src/hosts/xlsx/xlsxFile";
import { fieldSheetPlan } from "../../../../src/sheets/fieldSheet/fieldSheet";
import { panelSheet } from "../../../../src/sheets/panelSheet";
import { number, text, type WorkbookPlan } from "../../../../src/sheets/plan";
import { DEMO_TAKE_OFF, FOOTPRINT_DEMO } from "../../../../src/sheets/takeOff/demo";
import { takeOffPlan, USUAL_NAMES } from "../../../../src/sheets/takeOff/takeOff";

jest.setTimeout(120_000);

const PANEL = panelSheet("Panel", {
  exposedWidthIn: 24,
  exposedHeightIn: 12,
  gableSetbackIn: 1.5,
  gableFoldIn: 2.5,
});

const TEMPLATES: Readonly<Record<string, WorkbookPlan>> = {
  "the take-off": takeOffPlan(DEMO_TAKE_OFF, USUAL_NAMES),
  "the take-off from a footprint": takeOffPlan(FOOTPRINT_DEMO, USUAL_NAMES),
  "an empty take-off for a job that reads like a formula": takeOffPlan(
    { ...DEMO_TAKE_OFF, job: "=1+1", planes: [], runs: [] },
    USUAL_NAMES,
  ),
  "the field sheet": {
    sheets: [
      fieldSheetPlan({
        sheetName: "Field North",
        inputs: {
          plane: text("North"),
          shape: text("rectangle"),
          eave: number(30),
          slopeLength: text("20 ft"),
        },
        courses: 20,
      }),
      PANEL.sheet,
    ],
    names: PANEL.names,
  },
};

/** Every cell's value, formula, spill and look, and the sheets around them. */
const inPlainWords = ({ sheets, names, styles }: Book) => ({
  names: [...names].sort((a, b) => a.name.localeCompare(b.name)),
  sheets: sheets.map(({ name, cells, merges, frozen, columns, rows }) => ({
    name,
    merges,
    frozen,
    widths: [...columns].map(([column, { sizePx }]) => [column, sizePx]),
    heights: [...rows].map(([row, { sizePx }]) => [row, sizePx]),
    cells: [...cells]
      .flatMap(([row, inRow]) =>
        [...inRow].flatMap(([column, { value, formula, spill, style }]) => {
          const { bl, it, fs, cl, bg, bd, ht, tb, n } = styles.get(style ?? "") ?? {};
          const look = {
            bl,
            it,
            fs: fs ?? 11,
            cl: cl ?? { rgb: "#000000" },
            bg,
            bd,
            ht,
            tb,
            n: n?.pattern === "General" ? undefined : n,
          };
          // A blank cell that looks as usual is no cell.
          const isUsual = [bl, it, bg, bd, ht, tb, look.n].every((each) => each === undefined) && !cl;
          return value === null && formula === undefined && isUsual
            ? []
            : [{ row, column, value, formula, spill, look }];
        }),
      )
      .sort((a, b) => a.row - b.row || a.column - b.column),
  })),
});

describe.each(Object.entries(TEMPLATES))("%s", (_, plan) => {
  it("is the same through the local workbook as through an .xlsx and back", async () => {
    const engine = createHeadlessEngine(localCatalogue, plan);
    await engine.calculated();
    const before = engine.book();
    const file = openXlsx(saveXlsx(undefined, before));
    const again = createHeadlessEngine(localCatalogue, file.book);
    await again.calculated();
    expect(inPlainWords(again.book())).toEqual(inPlainWords(before));
    engine.dispose();
    again.dispose();
  });

  it("keeps its drop-downs and how it goes to paper", async () => {
    const engine = createHeadlessEngine(localCatalogue, plan);
    await engine.calculated();
    const { parts } = openXlsx(saveXlsx(undefined, engine.book()));
    plan.sheets.forEach((sheet, index) => {
      const xml = new TextDecoder().decode(parts.get(`xl/worksheets/sheet${index + 1}.xml`));
      const lists = new Set(sheet.cells.flatMap(({ choices }) => (choices ? [choices.join(",")] : [])));
      for (const list of lists) expect(xml).toContain(`<formula1>&quot;${list}&quot;</formula1>`);
      expect(xml.includes('orientation="landscape"')).toBe(sheet.print === "one page, landscape");
    });
    engine.dispose();
  });
});
