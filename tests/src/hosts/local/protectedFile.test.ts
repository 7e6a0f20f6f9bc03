import ExcelJS from "exceljs";
import { localCatalogue } from "../../../../src/hosts/local/catalogue";
import { createHeadlessEngine } from "../../../../src/hosts/local/headless";
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
