import { ICommandService, IUniverInstanceService, UndoCommand } from "@univerjs/core";
import { InsertRowMutation, RemoveRowMutation, RemoveSheetCommand } from "@univerjs/sheets";
import { FormulaCalculationSessionService } from "@univerjs/sheets-formula";
import ExcelJS from "exceljs";
import { bookSnapshot } from "../../../../../src/hosts/local/book/bookSnapshot";
import { localCatalog } from "../../../../../src/hosts/local/formulas/catalog";
import { createHeadlessEngine, type HeadlessEngine } from "../../../../../src/hosts/local/workbook/headless";
import { deleteSheetsCompletely } from "../../../../../src/hosts/local/engineFixes/sheetDeletion";
import { registerTables } from "../../../../../src/hosts/local/formulas/fileTables";
import { differingResults } from "../../../../../src/xlsx/write/cachedResults";
import { openXlsx, type XlsxFile } from "../../../../../src/xlsx/xlsxFile";
import { writeZip } from "../../../../../src/xlsx/package/zip";
import { readArea } from "../../../../../src/workbook/address";
import { engineWithout } from "../engineWithout";
import { openedSnapshot } from "../openedUniver";

/** A table of three bays in A2:B5 with a totals row in row 6, and formulas that read it. */
const bidWithTable = async (
  change: (sheet: ExcelJS.Worksheet) => void = () => undefined,
): Promise<XlsxFile> => {
  const workbook = new ExcelJS.Workbook();
  const bid = workbook.addWorksheet("Bid");
  bid.addTable({
    name: "Bays",
    ref: "A2",
    headerRow: true,
    totalsRow: true,
    columns: [
      { name: "Bay", totalsRowLabel: "Total" },
      { name: "Eave (ft)", totalsRowFunction: "sum" },
    ],
    rows: [
      ["north", 40],
      ["east", 18],
      ["south", 40],
    ],
  });
  bid.getCell("D2").value = { formula: "SUM(Bays[Eave (ft)])", result: 98 };
  bid.getCell("D3").value = { formula: "Bays[[#This Row],[Eave (ft)]]*2", result: 80 };
  bid.getCell("D4").value = { formula: "ROWS(Bays)", result: 3 };
  workbook.addWorksheet("Other").getCell("A1").value = { formula: "MAX(Bays[Eave (ft)])", result: 40 };
  change(bid);
  return openXlsx(new Uint8Array(await workbook.xlsx.writeBuffer()));
};

let engine: HeadlessEngine;
afterEach(() => {
  engine.dispose();
});

const shown = (...addresses: string[]): unknown[] =>
  addresses.map((address) => engine.getCell({ sheet: "Bid", ...readArea(address).from }));

it("formulas can read the tables of a file, and follow edits in them", async () => {
  const file = await bidWithTable();
  engine = createHeadlessEngine(localCatalog, file.book);
  await engine.calculated();
  expect(shown("D2", "D3", "D4")).toEqual([98, 80, 3]);
  expect(differingResults(file.book, engine.book())).toEqual([]);
  engine.setCell({ sheet: "Bid", row: 2, column: 1 }, 42);
  await engine.calculated();
  expect(shown("D2", "D3", "D4")).toEqual([100, 84, 3]);
  expect(engine.getCell({ sheet: "Other", row: 0, column: 0 })).toBe(42);
});

/** Worked out by hand, for eaves 40, 18 and 40 with slopes 1, 2 and 4 below a heading row, and their sums. */
const REFERENCES: readonly (readonly [formula: string, result: number])[] = [
  ["SUM(Bays[#Data])", 105],
  ["SUM(Bays[#Totals])", 105],
  ["SUM(Bays[[#Totals],[Slope]])", 7],
  ["SUM(Bays[[#Totals],[Eave (ft)]:[Slope]])", 105],
  ["ROWS(Bays[#All])", 5],
  ["SUM(Bays[[#All],[Slope]])", 14],
  ["COUNTA(Bays[#Headers])", 3],
  ["COUNTA(Bays[[#Headers],[Slope]])", 1],
  ["SUM(Bays[[Eave (ft)]:[Slope]])", 105],
  ["SUM(Bays[[#Data],[Eave (ft)]:[Slope]])", 105],
  ["SUM(Bays[[#Data],[#Totals],[Slope]])", 14],
  ["COUNTA(Bays[[#Headers],[#Data],[Slope]])", 4],
];

describe.each([
  ["below other rows", 3],
  ["at the top of its sheet", 1],
])("a table %s", (_, firstRow) => {
  const opened = async (formulas: readonly string[], hasTotals = true): Promise<XlsxFile> => {
    const workbook = new ExcelJS.Workbook();
    const bid = workbook.addWorksheet("Bid");
    bid.addTable({
      name: "Bays",
      ref: `A${firstRow}`,
      headerRow: true,
      totalsRow: hasTotals,
      columns: [
        { name: "Bay", totalsRowLabel: "Total" },
        { name: "Eave (ft)", totalsRowFunction: "sum" },
        { name: "Slope", totalsRowFunction: "sum" },
      ],
      rows: [
        ["north", 40, 1],
        ["east", 18, 2],
        ["south", 40, 4],
      ],
    });
    formulas.forEach((formula, row) => (bid.getCell(row + 1, 5).value = { formula, result: 0 }));
    return openXlsx(new Uint8Array(await workbook.xlsx.writeBuffer()));
  };
  const results = async (formulas: readonly string[], hasTotals?: boolean): Promise<unknown[]> => {
    engine = createHeadlessEngine(localCatalog, (await opened(formulas, hasTotals)).book);
    await engine.calculated();
    return formulas.map((__, row) => engine.getCell({ sheet: "Bid", row, column: 4 }));
  };

  it("is read by the common forms of structured references, which follow edits in it", async () => {
    const formulas = REFERENCES.map(([formula]) => formula);
    expect(await results(formulas)).toEqual(REFERENCES.map(([, result]) => result));
    engine.setCell({ sheet: "Bid", row: firstRow, column: 2 }, 11);
    await engine.calculated();
    expect(engine.getCell({ sheet: "Bid", row: 2, column: 4 })).toBe(17);
  });

  it("is read row by row", async () => {
    const above = Array<string>(firstRow).fill("1");
    const sums = ["SUM(Bays[@[Eave (ft)]:[Slope]])", "Bays[@Slope]*2", "Bays[[#This Row],[Eave (ft)]]"];
    expect((await results([...above, ...sums])).slice(firstRow)).toEqual([41, 4, 40]);
  });

  it("has no totals row if the file has none: a reference to it is an error, not another row", async () => {
    const [totals, all] = await results(["SUM(Bays[#Totals])", "ROWS(Bays[#All])"], false);
    expect(totals).toMatchObject({ code: "#NAME?" });
    expect(all).toBe(4);
  });
});

it("the survey says which table the selection is in", async () => {
  engine = createHeadlessEngine(localCatalog, (await bidWithTable()).book);
  expect(engine.survey("Bid", readArea("B3")).table).toEqual({
    name: "Bays",
    area: readArea("A2:B6"),
    hasHeadings: true,
    hasTotals: true,
  });
  expect(engine.survey("Bid", readArea("D3")).table).toBeUndefined();
});

it("a table whose rows have moved is unknown until they are back, so no formula reads the wrong cells", async () => {
  engine = createHeadlessEngine(localCatalog, (await bidWithTable()).book);
  await engine.calculated();
  const run = (id: string): void => {
    const range = { startRow: 0, endRow: 0, startColumn: 0, endColumn: 25 };
    const subUnitId = engine.workbook.getActiveSheet().getSheetId();
    engine.injector
      .get(ICommandService)
      .syncExecuteCommand(id, { unitId: engine.workbook.getUnitId(), subUnitId, range });
  };
  const inTable = (): boolean => engine.survey("Bid", readArea("B3")).table !== undefined;
  run(InsertRowMutation.id);
  expect(inTable()).toBe(false);
  run(RemoveRowMutation.id);
  expect(inTable()).toBe(true);
});

it("a table whose sheet was deleted is unknown until the sheet is restored", async () => {
  const { book } = await bidWithTable();
  engine = createHeadlessEngine(localCatalog, book);
  const snapshot = bookSnapshot("bays", book);
  const { univer, workbook, injector } = openedSnapshot(snapshot, (each) => registerTables(each, snapshot));
  injector.get(IUniverInstanceService).focusUnit(workbook.getUnitId());
  deleteSheetsCompletely(injector, workbook);
  const commands = injector.get(ICommandService);
  /** The result of the formula that reads the table, after the engine has calculated on its own. */
  const mostAfter = async (command: { id: string }, params?: object): Promise<unknown> => {
    await commands.executeCommand(command.id, params);
    await injector.get(FormulaCalculationSessionService).waitForLatestApplied();
    return workbook.getSheetBySheetName("Other")?.getCellRaw(0, 0)?.v;
  };
  const subUnitId = workbook.getSheetBySheetName("Bid")?.getSheetId();
  const bid = { unitId: workbook.getUnitId(), subUnitId };
  expect(await mostAfter(RemoveSheetCommand, bid)).toBe("#NAME?");
  expect(await mostAfter(UndoCommand)).toBe(40);
  univer.dispose();
});

/** The file with the text of one part changed. */
const withPart = ({ parts }: XlsxFile, path: string, change: (xml: string) => string): XlsxFile => {
  const xml = new TextDecoder().decode(parts.get(path));
  return openXlsx(writeZip(new Map([...parts, [path, new TextEncoder().encode(change(xml))]])));
};

it("a filter that hides rows counts; one that shows all rows doesn't", async () => {
  const file = await bidWithTable();
  engine = createHeadlessEngine(localCatalog, file.book);
  expect(engine.survey("Bid", readArea("A2")).isFiltered).toBe(false);
  engine.dispose();
  const rule = '<filterColumn colId="0"><filters><filter val="north"/></filters></filterColumn>';
  const filtered = withPart(file, "xl/tables/table1.xml", (xml) =>
    xml.replace(/<filterColumn.*<\/autoFilter>/, `${rule}</autoFilter>`),
  );
  engine = createHeadlessEngine(localCatalog, filtered.book);
  expect(engine.survey("Bid", readArea("A2")).isFiltered).toBe(true);
});

it("without the fix, the engine can't read parentheses in a heading", async () => {
  const file = await bidWithTable();
  const { createHeadlessEngine: create } = engineWithout("tableHeadings", "escapeTableHeadings");
  engine = create(localCatalog, file.book);
  await engine.calculated();
  expect(engine.getCell({ sheet: "Bid", row: 1, column: 3 })).toMatchObject({ code: "#VALUE!" });
});
