import fc from "fast-check";
import Papa from "papaparse";
import { CellError, type Cell } from "../../../shared/cell";
import { toCsv } from "../../../src/workbook/csv";

const withoutMark = (csv: string): string => csv.replace(/^\uFEFF/, "");

describe("a sheet as .csv", () => {
  it("follows RFC 4180: commas, quotes and returns are quoted, rows end with CR LF", () => {
    expect(
      withoutMark(
        toCsv([
          ["18' 6\"", 2.5, null],
          ["a, b", true, "two\nlines"],
        ]),
      ),
    ).toBe('"18\' 6""",2.5,\r\n"a, b",TRUE,"two\nlines"');
  });

  it.each(["=1+1", "+1", "-1+2", "-1\n", "--1", "@SUM(A1)", "\t=1", "\r=1", "\n=1", "=1+1\nsecond line"])(
    "keeps %j text",
    (text) => {
      const [[cell]] = Papa.parse<string[]>(withoutMark(toCsv([[text]]))).data as [[string]];
      expect(cell).toBe(`'${text}`);
    },
  );

  it("leaves numbers alone, negative ones too, and shows errors by their code", () => {
    expect(withoutMark(toCsv([[-5, new CellError("#N/A", "no stock")]]))).toBe("-5,#N/A");
  });

  it.each(["-411.70", "-1", "-0.5"])("leaves the number %s alone where it stands as text", (text) => {
    expect(withoutMark(toCsv([[text]]))).toBe(text);
  });

  it("gives back every other text as it was", () => {
    const text = fc.string().filter((each) => !/^[=+\-@\t\r\n]/.test(each) && !each.includes("\r"));
    fc.assert(
      fc.property(fc.array(fc.tuple(text, text), { minLength: 1, maxLength: 5 }), (rows) => {
        const read = Papa.parse<Cell[]>(withoutMark(toCsv(rows)), { delimiter: ",", newline: "\r\n" });
        expect(read.data).toEqual(rows);
      }),
    );
  });
});
