import { localCatalog } from "../../../../../src/hosts/local/formulas/catalog";
import { createHeadlessEngine } from "../../../../../src/hosts/local/workbook/headless";
import { datesAsText } from "../../../../../src/hosts/local/cells/readSheet";
import { fromCellData } from "../../../../../src/hosts/local/engine/cellData";
import { number, type PlannedCell } from "../../../../../src/workbook/plan";

describe("dates as text", () => {
  const cells: readonly (readonly [number, string | undefined])[] = [
    [46352, "yyyy-mm-dd"],
    [46352, "d mmm"],
    [46352, undefined],
    [46352, "#,##0.00"],
    [46352.5, "yyyy-mm-dd hh:mm"],
    [7, "yyyy-mm-dd"],
  ];

  it("replace the numbers of cells that show a date, and nothing else", () => {
    const planned = cells.map(([value, numberFormat], column): PlannedCell => ({
      row: 0,
      column,
      content: number(value),
      ...(numberFormat !== undefined && { numberFormat }),
    }));
    const engine = createHeadlessEngine(localCatalog, {
      sheets: [{ name: "Bid", cells: planned, columnWidths: [], rowHeights: {}, frozenRows: 0 }],
      names: [],
    });
    const read = datesAsText(engine.workbook, (sheet, row, column) =>
      fromCellData(sheet.getCellRaw(row, column)),
    );
    const sheet = engine.workbook.getActiveSheet();
    expect(cells.map((_, column) => read(sheet, 0, column))).toEqual([
      "2026-11-26",
      "2026-11-26",
      46352,
      46352,
      46352.5,
      7,
    ]);
    engine.dispose();
  });
});
