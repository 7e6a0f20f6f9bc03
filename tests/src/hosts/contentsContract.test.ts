import { excelHost } from "../../../src/hosts/excel/excelHost";
import { localCatalog } from "../../../src/hosts/local/formulas/catalog";
import { createHeadlessEngine } from "../../../src/hosts/local/workbook/headless";
import { formulaAt, valueAt, type Contents } from "../../../src/workbook/contents";
import { formula, number, text, type WorkbookPlan } from "../../../src/workbook/plan";
import { fakeExcel, fakeWorkbook } from "../../support/fakeExcel";

const SHEET = { columnWidths: [], rowHeights: {}, frozenRows: 0 };

const PLAN: WorkbookPlan = {
  sheets: [
    {
      ...SHEET,
      name: "Bid of May",
      cells: [
        { row: 1, column: 1, content: text("6:12") },
        { row: 2, column: 1, content: number(20) },
        { row: 2, column: 2, content: formula("=B3*2") },
      ],
    },
    { ...SHEET, name: "Blank", cells: [] },
  ],
  names: [{ name: "Eave", sheet: "Bid of May", range: "$B$3" }],
};

const inExcel = async (): Promise<Contents> => {
  const workbook = fakeWorkbook();
  const host = excelHost(fakeExcel(workbook), () => Promise.reject(new Error("no picture")));
  await host.addSheets(PLAN);
  // The stand-in calculates nothing.
  const doubled = workbook.sheets[0]?.cells.get("C3");
  if (doubled) doubled.shows = 40;
  return host.contents();
};

const inLocal = async (): Promise<Contents> => {
  const engine = createHeadlessEngine(localCatalog, PLAN);
  await engine.calculated();
  return engine.contents();
};

describe.each([
  ["Excel's stand-in", inExcel],
  ["the local workbook", inLocal],
])("the contents of a workbook in %s", (_, read) => {
  it("are what cells show, the formulas behind them, and what names stand for", async () => {
    const { sheets, targets } = await read();
    expect([...sheets.keys()]).toEqual(["Bid of May", "Blank"]);
    const bid = sheets.get("Bid of May");
    if (!bid) throw new Error("the sheet is gone");
    expect(valueAt(bid, { row: 1, column: 1 })).toBe("6:12");
    expect(valueAt(bid, { row: 2, column: 2 })).toBe(40);
    expect(valueAt(bid, { row: 0, column: 0 })).toBeNull();
    expect(formulaAt(bid, { row: 2, column: 2 })).toBe("=B3*2");
    expect(formulaAt(bid, { row: 2, column: 1 })).toBe("");
    expect([...targets]).toEqual([["Eave", "'Bid of May'!$B$3"]]);
  });
});
