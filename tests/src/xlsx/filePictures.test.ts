import ExcelJS from "exceljs";
import type { FilePicture } from "../../../src/xlsx/book/book";
import { LIMITS } from "../../../src/xlsx/book/limits";
import { writeZip, type Parts } from "../../../src/xlsx/package/zip";
import { openXlsx, saveXlsx, type XlsxFile } from "../../../src/xlsx/xlsxFile";
import { GIF, PNG } from "../../support/dots";

const DRAWING = "xl/drawings/drawing1.xml";
const ARROWS = "xl/drawings/_rels/drawing1.xml.rels";
const IMAGE = "xl/media/image1.png";

const textOf = (bytes: Uint8Array | undefined): string => new TextDecoder().decode(bytes);
const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);

/** A bid with a picture in a corner of cells, and another of a size. */
const bid = async (): Promise<Uint8Array> => {
  const workbook = new ExcelJS.Workbook();
  const sheet = workbook.addWorksheet("Bid");
  sheet.addRow(["Eave (ft)", 40]);
  const [png, gif] = [PNG, GIF].map((each) => Buffer.from(each).toString("base64"));
  sheet.addImage(workbook.addImage({ base64: png ?? "", extension: "png" }), "B2:C3");
  sheet.addImage(workbook.addImage({ base64: gif ?? "", extension: "gif" }), {
    tl: { col: 4, row: 5 },
    ext: { width: 120, height: 80 },
  });
  return new Uint8Array(await workbook.xlsx.writeBuffer());
};

const picturesOf = ({ book }: XlsxFile): readonly FilePicture[] => book.sheets[0]?.filePictures ?? [];

/** The bid with one of its parts changed. */
const opened = async (path = "", change: (part: Uint8Array) => Uint8Array = (part) => part) => {
  const { parts } = openXlsx(await bid());
  const part = parts.get(path);
  return openXlsx(writeZip(new Map([...parts, ...(part ? ([[path, change(part)]] as const) : [])])));
};

const inText =
  (from: string | RegExp, to: string) =>
  (part: Uint8Array): Uint8Array => {
    const text = textOf(part);
    const now = text.replace(from, to);
    if (now === text) throw new Error(`${String(from)} isn't there`);
    return bytesOf(now);
  };

it("reads a file's pictures: where they lie, and what they are whatever they are called", async () => {
  const file = await opened(IMAGE, () => GIF);
  const corner = (row: number, column: number) => ({ row, column, offsetPx: { x: 0, y: 0 } });
  const source = `data:image/gif;base64,${Buffer.from(GIF).toString("base64")}`;
  expect(picturesOf(file)).toEqual([
    { from: corner(1, 1), to: corner(3, 3), description: "", source },
    { from: corner(5, 4), to: { widthPx: 120, heightPx: 80 }, description: "", source },
  ]);
  expect(file.notShown).toEqual([]);
});

it("reads what the file says of a picture to those who can't see it", async () => {
  const file = await opened(DRAWING, inText(/name="Picture 1"/, 'name="Picture 1" descr="The north eave"'));
  expect(picturesOf(file).map(({ description }) => description)).toEqual(["The north eave", ""]);
});

it("keeps the file's own pictures to the letter, and writes none a second time", async () => {
  const file = await opened();
  const same = saveXlsx({ file, calculated: file.book }, file.book);
  expect(same).toBe(file.bytes);

  const [sheet] = file.book.sheets;
  if (!sheet) throw new Error("there is no sheet");
  const cells = new Map(sheet.cells).set(8, new Map([[0, { value: 7 }]]));
  const now = { ...file.book, sheets: [{ ...sheet, cells }] };
  const { parts, book } = openXlsx(saveXlsx({ file, calculated: file.book }, now));
  expect(book.sheets[0]?.cells.get(8)?.get(0)?.value).toBe(7);
  const others = (all: Parts) => [...all].filter(([path]) => path !== "xl/worksheets/sheet1.xml");
  expect(others(parts)).toEqual(others(file.parts));
});

/** A JPEG's head: a segment of notes, and then its size. */
const jpeg = (width: number, height: number): Uint8Array => {
  const size = [height >> 8, height & 255, width >> 8, width & 255];
  return new Uint8Array([
    0xff,
    0xd8,
    0xff,
    0xe0,
    0,
    4,
    1,
    2,
    0xff,
    0xff,
    0xc0,
    0,
    11,
    8,
    ...size,
    1,
    1,
    0x11,
    0,
  ]);
};

it("knows a JPEG by its bytes", async () => {
  const file = await opened(IMAGE, () => jpeg(300, 200));
  expect(picturesOf(file)[0]?.source).toMatch(/^data:image\/jpeg;base64,/);
});

const huge = (): Uint8Array => {
  const bytes = Uint8Array.from(PNG);
  new DataView(bytes.buffer).setUint32(16, LIMITS.picturePixels);
  new DataView(bytes.buffer).setUint32(20, 2);
  return bytes;
};

const hugeFrame = (): Uint8Array => {
  const bytes = Uint8Array.from(GIF);
  // Behind its head, two colors, and eight bytes that say how the frame is shown.
  const view = new DataView(bytes.buffer);
  view.setUint16(13 + 6 + 8 + 5, 30_000, true);
  view.setUint16(13 + 6 + 8 + 7, 30_000, true);
  return bytes;
};

const FIRST_TARGET = /Target="\.\.\/media\/image1\.png"/;

describe("a picture that can't be shown as it is meant keeps no file from being opened, and is named", () => {
  it.each<[string, string, (part: Uint8Array) => Uint8Array]>([
    ["that is a page", IMAGE, () => bytesOf("<html><script>alert(1)</script></html>")],
    [
      "that is lines with a script",
      IMAGE,
      () => bytesOf('<svg xmlns="http://www.w3.org/2000/svg"><script/></svg>'),
    ],
    ["that is cut short", IMAGE, (part) => part.slice(0, 20)],
    ["of no size", IMAGE, () => jpeg(0, 200)],
    ["with more dots than is taken", IMAGE, huge],
    ["that is cropped", DRAWING, inText("<a:stretch>", '<a:srcRect l="20000"/><a:stretch>')],
    [
      "that is faint",
      DRAWING,
      inText(/(<a:blip [^>]*)\/>|(<a:blip [^>]*)><\/a:blip>/, '$1$2><a:alphaModFix amt="30000"/></a:blip>'),
    ],
    ["that is turned", DRAWING, inText("<a:xfrm>", '<a:xfrm rot="5400000">')],
    ["with rounded corners", DRAWING, inText('prst="rect"', 'prst="roundRect"')],
    ["with more dots in its frame than on its screen", IMAGE, hugeFrame],
    ["that is hidden", DRAWING, inText(/name="Picture 1"/, 'name="Picture 1" hidden="1"')],
    ["beyond the last row", DRAWING, inText("<xdr:row>1</xdr:row>", "<xdr:row>99999999</xdr:row>")],
    ["at no row", DRAWING, inText("<xdr:row>1</xdr:row>", "<xdr:row>one</xdr:row>")],
    ["that ends before it begins", DRAWING, inText("<xdr:row>1</xdr:row>", "<xdr:row>8</xdr:row>")],
  ])("one %s", async (_, path, change) => {
    const file = await opened(path, change);
    expect(picturesOf(file)).toHaveLength(1);
    expect(file.notShown).toEqual(["1 picture"]);
    expect(saveXlsx({ file, calculated: file.book }, file.book)).toBe(file.bytes);
  });

  it.each<[string, string, (part: Uint8Array) => Uint8Array]>([
    ["on the web", ARROWS, inText(FIRST_TARGET, 'Target="https://example.org/a.png" TargetMode="External"')],
    ["that isn't there", ARROWS, inText(FIRST_TARGET, 'Target="../media/image9.png"')],
    [
      "that is another kind of part",
      ARROWS,
      inText(/relationships\/image(?=" Target="..\/media\/image1)/, "relationships/x"),
    ],
  ])("one %s", async (_, path, change) => {
    const file = await opened(path, change);
    expect(picturesOf(file)).toHaveLength(1);
    expect(file.notShown).toEqual(["1 picture", "1 picture that isn't in the file"]);
  });

  it.each<[string, string, (part: Uint8Array) => Uint8Array]>([
    ["whose drawing isn't XML", DRAWING, () => bytesOf("<xdr:wsDr")],
    [
      "whose drawing declares entities",
      DRAWING,
      (part) => bytesOf(`<!DOCTYPE a [<!ENTITY b "c">]>${textOf(part).replace(/^<\?xml[^>]*>/, "")}`),
    ],
    [
      "of which an arrow leads out of the file",
      ARROWS,
      inText(FIRST_TARGET, 'Target="../../../../etc/passwd"'),
    ],
  ])("all of a sheet %s", async (_, path, change) => {
    const file = await opened(path, change);
    expect(picturesOf(file)).toEqual([]);
    expect(file.notShown).toEqual(["2 pictures"]);
  });

  it("those beyond the number that is taken", async () => {
    const anchor = /<xdr:oneCellAnchor[^]*<\/xdr:oneCellAnchor>/;
    const file = await opened(DRAWING, (part) => {
      const [one = ""] = anchor.exec(textOf(part)) ?? [];
      return inText(anchor, one.repeat(LIMITS.pictures + 5))(part);
    });
    expect(picturesOf(file)).toHaveLength(LIMITS.pictures);
    expect(file.notShown).toEqual(["1 picture"]);
  });
});
