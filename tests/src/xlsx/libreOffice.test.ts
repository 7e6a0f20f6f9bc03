import { CellError, type Cell } from "../../../shared/cell";
import { localCatalog } from "../../../src/hosts/local/formulas/catalog";
import { createHeadlessEngine } from "../../../src/hosts/local/workbook/headless";
import type { Book } from "../../../src/xlsx/book/book";
import { differingResults } from "../../../src/xlsx/write/cachedResults";
import { openXlsx, saveXlsx } from "../../../src/xlsx/xlsxFile";
import { writeZip } from "../../../src/xlsx/package/zip";
import { convert, describeWithLibreOffice } from "../../support/libreOffice";

jest.setTimeout(180_000);

const escape = (text: string): string =>
  text.replaceAll("&", "&amp;").replaceAll('"', "&quot;").replaceAll("<", "&lt;");

/** A cell of LibreOffice's own format: `of:=...` is a formula. */
const cell = (content: string | number | null): string => {
  if (content === null) return "<table:table-cell/>";
  if (typeof content === "number")
    return `<table:table-cell office:value-type="float" office:value="${content}"/>`;
  if (content.startsWith("of:=")) return `<table:table-cell table:formula="${escape(content)}"/>`;
  return `<table:table-cell office:value-type="string"><text:p>${escape(content)}</text:p></table:table-cell>`;
};

type Rows = readonly (readonly (string | number | null)[])[];

const sheet = (name: string, rows: Rows): string =>
  `<table:table table:name="${name}">${rows.map((row) => `<table:table-row>${row.map(cell).join("")}</table:table-row>`).join("")}</table:table>`;

const fods = (...sheets: readonly string[]): string =>
  `<?xml version="1.0" encoding="UTF-8"?><office:document xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0" xmlns:of="urn:oasis:names:tc:opendocument:xmlns:of:1.2" office:version="1.2" office:mimetype="application/vnd.oasis.opendocument.spreadsheet"><office:body><office:spreadsheet>${sheets.join("")}<table:named-expressions><table:named-range table:name="Rate" table:cell-range-address="$Prices.$B$1" table:base-cell-address="$Prices.$A$1"/></table:named-expressions></office:spreadsheet></office:body></office:document>`;

const BIDS: Readonly<Record<string, string>> = {
  "a bid of two sheets": fods(
    sheet("Bid", [
      ["Item", "Feet", "Price", "Amount"],
      ["eave", 40, "of:=VLOOKUP([.A2];[$Prices.A2:.B4];2;0)", "of:=[.B2]*[.C2]"],
      ["rake", 18.5, "of:=VLOOKUP([.A3];[$Prices.A2:.B4];2;0)", "of:=[.B3]*[.C3]"],
      ["ridge", 60, "of:=VLOOKUP([.A4];[$Prices.A2:.B4];2;0)", "of:=[.B4]*[.C4]"],
      ["total", "of:=SUM([.B2:.B4])", null, "of:=SUM([.D2:.D4])"],
      ["tax", null, null, "of:=ROUND([.D5]*Rate;2)"],
    ]),
    sheet("Prices", [
      ["rate", 0.0825],
      ["eave", 2.5],
      ["rake", 3],
      ["ridge", 4.75],
    ]),
  ),
  "texts, dates, logic and errors": fods(
    sheet("Checks", [
      ['of:=UPPER("ridge")&" "&LEN("cap")', "of:=DATE(2026;2;28)+1", 'of:=IF([.B3]>2;"long";"short")'],
      ["of:=1/0", 'of:=IFERROR([.A2];"none")', "of:=AND(TRUE();[.B3]=3)"],
      ["=1+1", 3, 'of:=COUNTIF([.B1:.B3];">2")'],
      ["of:=NA()", "of:=INDEX([.B1:.B3];3)", "of:=SUMPRODUCT([.B3:.B3];[.B3:.B3])"],
      ['of:=MID("standing";2;3)', "of:=ROUNDUP(2.1;0)", "of:=MATCH(3;[.B3:.B3];0)"],
    ]),
    sheet("Prices", [["rate", 1]]),
  ),
  "a long column of one formula": fods(
    sheet(
      "Runs",
      Array.from({ length: 200 }, (_, row) => [
        row + 1,
        `of:=[.A${row + 1}]*2+SQRT([.A${row + 1}])`,
        `of:=SUM([.A$1:.A${row + 1}])`,
      ]),
    ),
    sheet("Prices", [["rate", 1]]),
  ),
};

/** The file without the results of its formulas, so that LibreOffice has to calculate them. */
const withoutResults = (bytes: Uint8Array): Uint8Array => {
  const parts = new Map(openXlsx(bytes).parts);
  for (const [path, part] of parts)
    if (/worksheets\/sheet/.test(path)) {
      const text = new TextDecoder().decode(part).replace(/(<\/f>|<f [^>]*\/>)<v>[^<]*<\/v>/g, "$1");
      parts.set(path, new TextEncoder().encode(text));
    }
  return writeZip(parts);
};

const recalculated = async (bytes: Uint8Array): Promise<Book> =>
  openXlsx(new Uint8Array(await convert(withoutResults(bytes), "xlsx", "xlsx"))).book;

const plain = (value: Cell): Cell | string => {
  if (value instanceof CellError) return value.code;
  return typeof value === "number" ? Number(value.toPrecision(12)) : value;
};

const valuesOf = ({ sheets }: Book): Record<string, unknown> =>
  Object.fromEntries(
    sheets.flatMap(({ name, cells }) =>
      [...cells].flatMap(([row, inRow]) =>
        [...inRow].flatMap(([column, { value }]) =>
          value === null ? [] : [[`${name} ${row},${column}`, plain(value)]],
        ),
      ),
    ),
  );

describeWithLibreOffice("workbooks made by LibreOffice", () => {
  describe.each(Object.entries(BIDS))("%s", (_, source) => {
    let bytes: Uint8Array;
    beforeAll(async () => {
      bytes = new Uint8Array(await convert(source, "fods", "xlsx"));
    });

    const open = async () => {
      const file = openXlsx(bytes);
      const engine = createHeadlessEngine(localCatalog, file.book);
      await engine.calculated();
      return { file, engine, calculated: engine.book() };
    };

    it("calculates to the same here, and comes back as the very same file", async () => {
      const { file, engine, calculated } = await open();
      expect(differingResults(file.book, calculated)).toEqual([]);
      expect(saveXlsx({ file, calculated }, engine.book())).toBe(bytes);
      engine.dispose();
    });

    it("keeps every cell when one has changed, and LibreOffice works the rest out to what we stored", async () => {
      const { file, engine, calculated } = await open();
      const [first] = file.book.sheets;
      const sheetName = first?.name ?? "";
      engine.setCell({ sheet: sheetName, row: 2, column: 1 }, 7);
      engine.setCell({ sheet: sheetName, row: 250, column: 5 }, "=GABLE.PITCHANGLE(12)");
      engine.setCell({ sheet: sheetName, row: 251, column: 5 }, "=SUM(B3,1)");
      await engine.calculated();
      const saved = saveXlsx({ file, calculated }, engine.book());
      const stored = openXlsx(saved).book;
      const formulas = (book: Book): unknown[] =>
        book.sheets.flatMap(({ cells }) =>
          [...cells].flatMap(([row, inRow]) =>
            [...inRow].flatMap(([column, { formula }]) =>
              formula && row < 250 ? [[row, column, formula]] : [],
            ),
          ),
        );
      const withoutEdited = (all: unknown[]): unknown[] => all.filter((each) => !/^2,1,/.test(String(each)));
      expect(withoutEdited(formulas(stored))).toEqual(withoutEdited(formulas(file.book)));
      const expected = valuesOf(stored);
      expect(expected[`${sheetName} 250,5`]).toBe(45);
      expect(expected[`${sheetName} 251,5`]).toBe(8);
      // LibreOffice doesn't have our functions.
      const theirs = valuesOf(await recalculated(saved));
      expect({ ...theirs, [`${sheetName} 250,5`]: 45 }).toEqual(expected);
      engine.dispose();
    });
  });
});
