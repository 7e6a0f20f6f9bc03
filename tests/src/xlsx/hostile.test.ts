import { strToU8, zipSync } from "fflate";
import { emptyPackage, EMPTY_SHEET } from "../../../src/xlsx/package/emptyPackage";
import { openXlsx, saveXlsx } from "../../../src/xlsx/xlsxFile";
import { writeZip, type Parts } from "../../../src/xlsx/package/zip";
import { bookOf } from "./bookOf";

const good = (): Map<string, Uint8Array> =>
  new Map(openXlsx(saveXlsx(undefined, bookOf({ A1: { value: 1 } }))).parts);

const withPart = (path: string, text: string): Parts => new Map([...good(), [path, strToU8(text)]]);

const SHEET = "xl/worksheets/sheet1.xml";

test.each<[string, () => Uint8Array, RegExp]>([
  ["nothing", () => new Uint8Array(), /isn't an \.xlsx workbook/],
  ["text", () => strToU8("Dear estimator, ".repeat(50)), /isn't an \.xlsx workbook/],
  [
    "an old or protected file",
    () => new Uint8Array([0xd0, 0xcf, 0x11, 0xe0, ...new Array<number>(600).fill(0)]),
    /password/,
  ],
  ["a zip of something else", () => zipSync({ "a.txt": strToU8("a") }), /isn't an \.xlsx workbook/],
  ["a package without sheets", () => writeZip(emptyPackage()), /no sheet with cells/],
  ["half a file", () => writeZip(good()).slice(0, 900), /isn't an \.xlsx workbook/],
  [
    "a path out of the package",
    () => zipSync({ ...Object.fromEntries(good()), "../../evil": strToU8("x") }),
    /with an invalid name/,
  ],
  [
    "a part that is called __proto__",
    () => {
      const bytes = writeZip(withPart("xl/__prot0__", "x"));
      const text = new TextDecoder("latin1").decode(bytes).replaceAll("__prot0__", "__proto__");
      return Uint8Array.from(text, (character) => character.charCodeAt(0));
    },
    /with an invalid name/,
  ],
  [
    "a document type",
    () => writeZip(withPart(SHEET, `<!DOCTYPE worksheet [<!ENTITY a "aaaa">]>${EMPTY_SHEET}`)),
    /declares a document type/,
  ],
  [
    "an unknown entity",
    () => writeZip(withPart(SHEET, EMPTY_SHEET.replace("<sheetData/>", "<sheetData>&a;</sheetData>"))),
    /not well-formed/,
  ],
  [
    "a tag left open",
    () => writeZip(withPart(SHEET, EMPTY_SHEET.replace("<sheetData/>", "<sheetData>"))),
    /not well-formed/,
  ],
  [
    "very deep nesting",
    () =>
      writeZip(withPart(SHEET, EMPTY_SHEET.replace("<sheetData/>", "<a>".repeat(500) + "</a>".repeat(500)))),
    /too many elements or nests them too deep/,
  ],
  [
    "a target out of the package",
    () => {
      const parts = good();
      const path = "xl/_rels/workbook.xml.rels";
      const text = new TextDecoder()
        .decode(parts.get(path))
        .replace("/xl/worksheets/sheet1.xml", "../../../etc/passwd");
      return writeZip(new Map([...parts, [path, strToU8(text)]]));
    },
    /points outside the file/,
  ],
])("%s is rejected with a message", (_, make, message) => {
  expect(() => openXlsx(make())).toThrow(message);
});

describe("zip bombs", () => {
  /** A file whose directory says another size of one part than is packed. */
  const lying = (size: number): Uint8Array => {
    const parts = new Map([...good(), ["xl/media/big.bin", new Uint8Array(5_000_000)]]);
    const bytes = writeZip(parts);
    const view = new DataView(bytes.buffer);
    for (let at = 0; at + 46 < bytes.length; at++)
      if (view.getUint32(at, true) === 0x02014b50 && view.getUint32(at + 24, true) === 5_000_000)
        view.setUint32(at + 24, size, true);
    return bytes;
  };

  it("stops at the size that a part declares", () => {
    expect(() => openXlsx(lying(1000))).toThrow(/damaged: its part xl\/media\/big.bin/);
  });

  it("doesn't unpack what declares too much", () => {
    expect(() => openXlsx(lying(2_000_000_000))).toThrow(/2000 MB unpacked, more than the limit of 120 MB/);
  });

  it("counts all parts together", () => {
    const parts = good();
    for (let index = 0; index < 4; index++) parts.set(`xl/media/${index}.bin`, new Uint8Array(90_000_000));
    expect(() => openXlsx(writeZip(parts))).toThrow(/unpacked, more than the limit of 300 MB/);
  });

  it("counts parts", () => {
    const parts = good();
    for (let index = 0; index < 5_001; index++) parts.set(`xl/media/${index}.bin`, new Uint8Array(1));
    expect(() => openXlsx(writeZip(parts))).toThrow(/more than the limit of 5000/);
  });
});

test("a flipped bit is noticed", () => {
  const bytes = Uint8Array.from(zipSync(Object.fromEntries(good()), { level: 0 }));
  const at = new TextDecoder("latin1").decode(bytes).indexOf("<sheetData>") + 3;
  bytes[at] = 0x58;
  expect(() => openXlsx(bytes)).toThrow(/damaged/);
});

test("names that are properties of every object are only names", () => {
  const book = bookOf(
    { A1: { value: "constructor" } },
    { names: [{ name: "__proto__", target: "'Bid'!$A$1" }], sheet: "__proto__" },
  );
  const { book: read } = openXlsx(saveXlsx(undefined, book));
  expect(read.names).toEqual([{ name: "__proto__", target: "'Bid'!$A$1" }]);
  expect(read.sheets[0]?.name).toBe("__proto__");
  expect(({} as Record<string, unknown>)["target"]).toBeUndefined();
});
