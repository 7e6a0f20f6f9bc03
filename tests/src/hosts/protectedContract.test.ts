import { ICommandService } from "@univerjs/core";
import { InsertRowCommand, SetRangeValuesCommand } from "@univerjs/sheets";
import { excelHost } from "../../../src/hosts/excel/excelHost";
import { localCatalog } from "../../../src/hosts/local/formulas/catalog";
import { createHeadlessEngine } from "../../../src/hosts/local/workbook/headless";
import { protectSheets } from "../../../src/hosts/local/protection/protectedSheets";
import { openXlsx, saveXlsx } from "../../../src/xlsx/xlsxFile";
import type { CellPatch } from "../../../src/workbook/patch";
import { formula, number, text, type SheetPlan, type WorkbookPlan } from "../../../src/workbook/plan";
import { fakeExcel, fakeWorkbook } from "../../support/fakeExcel";

const SHEET = { columnWidths: [], rowHeights: {}, frozenRows: 0 };
const SIGNED: SheetPlan = {
  ...SHEET,
  name: "Signed 1",
  isProtected: true,
  cells: [
    { row: 0, column: 0, content: text("panels") },
    { row: 0, column: 1, content: number(94) },
    { row: 0, column: 2, content: formula("=B1+1") },
  ],
};
const OPEN: SheetPlan = { ...SHEET, name: "Order", cells: [{ row: 0, column: 0, content: text("panels") }] };
const PLAN: WorkbookPlan = { sheets: [SIGNED, OPEN], names: [] };

const patchOf = (sheet: string): CellPatch => ({
  sheet,
  at: { row: 4, column: 4 },
  cells: [[{ content: number(1) }]],
});
const REFUSAL = '"Signed 1" is protected. Nothing was written.';

describe("a sheet that a plan protects", () => {
  it("is protected in Excel after it was filled, and only it", async () => {
    const workbook = fakeWorkbook("Bid");
    const host = excelHost(fakeExcel(workbook), () => Promise.reject(new Error("no picture")));
    await host.addSheets(PLAN);
    expect(workbook.sheets.map(({ name, isProtected }) => [name, isProtected])).toEqual([
      ["Bid", false],
      ["Signed 1", true],
      ["Order", false],
    ]);
    expect(workbook.sheets[1]?.cells.get("B1")?.formula).toBe(94);
    await expect(host.putCells(patchOf("Signed 1"))).rejects.toThrow(REFUSAL);
  });

  it("takes no typing and no row in the local workbook, but is calculated", async () => {
    const { injector, workbook, calculated, putCells, getCell, dispose } = createHeadlessEngine(
      localCatalog,
      PLAN,
    );
    const told: string[] = [];
    protectSheets(injector, workbook, (sentence) => told.push(sentence));
    const commands = injector.get(ICommandService);
    const range = { startRow: 0, endRow: 0, startColumn: 1, endColumn: 1 };
    const type = (sheet: string): Promise<boolean> =>
      commands.executeCommand(SetRangeValuesCommand.id, {
        unitId: workbook.getUnitId(),
        subUnitId: workbook.getSheetBySheetName(sheet)?.getSheetId(),
        range,
        value: { v: 95 },
      });
    expect(await type("Signed 1")).toBe(false);
    expect(await type("Order")).toBe(true);
    const subUnitId = workbook.getSheetBySheetName("Signed 1")?.getSheetId();
    const inserted = await commands.executeCommand(InsertRowCommand.id, {
      unitId: workbook.getUnitId(),
      subUnitId,
      range: { ...range, startColumn: 0, endColumn: 5 },
      direction: 0,
    });
    expect(inserted).toBe(false);
    expect(told).toEqual([
      '"Signed 1" is protected: B1 wasn\'t changed.',
      '"Signed 1" is protected: nothing was moved.',
    ]);
    await calculated();
    expect(getCell({ sheet: "Signed 1", row: 0, column: 1 })).toBe(94);
    expect(getCell({ sheet: "Signed 1", row: 0, column: 2 })).toBe(95);
    await expect(putCells(patchOf("Signed 1"))).rejects.toThrow(REFUSAL);
    dispose();
  });

  it("is protected in a file, and when the file comes back", async () => {
    const engine = createHeadlessEngine(localCatalog, PLAN);
    await engine.calculated();
    const file = openXlsx(saveXlsx(undefined, engine.book()));
    expect(file.book.sheets.map(({ name, isProtected }) => [name, isProtected])).toEqual([
      ["Signed 1", true],
      ["Order", false],
    ]);
    const again = createHeadlessEngine(localCatalog, file.book);
    await again.calculated();
    await expect(again.putCells(patchOf("Signed 1"))).rejects.toThrow(REFUSAL);
    expect(saveXlsx({ file, calculated: again.book() }, again.book())).toBe(file.bytes);
    engine.dispose();
    again.dispose();
  });
});
