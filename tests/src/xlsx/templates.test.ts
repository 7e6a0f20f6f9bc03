import { localCatalog } from "../../../src/hosts/local/formulas/catalog";
import { createHeadlessEngine } from "../../../src/hosts/local/workbook/headless";
import type { Book } from "../../../src/xlsx/book/book";
import { openXlsx, saveXlsx } from "../../../src/xlsx/xlsxFile";
import { TEMPLATES } from "../../support/templates";

jest.setTimeout(120_000);

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
    const engine = createHeadlessEngine(localCatalog, plan);
    await engine.calculated();
    const before = engine.book();
    const file = openXlsx(saveXlsx(undefined, before));
    const again = createHeadlessEngine(localCatalog, file.book);
    await again.calculated();
    expect(inPlainWords(again.book())).toEqual(inPlainWords(before));
    engine.dispose();
    again.dispose();
  });

  it("keeps its drop-downs and how it goes to paper", async () => {
    const engine = createHeadlessEngine(localCatalog, plan);
    await engine.calculated();
    const { parts } = openXlsx(saveXlsx(undefined, engine.book()));
    plan.sheets.forEach((sheet, index) => {
      const xml = new TextDecoder().decode(parts.get(`xl/worksheets/sheet${index + 1}.xml`));
      const lists = new Set(sheet.cells.flatMap(({ choices }) => (choices ? [choices.join(",")] : [])));
      for (const list of lists) expect(xml).toContain(`<formula1>&quot;${list}&quot;</formula1>`);
      expect(xml.includes('orientation="landscape"')).toBe(sheet.print?.endsWith("landscape") ?? false);
    });
    engine.dispose();
  });
});
