import ExcelJS from "exceljs";
import { readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { localCatalog } from "../../../src/hosts/local/formulas/catalog";
import { createHeadlessEngine } from "../../../src/hosts/local/workbook/headless";
import { differingResults } from "../../../src/xlsx/write/cachedResults";
import { writeZip } from "../../../src/xlsx/package/zip";
import { openXlsx, saveXlsx } from "../../../src/xlsx/xlsxFile";

const EXAMPLES = join(dirname(require.resolve("xlsx-populate/package.json")), "examples");
const read = (path: string): Uint8Array => new Uint8Array(readFileSync(join(EXAMPLES, path)));

/** Made by Excel, with a chart; and two made by another library. */
const FILES = ["ranges/template.xlsx", "styles/out.xlsx", "basic/out.xlsx"];

const text = (part: Uint8Array | undefined): string => Buffer.from(part ?? []).toString("latin1");

describe.each(FILES)("a package's example workbook, %s", (path) => {
  it("is worked out to the same, comes back as it was, and changes only where it was changed", async () => {
    const bytes = read(path);
    const file = openXlsx(bytes);
    const engine = createHeadlessEngine(localCatalog, file.book);
    await engine.calculated();
    const calculated = engine.book();
    expect(differingResults(file.book, calculated)).toEqual([]);
    expect(saveXlsx({ file, calculated }, engine.book())).toBe(bytes);

    const sheet = file.book.sheets[0]?.name ?? "";
    engine.setCell({ sheet, row: 40, column: 7 }, 123.5);
    engine.setCell({ sheet, row: 41, column: 7 }, "=H41*2");
    await engine.calculated();
    const saved = openXlsx(saveXlsx({ file, calculated }, engine.book()));
    const changed = [...file.parts.keys()].filter(
      (each) => text(file.parts.get(each)) !== text(saved.parts.get(each)),
    );
    const bookkeeping = ["[Content_Types].xml", "xl/_rels/workbook.xml.rels", "xl/calcChain.xml"];
    expect(changed.filter((each) => !bookkeeping.includes(each))).toEqual(["xl/worksheets/sheet1.xml"]);
    expect(saved.parts.has("xl/calcChain.xml")).toBe(false);

    const [before, now] = [file.book, saved.book].map(({ sheets }) =>
      sheets.flatMap(({ cells }) =>
        [...cells].flatMap(([row, inRow]) => (row === 40 || row === 41 ? [] : [[row, [...inRow]]])),
      ),
    );
    expect(now).toEqual(before);
    const oracle = new ExcelJS.Workbook();
    await oracle.xlsx.load(Buffer.from(writeZip(saved.parts)) as unknown as ArrayBuffer);
    expect(oracle.getWorksheet(sheet)?.getCell("H42").value).toEqual({ formula: "H41*2", result: 247 });
    engine.dispose();
  });
});

it("says what a workbook holds that isn't shown", () => {
  const { parts, notShown } = openXlsx(read("ranges/template.xlsx"));
  expect(notShown).toEqual(["1 chart"]);
  const withMacros = new Map([...parts, ["xl/vbaProject.bin", new Uint8Array([1, 2, 3])]] as const);
  expect(openXlsx(writeZip(withMacros)).notShown).toEqual(["1 chart", "1 macro project"]);
});

it("refuses a workbook under a password", () => {
  expect(() => openXlsx(read("encryption/out.xlsx"))).toThrow(/protected by a password/);
});
