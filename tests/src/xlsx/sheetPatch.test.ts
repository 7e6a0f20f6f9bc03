import { strToU8 } from "fflate";
import type { Book, BookCell, BookSheet } from "../../../src/xlsx/book/book";
import { emptyPackage, DEFAULT_STYLES } from "../../../src/xlsx/package/emptyPackage";
import { openXlsx, saveXlsx, type XlsxFile } from "../../../src/xlsx/xlsxFile";
import { dimensionChanges } from "../../../src/xlsx/write/sheetFrame";
import { parseXml } from "../../../src/xlsx/xml/xml";
import { writeZip } from "../../../src/xlsx/package/zip";
import { bookOf } from "./bookOf";

const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const SHEET = "xl/worksheets/sheet1.xml";

/** A workbook of one sheet, whose part is this text, with one look beside the usual one. */
const fileOf = (sheet: string): XlsxFile => {
  const { parts } = openXlsx(saveXlsx(undefined, bookOf({ A1: { value: 1 } })));
  const looks = DEFAULT_STYLES.replace(
    /<cellXfs count="1">(.*?)<\/cellXfs>/,
    '<cellXfs count="2">$1$1</cellXfs>',
  );
  return openXlsx(writeZip(new Map([...parts, [SHEET, strToU8(sheet)], ["xl/styles.xml", strToU8(looks)]])));
};

const sheetText = (inside: string): string => `<worksheet xmlns="${MAIN}">${inside}</worksheet>`;

/** The sheet's text after a change. */
const patched = (file: XlsxFile, change: (sheet: BookSheet) => Partial<BookSheet>): string => {
  const [sheet] = file.book.sheets;
  if (!sheet) throw new Error("the file has no sheet");
  const now: Book = { ...file.book, sheets: [{ ...sheet, ...change(sheet) }] };
  const saved = openXlsx(saveXlsx({ file, calculated: file.book }, now));
  return new TextDecoder().decode(saved.parts.get(SHEET));
};

const put = (row: number, column: number, cell: BookCell) => (sheet: BookSheet) => ({
  cells: new Map([...sheet.cells, [row, new Map([...(sheet.cells.get(row) ?? []), [column, cell]])]]),
});

test("keeps unknown elements, attributes, comments and white space byte for byte", () => {
  const before = sheetText(
    `<!-- kept -->\n <sheetData>\n  <row r="1" ph="1" odd:x='1' xmlns:odd="urn:odd"><c r="A1"><v>1</v></c><c r="B1" vm="3"><v>2</v></c></row>\n </sheetData><odd:thing xmlns:odd="urn:odd" a='b'/>`,
  );
  const text = patched(fileOf(before), put(0, 0, { value: 5 }));
  expect(text).toBe(before.replace("<v>1</v>", "<v>5</v>"));
});

test("a sheet whose elements have a prefix gets cells with it", () => {
  const file = fileOf(
    `<x:worksheet xmlns:x="${MAIN}"><x:sheetData><x:row r="2"><x:c r="B2"><x:v>1</x:v></x:c></x:row></x:sheetData></x:worksheet>`,
  );
  const text = patched(file, put(0, 0, { value: "first" }));
  expect(text).toContain(
    '<x:row r="1"><x:c r="A1" t="inlineStr"><x:is><x:t xml:space="preserve">first</x:t></x:is></x:c></x:row><x:row r="2">',
  );
});

test("rows and cells that don't say where they stand are told before others come between", () => {
  const file = fileOf(
    sheetText("<sheetData><row><c><v>1</v></c><c><v>2</v></c></row><row><c><v>3</v></c></row></sheetData>"),
  );
  expect(file.book.sheets[0]?.cells.get(1)?.get(0)?.value).toBe(3);
  const text = patched(file, put(0, 3, { value: 4 }));
  expect(text).toContain(
    '<row r="1"><c r="A1"><v>1</v></c><c r="B1"><v>2</v></c><c r="D1"><v>4</v></c></row><row r="2"><c r="A2"><v>3</v></c></row>',
  );
});

test("a look that went away with its row stays on no cell that came there", () => {
  const row = (r: number, inside: string): string => `<row r="${r}">${inside}</row>`;
  const file = fileOf(
    sheetText(
      `<cols><col min="3" max="3" width="9" style="1"/></cols><sheetData>${row(1, '<c r="A1" s="1"><v>1</v></c><c r="B1" s="1"/><c r="C1" s="1"/><c r="D1" s="1"><v>4</v></c>')}</sheetData>`,
    ),
  );
  const [cells] = file.book.sheets.map((sheet) => sheet.cells.get(0));
  const text = patched(file, () => ({
    cells: new Map([
      [
        0,
        new Map([
          [0, { value: 5 }],
          [3, { value: null, style: cells?.get(3)?.style ?? "" }],
        ]),
      ],
      [1, cells ?? new Map()],
    ]),
  }));
  // Column C gives its cells a look of its own, and a cell that was cleared keeps its own.
  expect(text).toContain(row(1, '<c r="A1"><v>5</v></c><c r="C1" s="1"/><c r="D1" s="1"/>'));
  expect(text).toContain(
    row(2, '<c r="A2" s="1"><v>1</v></c><c r="B2" s="1"/><c r="C2" s="1"/><c r="D2" s="1"><v>4</v></c>'),
  );
});

test("cells come in their places, rows too, and empty lists are opened", () => {
  const text = patched(fileOf(sheetText('<dimension ref="A1"/><sheetData/>')), (sheet) => ({
    cells: new Map([
      ...sheet.cells,
      [
        4,
        new Map([
          [2, { value: true }],
          [0, { value: 1.5 }],
        ]),
      ],
      [1, new Map([[1, { value: null, formula: "=A5" }]])],
    ]),
  }));
  expect(text).toContain(
    '<dimension ref="A1:C5"/><sheetData><row r="2"><c r="B2"><f>A5</f></c></row><row r="5"><c r="A5"><v>1.5</v></c><c r="C5" t="b"><v>1</v></c></row></sheetData>',
  );
});

test("an old array formula keeps its form while its results change, and its cells follow", () => {
  const file = fileOf(
    sheetText(
      '<sheetData><row r="1"><c r="A1"><f t="array" ref="A1:A2">B1:B2*2</f><v>2</v></c></row><row r="2"><c r="A2"><v>4</v></c></row></sheetData>',
    ),
  );
  expect(file.book.sheets[0]?.cells.get(1)?.get(0)).toEqual({ value: 4, isSpilled: true });
  const text = patched(file, () => ({
    cells: new Map([
      [0, new Map<number, BookCell>([[0, { value: 6, formula: "=B1:B2*2" }]])],
      [1, new Map<number, BookCell>([[0, { value: 8, isSpilled: true }]])],
    ]),
  }));
  expect(text).toContain(
    '<c r="A1"><f t="array" ref="A1:A2">B1:B2*2</f><v>6</v></c></row><row r="2"><c r="A2"><v>8</v></c>',
  );
});

test("a plain formula of the file that would spill here stays one cell, and what it would fill isn't written", () => {
  const before = sheetText('<sheetData><row r="1"><c r="A1"><f>B1:B2*2</f><v>2</v></c></row></sheetData>');
  const text = patched(fileOf(before), () => ({
    cells: new Map([
      [
        0,
        new Map<number, BookCell>([[0, { value: 6, formula: "=B1:B2*2", spill: { rows: 2, columns: 1 } }]]),
      ],
      [1, new Map<number, BookCell>([[0, { value: 8, isSpilled: true }]])],
    ]),
  }));
  expect(text).toBe(before);
});

test("widths are changed column by column, the rest of a run of columns stays", () => {
  const file = fileOf(
    sheetText('<cols><col min="1" max="3" width="10" customWidth="1" bestFit="1"/></cols><sheetData/>'),
  );
  const text = patched(file, (sheet) => ({ columns: new Map([...sheet.columns, [1, { sizePx: 140 }]]) }));
  expect(text).toContain(
    '<cols><col min="1" max="1" width="10" customWidth="1" bestFit="1"/><col min="2" max="2" width="20" customWidth="1" bestFit="1"/><col min="3" max="3" width="10" customWidth="1" bestFit="1"/></cols>',
  );
});

test("heights, merged cells and frozen rows are changed in place", () => {
  const file = fileOf(
    sheetText(
      '<sheetViews><sheetView workbookViewId="0" zoomScale="90"/></sheetViews><sheetData><row r="1" ht="15"><c r="A1"><v>1</v></c></row></sheetData><pageMargins left="1" right="1" top="1" bottom="1" header="1" footer="1"/>',
    ),
  );
  const text = patched(file, () => ({
    rows: new Map([[0, { sizePx: 40 }]]),
    merges: ["A1:B2"],
    frozen: { rows: 2, columns: 1 },
  }));
  expect(text).toContain(
    '<sheetView workbookViewId="0" zoomScale="90"><pane xSplit="1" ySplit="2" topLeftCell="B3" activePane="bottomRight" state="frozen"/></sheetView>',
  );
  expect(text).toContain('<row r="1" ht="30" customHeight="1"><c r="A1"><v>1</v></c></row>');
  expect(text).toContain(
    '</sheetData><mergeCells count="1"><mergeCell ref="A1:B2"/></mergeCells><pageMargins',
  );
});

test("a signed workbook comes back as it was, and a changed one is refused", () => {
  const { parts } = fileOf(sheetText("<sheetData/>"));
  const file = openXlsx(writeZip(new Map([...parts, ["_xmlsignatures/sig1.xml", strToU8("<Signature/>")]])));
  expect(saveXlsx({ file, calculated: file.book }, file.book)).toBe(file.bytes);
  expect(() => patched(file, put(0, 0, { value: 1 }))).toThrow(/digital signature/);
});

test("the package that new workbooks are written into has a sheet list, looks and nothing else", () => {
  expect([...emptyPackage().keys()]).toEqual([
    "[Content_Types].xml",
    "_rels/.rels",
    "xl/workbook.xml",
    "xl/_rels/workbook.xml.rels",
    "xl/styles.xml",
  ]);
});

test("the used range follows more cells than a call may have arguments", () => {
  const part = parseXml(strToU8(sheetText('<dimension ref="B2:C3"/>')), SHEET);
  const before = bookOf({}).sheets[0] as BookSheet;
  const touched = Array.from({ length: 200_000 }, (_, row) => ({ row, column: row % 5 }));
  const [change] = dimensionChanges({ part, before, now: before, x: "" }, touched);
  expect(change?.text).toBe('<dimension ref="A1:E200000"/>');
});
