import ExcelJS from "exceljs";
import { CellError } from "../../../shared/cell";
import { localCatalog } from "../../../src/hosts/local/formulas/catalog";
import { createHeadlessEngine, type HeadlessEngine } from "../../../src/hosts/local/workbook/headless";
import type { Book } from "../../../src/xlsx/book/book";
import { differingResults } from "../../../src/xlsx/write/cachedResults";
import { openXlsx, saveXlsx, type XlsxFile } from "../../../src/xlsx/xlsxFile";
import type { SaveOptions } from "../../../src/xlsx/write/writeBook";
import { placeOf } from "../../support/place";

/** A bid as another program writes one, with things that we can't show. */
const otherWorkbook = async (): Promise<Uint8Array> => {
  const workbook = new ExcelJS.Workbook();
  const bid = workbook.addWorksheet("Bid", { views: [{ state: "frozen", ySplit: 1 }] });
  bid.columns = [{ width: 24 }, { width: 10 }, { width: 12 }];
  bid.addRow(["Item", "Feet", "Price"]);
  bid.addRow(["eave", 40, 2.5]);
  bid.addRow(["rake", 18.5, 3]);
  bid.getCell("A4").value = { richText: [{ text: "two " }, { text: "looks", font: { bold: true } }] };
  bid.getCell("D2").value = { formula: "B2*C2", result: 100 };
  bid.getCell("D3").value = { sharedFormula: "D2", result: 55.5 } as ExcelJS.CellValue;
  bid.getCell("D4").value = { formula: "SUM(D2:D3)", result: 155.5 };
  bid.getCell("D4").numFmt = '"$"#,##0.00';
  bid.getCell("A1").font = { bold: true, color: { argb: "FFFFFFFF" } };
  bid.getCell("A1").fill = { type: "pattern", pattern: "solid", fgColor: { argb: "FF2F4858" } };
  bid.getCell("A1").protection = { locked: false };
  bid.getCell("E2").value = { formula: "NOSUCHTHING(B2)", result: 7 };
  bid.getCell("F2").value = { error: "#N/A" };
  bid.getCell("G2").value = true;
  bid.mergeCells("A6:C6");
  bid.getCell("A6").value = "merged";
  bid.addConditionalFormatting({
    ref: "B2:B3",
    rules: [{ type: "expression", priority: 1, formulae: ["B2>20"], style: { font: { bold: true } } }],
  });
  bid.getCell("B2").note = "measured twice";
  workbook.addWorksheet("Prices").getCell("A1").value = 3;
  workbook.definedNames.add("Prices!$A$1", "Price");
  return new Uint8Array(await workbook.xlsx.writeBuffer());
};

const readBack = async (bytes: Uint8Array): Promise<ExcelJS.Workbook> => {
  const workbook = new ExcelJS.Workbook();
  await workbook.xlsx.load(
    bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength) as ArrayBuffer,
  );
  return workbook;
};

let engine: HeadlessEngine;
let file: XlsxFile;
let calculated: Book;

const open = async (bytes: Uint8Array): Promise<void> => {
  file = openXlsx(bytes);
  engine = createHeadlessEngine(localCatalog, file.book);
  await engine.calculated();
  calculated = engine.book();
};

const edit = async (sheet: string, address: string, content: string | number | null): Promise<void> => {
  engine.setCell({ sheet, ...placeOf(address) }, content);
  await engine.calculated();
};

const save = (options?: SaveOptions, change: (book: Book) => Book = (book) => book): Uint8Array =>
  saveXlsx({ file, calculated }, change(engine.book()), options);

const partsThatDiffer = (bytes: Uint8Array): string[] => {
  const { parts } = openXlsx(bytes);
  const paths = new Set([...parts.keys(), ...file.parts.keys()]);
  const text = (part: Uint8Array | undefined): string => Buffer.from(part ?? []).toString("latin1");
  return [...paths].filter(
    (path) => text(parts.get(path)) !== text(file.parts.get(path)) || !parts.has(path),
  );
};

beforeEach(async () => {
  await open(await otherWorkbook());
});
afterEach(() => {
  engine.dispose();
});

it("reads values, formulas, errors, rich text, names, merges, widths and frozen rows", () => {
  const cell = (address: string) =>
    file.book.sheets[0]?.cells.get(placeOf(address).row)?.get(placeOf(address).column);
  expect(cell("B3")?.value).toBe(18.5);
  expect(cell("A4")?.value).toBe("two looks");
  expect(cell("D3")).toMatchObject({ formula: "=B3*C3", value: 55.5 });
  expect(cell("F2")?.value).toEqual(new CellError("#N/A", ""));
  expect(cell("G2")?.value).toBe(true);
  expect(file.book.names).toEqual([{ name: "Price", target: "Prices!$A$1" }]);
  expect(file.book.sheets[0]?.merges).toEqual(["A6:C6"]);
  expect(file.book.sheets[0]?.frozen).toEqual({ rows: 1, columns: 0 });
  expect(file.book.styles.get(cell("A1")?.style ?? "")).toMatchObject({
    bl: 1,
    bg: { rgb: "#2f4858" },
    cl: { rgb: "#ffffff" },
  });
});

it("gives back the very same file where nothing has changed", () => {
  expect(save()).toBe(file.bytes);
});

it("changes only the sheet whose cell has changed, and its results", async () => {
  await edit("Bid", "B2", 50);
  const bytes = save();
  expect(partsThatDiffer(bytes)).toEqual(["xl/worksheets/sheet1.xml"]);
  const bid = (await readBack(bytes)).getWorksheet("Bid");
  expect(bid?.getCell("B2").value).toBe(50);
  expect(bid?.getCell("D2").value).toMatchObject({ formula: "B2*C2", result: 125 });
  expect(bid?.getCell("D3").result).toBe(55.5);
  expect(bid?.getCell("D4").result).toBe(180.5);
  expect(bid?.getCell("D4").numFmt).toBe('"$"#,##0.00');
  expect(bid?.getCell("A4").value).toMatchObject({ richText: [{ text: "two " }, { text: "looks" }] });
  expect(bid?.getCell("B2").note).toBeDefined();
});

it("keeps the file's error where the engine would have a number, and tells of it", async () => {
  const workbook = new ExcelJS.Workbook();
  const bid = workbook.addWorksheet("Bid");
  bid.getCell("A1").value = { formula: '""', result: "" };
  bid.getCell("B1").value = { formula: "IF(A1,1,2)", result: { error: "#VALUE!" } };
  bid.getCell("C1").value = { formula: "GABLE.COURSES(1)", result: { error: "#NAME?" } };
  engine.dispose();
  await open(new Uint8Array(await workbook.xlsx.writeBuffer()));
  expect(differingResults(file.book, calculated)).toEqual(['B1 on "Bid"']);
  expect((await readBack(save())).getWorksheet("Bid")?.getCell("B1").result).toEqual({ error: "#VALUE!" });
});

it("keeps the file's result of a formula that it can't work out", async () => {
  await edit("Bid", "B2", 50);
  const bid = (await readBack(save({ hasDifferingResults: true }))).getWorksheet("Bid");
  expect(bid?.getCell("E2").value).toMatchObject({ formula: "NOSUCHTHING(B2)", result: 7 });
});

it("writes a shared formula out where the cell that had it gets another", async () => {
  await edit("Bid", "D2", "=B2*C2+1");
  const bid = (await readBack(save())).getWorksheet("Bid");
  expect(bid?.getCell("D2").value).toMatchObject({ formula: "B2*C2+1", result: 101 });
  expect(bid?.getCell("D3").value).toMatchObject({ formula: "B3*C3", result: 55.5 });
  expect(bid?.getCell("D4").result).toBe(156.5);
});

it("writes our functions as Excel names them in a file, with their results, and reads them back", async () => {
  await edit("Bid", "H2", "=GABLE.PITCHANGLE(12)");
  const bytes = save();
  expect(new TextDecoder().decode(openXlsx(bytes).parts.get("xl/worksheets/sheet1.xml"))).toContain(
    "<f>_xldudf_GABLE_PITCHANGLE(12)</f><v>45</v>",
  );
  engine.dispose();
  await open(bytes);
  expect(engine.getCell({ sheet: "Bid", ...placeOf("H2") })).toBe(45);
  expect(save()).toBe(file.bytes);
});

it("writes a table that spills as a dynamic array over its cells", async () => {
  await edit("Bid", "J10", '=GABLE.OUTLINE("rectangle",20,10)');
  const bytes = save();
  const xml = new TextDecoder().decode(openXlsx(bytes).parts.get("xl/worksheets/sheet1.xml"));
  expect(xml).toMatch(/<c r="J10" t="str" cm="1"><f t="array" ref="J10:K14">_xldudf_GABLE_OUTLINE/);
  const bid = (await readBack(bytes)).getWorksheet("Bid");
  expect(["J11", "K11", "J12", "K13"].map((address) => bid?.getCell(address).value)).toEqual([0, 0, 20, 10]);
  expect(partsThatDiffer(bytes).sort()).toEqual(
    [
      "[Content_Types].xml",
      "xl/_rels/workbook.xml.rels",
      "xl/metadata1.xml",
      "xl/worksheets/sheet1.xml",
    ].sort(),
  );
  engine.dispose();
  await open(bytes);
  expect(engine.getCell({ sheet: "Bid", ...placeOf("K13") })).toBe(10);
  expect(save()).toBe(file.bytes);
});

it.each([
  "=1+1",
  "+1",
  "-1",
  "@now",
  "\t1",
  "\r1",
  'a & b <c> "d"',
  " two ",
  "6:12",
  "_x0041_",
  "line\nbreak",
  "\u000b",
])("keeps the text %j text", async (text) => {
  const bytes = save(undefined, (book) => withCell(book, "Bid", "A9", text));
  const cell = (await readBack(bytes)).getWorksheet("Bid")?.getCell("A9");
  // The oracle leaves the format's own escapes as they are.
  const expected = text === "_x0041_" ? "_x005F_x0041_" : text === "\u000b" ? "_x000B_" : text;
  expect(cell?.value).toBe(expected);
  expect(cell?.type).toBe(ExcelJS.ValueType.String);
  expect(openXlsx(bytes).book.sheets[0]?.cells.get(8)?.get(0)?.value).toBe(text);
});

const withCell = (book: Book, sheet: string, address: string, text: string): Book => {
  const { row, column } = placeOf(address);
  return {
    ...book,
    sheets: book.sheets.map((each) =>
      each.name === sheet
        ? { ...each, cells: new Map([...each.cells, [row, new Map([[column, { value: text }]])]]) }
        : each,
    ),
  };
};

it("adds sheets, names and looks, and leaves the other sheets alone", async () => {
  const bytes = save(undefined, (book) => ({
    sheets: [
      ...book.sheets,
      {
        ...(book.sheets[1] ?? fail()),
        name: "Notes & <more>",
        cells: new Map([[0, new Map([[0, { value: "here", style: "look" }]])]]),
      },
    ],
    names: [...book.names, { name: "Here", target: "'Notes & <more>'!$A$1" }],
    styles: new Map([...book.styles, ["look", { bl: 1, bg: { rgb: "#fff6d6" }, n: { pattern: "0.000" } }]]),
  }));
  expect(partsThatDiffer(bytes).sort()).toEqual(
    [
      "[Content_Types].xml",
      "xl/_rels/workbook.xml.rels",
      "xl/styles.xml",
      "xl/workbook.xml",
      "xl/worksheets/sheet3.xml",
    ].sort(),
  );
  const workbook = await readBack(bytes);
  const cell = workbook.getWorksheet("Notes & <more>")?.getCell("A1");
  expect(cell?.value).toBe("here");
  expect(cell?.font).toMatchObject({ bold: true });
  expect(cell?.fill).toMatchObject({ fgColor: { argb: "FFFFF6D6" } });
  expect(cell?.numFmt).toBe("0.000");
  expect(workbook.definedNames.getRanges("Here").ranges).toEqual(["'Notes & <more>'!$A$1"]);
  expect(workbook.definedNames.getRanges("Price").ranges).toEqual(["Prices!$A$1"]);
});

it("writes what a name means now, though it is the last of the list", async () => {
  const names = [{ name: "Price", target: "Prices!$A$2" }];
  const workbook = await readBack(save(undefined, (book) => ({ ...book, names })));
  expect(workbook.definedNames.getRanges("Price").ranges).toEqual(["Prices!$A$2"]);
});

it("keeps what a cell's look has that we can't show, when the look changes", async () => {
  const bytes = save(undefined, (book) => {
    const styles = new Map([
      ...book.styles,
      ["slanted", { bl: 1, it: 1, bg: { rgb: "#2f4858" }, cl: { rgb: "#ffffff" } }],
    ] as const);
    const [bid, ...rest] = book.sheets;
    const first = bid?.cells.get(0);
    const cells = new Map([
      ...(bid?.cells ?? []),
      [0, new Map([...(first ?? []), [0, { value: "Item", style: "slanted" }]])],
    ]);
    return { ...book, styles, sheets: [{ ...(bid ?? fail()), cells }, ...rest] };
  });
  const cell = (await readBack(bytes)).getWorksheet("Bid")?.getCell("A1");
  expect(cell?.font).toMatchObject({ bold: true, italic: true });
  expect(cell?.protection).toMatchObject({ locked: false });
});

const fail = (): never => {
  throw new Error("the workbook has lost a sheet");
};

describe("saving is refused, with the reason", () => {
  it.each([
    ["rows", [{ axis: "row", at: 0, count: 1 }], "conditional formats"],
    ["cells", "scattered", "conditional formats, comments or form controls"],
  ] as const)("where %s were moved on a sheet that holds what we don't move", (_, moves, stays) => {
    expect(() => save({ movesBySheet: new Map([["Bid", moves]]) })).toThrow(
      `The workbook wasn't saved: rows, columns or cells were moved on "Bid", and these would not move with them: ${stays}; undo the move (Ctrl+Z), then save.`,
    );
  });

  it("where the file's sheets are in a different order", () => {
    expect(() => save(undefined, (book) => ({ ...book, sheets: [...book.sheets].reverse() }))).toThrow(
      "the file's sheets are in a different order",
    );
  });

  it("where a formula has no form in a file", async () => {
    await edit("Bid", "H2", "=@B2:B3");
    expect(() => save()).toThrow(/"Bid", H2 uses @/);
  });
});
