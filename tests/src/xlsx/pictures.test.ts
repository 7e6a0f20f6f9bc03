import ExcelJS from "exceljs";
import type { Book, BookPicture } from "../../../src/xlsx/book/book";
import { openXlsx, saveXlsx } from "../../../src/xlsx/xlsxFile";
import { PNG } from "../../support/dots";
import { bookOf } from "./bookOf";

const SVG = new TextEncoder().encode('<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 1 1"/>');

const picture = (row: number): BookPicture => ({
  at: { row, column: 3 },
  width: 40,
  height: 20,
  png: PNG,
  svg: SVG,
});

const withPictures = (book: Book, pictures: readonly BookPicture[]): Book => ({
  ...book,
  sheets: book.sheets.map((sheet) => ({ ...sheet, pictures })),
});

const readBack = async (bytes: Uint8Array): Promise<ExcelJS.Worksheet> => {
  const workbook = new ExcelJS.Workbook();
  await workbook.xlsx.load(new Uint8Array(bytes).buffer);
  return workbook.worksheets[0] as ExcelJS.Worksheet;
};

const textOf = (bytes: Uint8Array | undefined): string => new TextDecoder().decode(bytes);

it("pictures put on a sheet are in its file, as dots and as lines", async () => {
  const bytes = saveXlsx(undefined, withPictures(bookOf({ A1: { value: 1 } }), [picture(4), picture(9)]));
  const images = (await readBack(bytes)).getImages();
  expect(images.map(({ range }) => [range.tl.nativeRow, range.tl.nativeCol])).toEqual([
    [4, 3],
    [9, 3],
  ]);
  const { parts } = openXlsx(bytes);
  expect(parts.get("xl/media/image1.png")).toEqual(PNG);
  expect(parts.get("xl/media/image2.svg")).toEqual(SVG);
  expect(parts.get("xl/media/image1.svg")).toEqual(SVG);
});

it("the drawings that a file has on the sheet stay to the letter, and the picture lies above them", async () => {
  const workbook = new ExcelJS.Workbook();
  const sheet = workbook.addWorksheet("Bid");
  sheet.addRow(["Eave (ft)", 40]);
  const base64 = Buffer.from(PNG).toString("base64");
  sheet.addImage(workbook.addImage({ base64, extension: "png" }), "B2:C3");
  const file = openXlsx(new Uint8Array(await workbook.xlsx.writeBuffer()));
  const bytes = saveXlsx({ file, calculated: file.book }, withPictures(file.book, [picture(4)]));

  expect((await readBack(bytes)).getImages()).toHaveLength(2);
  const { parts, book } = openXlsx(bytes);
  const [before, after] = [file.parts, parts].map((each) => textOf(each.get("xl/drawings/drawing1.xml")));
  const own = before?.slice(before.indexOf("<xdr:twoCellAnchor"), before.indexOf("</xdr:wsDr>")) ?? "";
  expect(own).toContain("<xdr:pic>");
  expect(after).toContain(own);
  const numbers = [...(after ?? "").matchAll(/cNvPr[^>]* id="(\d+)"/g)].map(([, id]) => id);
  expect(new Set(numbers).size).toBe(2);
  expect(parts.get("xl/worksheets/sheet1.xml")).toEqual(file.parts.get("xl/worksheets/sheet1.xml"));

  // Opened again, both are the file's: they are shown, and stay.
  const again = openXlsx(bytes);
  expect(again.book).toEqual(book);
  expect(book.sheets[0]?.filePictures).toHaveLength(2);
  expect(saveXlsx({ file: again, calculated: book }, book)).toBe(again.bytes);
});
