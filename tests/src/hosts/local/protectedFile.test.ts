import { ICommandService } from "@univerjs/core";
import { InsertRowMutation } from "@univerjs/sheets";
import ExcelJS from "exceljs";
import { localCatalogue } from "../../../../src/hosts/local/catalogue";
import { createHeadlessEngine } from "../../../../src/hosts/local/headless";
import { protectSheets } from "../../../../src/hosts/local/protectedSheets";
import { openXlsx } from "../../../../src/hosts/xlsx/xlsxFile";
import { number } from "../../../../src/sheets/plan";

it("doesn't write into a sheet that its file protects", async () => {
  const workbook = new ExcelJS.Workbook();
  const bid = workbook.addWorksheet("Bid");
  bid.addRow(["Eave (ft)", 40]);
  await bid.protect("invented", {});
  workbook.addWorksheet("Open");
  const { book } = openXlsx(new Uint8Array(await workbook.xlsx.writeBuffer()));
  const engine = createHeadlessEngine(localCatalogue, book);
  const at = { row: 5, column: 5 };
  expect(engine.survey("Bid", { from: at, to: at }).isProtected).toBe(true);
  expect(() => engine.put({ sheet: "Bid", at, cells: [[{ content: number(1) }]] })).toThrow(
    'F6 of "Bid" is protected. Nothing was written.',
  );
  expect(engine.survey("Open", { from: at, to: at }).isProtected).toBe(false);
  engine.put({ sheet: "Open", at, cells: [[{ content: number(1) }]] });
  expect(engine.getCell({ sheet: "Open", ...at })).toBe(1);
  engine.dispose();
});

describe("by hand, on a sheet that its file protects", () => {
  const opened = async () => {
    const workbook = new ExcelJS.Workbook();
    const bid = workbook.addWorksheet("Bid");
    bid.addRow(["Eave (ft)", 40]);
    bid.getCell("B1").protection = { locked: false };
    bid.getCell("C1").value = { formula: "B1*2", result: 80 };
    await bid.protect("invented", {});
    workbook.addWorksheet("Open");
    const { book } = openXlsx(new Uint8Array(await workbook.xlsx.writeBuffer()));
    const engine = createHeadlessEngine(localCatalogue, book);
    await engine.calculated();
    const told: string[] = [];
    protectSheets(engine.injector, engine.workbook, (sentence) => told.push(sentence));
    const at = (column: number, sheet = "Bid") => ({ sheet, row: 0, column });
    return { engine, told, at };
  };

  it("a locked cell stays, with a sentence", async () => {
    const { engine, told, at } = await opened();
    engine.setCell(at(0), "Rake (ft)");
    expect(engine.getCell(at(0))).toBe("Eave (ft)");
    expect(told).toEqual([
      '"Bid" is protected in its file: A1 wasn\'t changed. Take the protection off in Excel first.',
    ]);
    engine.dispose();
  });

  it("rows stay, with a sentence", async () => {
    const { engine, told, at } = await opened();
    const subUnitId = engine.workbook.getSheetBySheetName("Bid")?.getSheetId();
    const range = { startRow: 0, endRow: 0, startColumn: 0, endColumn: 25 };
    engine.injector
      .get(ICommandService)
      .syncExecuteCommand(InsertRowMutation.id, { unitId: engine.workbook.getUnitId(), subUnitId, range });
    expect(engine.getCell(at(0))).toBe("Eave (ft)");
    expect(told).toEqual([
      '"Bid" is protected in its file: nothing was moved. Take the protection off in Excel first.',
    ]);
    engine.dispose();
  });

  it("a cell that the file leaves open takes a value, and results follow; so does another sheet", async () => {
    const { engine, told, at } = await opened();
    engine.setCell(at(1), 50);
    engine.setCell(at(0, "Open"), "free");
    await engine.calculated();
    expect([engine.getCell(at(1)), engine.getCell(at(2)), engine.getCell(at(0, "Open"))]).toEqual([
      50,
      100,
      "free",
    ]);
    expect(told).toEqual([]);
    engine.dispose();
  });
});
