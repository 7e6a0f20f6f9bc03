import { ICommandService } from "@univerjs/core";
import { RemoveSheetCommand, SetWorksheetNameCommand } from "@univerjs/sheets";
import ExcelJS from "exceljs";
import { localCatalog } from "../../../src/hosts/local/formulas/catalog";
import { createHeadlessEngine, type HeadlessEngine } from "../../../src/hosts/local/workbook/headless";
import type { Book } from "../../../src/xlsx/book/book";
import { updateReferences } from "../../../src/xlsx/formulas/sheetReferences";
import { writeZip } from "../../../src/xlsx/package/zip";
import { openXlsx, saveXlsx, type XlsxFile } from "../../../src/xlsx/xlsxFile";
import { convert, describeWithLibreOffice } from "../../support/libreOffice";
import { sheetOf } from "./bookOf";

/** A bid that reads a sheet of prices, also where only the file knows of it. */
const bidOfPrices = async (): Promise<Uint8Array> => {
  const workbook = new ExcelJS.Workbook();
  const prices = workbook.addWorksheet("Prices", { pageSetup: { printArea: "A1:B2" } });
  prices.addRows([[3], [4]]);
  prices.getCell("A1").note = "until June";
  const bid = workbook.addWorksheet("Bid", { pageSetup: { printArea: "A1:C2" } });
  bid.getCell("A1").value = { formula: "Prices!A1*2", result: 6 };
  bid.getCell("A2").value = { formula: 'SUM(Prices!$A$1:$A$2)&" Prices!"', result: "7 Prices!" };
  bid.getCell("B1").dataValidation = { type: "list", allowBlank: true, formulae: ["Prices!$A$1:$A$2"] };
  bid.getCell("C1").value = { text: "prices", hyperlink: "#Prices!A1" };
  bid.addConditionalFormatting({
    ref: "A1:A2",
    rules: [
      { type: "expression", priority: 1, formulae: ["Prices!$A$1>2"], style: { font: { bold: true } } },
    ],
  });
  workbook.definedNames.add("Prices!$A$2", "Second");
  workbook.definedNames.add("Bid!$A$1", "Double");
  workbook.views = [
    { x: 0, y: 0, width: 100, height: 100, firstSheet: 0, activeTab: 1, visibility: "visible" },
  ];
  return new Uint8Array(await workbook.xlsx.writeBuffer());
};

interface OpenBid {
  readonly file: XlsxFile;
  readonly engine: HeadlessEngine;
  readonly calculated: Book;
  run(command: { id: string }, params?: object): Promise<void>;
  save(): Uint8Array;
}

const open = async (bytes: Uint8Array): Promise<OpenBid> => {
  const file = openXlsx(bytes);
  const engine = createHeadlessEngine(localCatalog, file.book);
  await engine.calculated();
  const calculated = engine.book();
  return {
    file,
    engine,
    calculated,
    run: async ({ id }, params) => {
      const subUnitId = engine.workbook.getSheetBySheetName("Prices")?.getSheetId();
      await engine.injector
        .get(ICommandService)
        .executeCommand(id, { unitId: engine.workbook.getUnitId(), subUnitId, ...params });
      await engine.calculated();
    },
    save: () => saveXlsx({ file, calculated }, engine.book()),
  };
};

const readBack = async (bytes: Uint8Array): Promise<ExcelJS.Workbook> => {
  const workbook = new ExcelJS.Workbook();
  await workbook.xlsx.load(new Uint8Array(bytes).buffer);
  return workbook;
};

const partText = (bytes: Uint8Array, path: string): string =>
  new TextDecoder().decode(openXlsx(bytes).parts.get(path));

let bid: OpenBid;
beforeEach(async () => {
  bid = await open(await bidOfPrices());
});
afterEach(() => {
  bid.engine.dispose();
});

describe("a sheet of the file that was renamed", () => {
  const renamed = async (): Promise<Uint8Array> => {
    await bid.run(SetWorksheetNameCommand, { name: "May's & June's" });
    return bid.save();
  };

  it("is saved under its new name, with its part, and whatever calls on it follows", async () => {
    const bytes = await renamed();
    expect([...openXlsx(bytes).parts.keys()]).toEqual([...bid.file.parts.keys()]);
    const workbook = await readBack(bytes);
    expect(workbook.worksheets.map(({ name }) => name)).toEqual(["May's & June's", "Bid"]);
    const sheet = workbook.getWorksheet("Bid");
    expect(sheet?.getCell("A1").value).toEqual({ formula: "'May''s & June''s'!A1*2", result: 6 });
    expect(sheet?.getCell("A2").formula).toBe(`SUM('May''s & June''s'!$A$1:$A$2)&" Prices!"`);
    expect(sheet?.getCell("B1").dataValidation.formulae).toEqual(["'May''s & June''s'!$A$1:$A$2"]);
    const xml = partText(bytes, "xl/worksheets/sheet2.xml");
    expect(xml).toContain("<formula>'May''s &amp; June''s'!$A$1&gt;2</formula>");
    expect(xml).toMatch(/location="[^"]*May''s &amp; June''s[^"]*!A1"/);
    const names = openXlsx(bytes).book.names;
    expect(names).toEqual([
      { name: "Second", target: "'May''s & June''s'!$A$2" },
      { name: "Double", target: "Bid!$A$1" },
    ]);
    expect(workbook.getWorksheet("May's & June's")?.pageSetup.printArea).toBe("A1:B2");
  });

  it("may give its name to a new one", async () => {
    await bid.run(SetWorksheetNameCommand, { name: "Old prices" });
    const { sheets, ...book } = bid.engine.book();
    const fresh = sheetOf("Prices", { A1: { value: 5 } });
    const bytes = saveXlsx(bid, { ...book, sheets: [...sheets, fresh] });
    const workbook = await readBack(bytes);
    expect(workbook.worksheets.map(({ name }) => name)).toEqual(["Old prices", "Bid", "Prices"]);
    expect(workbook.getWorksheet("Old prices")?.getCell("A1").value).toBe(3);
    expect(workbook.getWorksheet("Prices")?.getCell("A1").value).toBe(5);
  });

  it("and named back is called as before", async () => {
    await bid.run(SetWorksheetNameCommand, { name: "Old prices" });
    const subUnitId = bid.engine.workbook.getSheetBySheetName("Old prices")?.getSheetId();
    await bid.run(SetWorksheetNameCommand, { name: "Prices", subUnitId });
    expect(followed(bid.save())).toEqual(followed(bid.file.bytes));
  });
});

/** The formulas of the bid without the quotes that a sheet's name may have. */
const followed = (bytes: Uint8Array): unknown =>
  [...(openXlsx(bytes).book.sheets[1]?.cells.values() ?? [])].map((row) =>
    [...row.values()].map(({ formula }) => formula?.replaceAll("'", "")),
  );

describe("a sheet of the file that was taken away", () => {
  it("is gone from the saved one, with its comments and names, and what called on it says so", async () => {
    await bid.run(RemoveSheetCommand);
    const bytes = bid.save();
    const { parts, book } = openXlsx(bytes);
    expect([...parts.keys()].filter((path) => /sheet1\.xml|comments|vmlDrawing/.test(path))).toEqual([]);
    expect(partText(bytes, "[Content_Types].xml")).not.toMatch(/sheet1\.xml|comments/);
    const workbookXml = partText(bytes, "xl/workbook.xml");
    expect(workbookXml).toMatch(/activeTab="0"/);
    expect(workbookXml.match(/<definedName .*?<\/definedName>/g)).toEqual([
      expect.stringMatching(/name="Second">#REF!</),
      expect.stringMatching(/name="Double">Bid!\$A\$1</),
      expect.stringMatching(/name="_xlnm.Print_Area" localSheetId="0">.*Bid/),
    ]);
    expect(book.names.map(({ target }) => target)).toEqual(["=#REF!", "Bid!$A$1"]);
    const sheet = (await readBack(bytes)).getWorksheet("Bid");
    expect(sheet?.getCell("A1").value).toEqual({ formula: "#REF!*2", result: { error: "#REF!" } });
    expect(sheet?.getCell("B1").dataValidation.formulae).toEqual(["#REF!"]);
    expect(partText(bytes, "xl/worksheets/sheet2.xml")).toContain("<formula>#REF!&gt;2</formula>");
  });
});

it("what a pivot table or a form of the file goes by follows, and no source in another file", async () => {
  const paths = [
    "xl/pivotCache/pivotCacheDefinition1.xml",
    "xl/ctrlProps/ctrlProp1.xml",
    "xl/pivotCache/pivotCacheDefinition2.xml",
  ];
  const xml = [
    `<d><cacheSource><worksheetSource ref="A1:B2" sheet="Prices"/></cacheSource></d>`,
    `<formControlPr fmlaLink="Prices!$A$1" fmlaRange="Prices!$A$1:$A$2"/>`,
    `<d xmlns:r="r"><worksheetSource ref="A1:B2" sheet="Prices" r:id="rId1"/></d>`,
  ];
  const texts = paths.map((path, index): [string, Uint8Array] => [
    path,
    new TextEncoder().encode(xml[index]),
  ]);
  const withParts = await open(writeZip(new Map([...bid.file.parts, ...texts])));
  await withParts.run(SetWorksheetNameCommand, {
    name: "Rates",
    subUnitId: withParts.engine.workbook.getSheetBySheetName("Prices")?.getSheetId(),
  });
  const bytes = withParts.save();
  const [pivot, form, other] = paths.map((path) => partText(bytes, path));
  expect(pivot).toContain('sheet="Rates"');
  expect(form).toContain(`fmlaLink="'Rates'!$A$1" fmlaRange="'Rates'!$A$1:$A$2"`);
  expect(other).toContain('sheet="Prices"');
  withParts.engine.dispose();
});

/** A workbook whose totals read a table, and sheets from one to another. */
const bidOfTables = async (): Promise<Uint8Array> => {
  const workbook = new ExcelJS.Workbook();
  workbook.addWorksheet("May").addRow([1]);
  workbook.addWorksheet("June").addRow([2]);
  const prices = workbook.addWorksheet("Prices");
  const columns = [{ name: "Each" }];
  prices.addTable({ name: "Rates", ref: "A1", headerRow: true, columns, rows: [[3], [4]] });
  const total = workbook.addWorksheet("Total");
  total.getCell("A1").value = { formula: "SUM(Rates[Each])", result: 7 };
  total.getCell("A2").value = { formula: "SUM(May:June!A1)", result: 3 };
  workbook.definedNames.add("May!$A$1", "First");
  return new Uint8Array(await workbook.xlsx.writeBuffer());
};

describe("what the engine doesn't let follow", () => {
  it.each([
    ["Prices", "taken away", RemoveSheetCommand, "#REF!", "SUM(May:June!A1)"],
    ["June", "taken away", RemoveSheetCommand, "Rates[Each]", "SUM(#REF!)"],
    ["June", "renamed", SetWorksheetNameCommand, "Rates[Each]", "SUM('May:Later'!A1)"],
  ])("follows in the saved file where %s was %s", async (sheet, _, command, table, months) => {
    const book = await open(await bidOfTables());
    const subUnitId = book.engine.workbook.getSheetBySheetName(sheet)?.getSheetId();
    await book.run(command, { subUnitId, name: "Later" });
    const total = (await readBack(book.save())).getWorksheet("Total");
    expect(total?.getCell("A1").formula).toBe(`SUM(${table})`);
    expect(total?.getCell("A2").formula).toBe(months);
    book.engine.dispose();
  });
});

test.each([
  ["Prices!A1+'Prices'!$B$2:C3", "'New'!A1+'New'!$B$2:C3"],
  [
    "PRICES!A1&\"Prices!A1\"&'[1]Prices'!A1&[1]Prices!A1&'My Prices'!A1",
    "'New'!A1&\"Prices!A1\"&'[1]Prices'!A1&[1]Prices!A1&'My Prices'!A1",
  ],
  ["Gone!A1+SUM('Gone'!$A:$B)+Gone!Total+Gone!A1:B2", "#REF!+SUM(#REF!)+#REF!+#REF!"],
  ["SUM(Prices:Bid!A1,Bid:PRICES!B2)", "SUM('New:Bid'!A1,'Bid:New'!B2)"],
  ["SUM('Bid 1:Prices'!A1)+SUM(Bid:May!A1)", "SUM('Bid 1:New'!A1)+SUM(Bid:May!A1)"],
  ["SUM(Gone:Bid!A1:B2)+SUM('Bid 1:Gone'!A1)", "SUM(#REF!)+SUM(#REF!)"],
  ["Prices!First:Prices!A9", "'New'!First:'New'!A9"],
  ["SUM(Lost[[#All],[Feet]])+ROWS(lost)+LOST(1)+Lost2[Feet]", "SUM(#REF!)+ROWS(#REF!)+LOST(1)+Lost2[Feet]"],
])("%s with sheets that are renamed and gone, and a table that is gone", (formula, now) => {
  const sheets = new Map([
    ["prices", "New"],
    ["gone", undefined],
  ]);
  expect(updateReferences(formula, { sheets, deletedTables: new Set(["lost"]) })).toBe(now);
});

describeWithLibreOffice("in LibreOffice", () => {
  it.each([
    ["renamed", SetWorksheetNameCommand, ["May's", "Bid"], 6],
    ["taken away", RemoveSheetCommand, ["Bid"], { error: "#REF!" }],
  ] as const)(
    "a file opens whose sheet was %s",
    async (_, command, names, result) => {
      await bid.run(command, { name: "May's" });
      const workbook = await readBack(await convert(bid.save(), "xlsx", "xlsx"));
      expect(workbook.worksheets.map(({ name }) => name)).toEqual(names);
      expect(workbook.getWorksheet("Bid")?.getCell("A1").result).toEqual(result);
    },
    60_000,
  );
});
