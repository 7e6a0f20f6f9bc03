import type { FilePicture } from "../../../src/xlsx/book/book";
import { planBook } from "../../../src/xlsx/planBook";
import { writeZip } from "../../../src/xlsx/package/zip";
import { openXlsx, saveXlsx, type XlsxFile } from "../../../src/xlsx/xlsxFile";
import { descendantsOf, parseXml } from "../../../src/xlsx/xml/xml";
import { box, face, line, type Figure } from "../../../src/pictures/figure";
import type { PrintableSheet } from "../../../src/workbook/printableSheet";

const DRAWING = "xl/drawings/drawing1.xml";

const FIGURE: Figure = {
  width: 200,
  height: 100,
  description: "A wall with its rise.",
  marks: [
    face("wall", ...box(20, 30, 60, 40)),
    line("dashed", { x: 10, y: 90 }, { x: 90, y: 10 }),
    { kind: "dimension", from: { x: 120, y: 20 }, to: { x: 120, y: 80 } },
    { kind: "label", at: { x: 140, y: 50 }, text: "5 < 6", align: "start" },
  ],
};

const SHEET: PrintableSheet = {
  name: "1 Wall",
  cells: [],
  columnWidths: [100],
  rowHeights: {},
  frozenRows: 0,
  inputPrompts: [],
  drawing: { at: { row: 3, column: 1 }, figure: FIGURE },
};

const file = saveXlsx(undefined, planBook([SHEET]));

const opened = (from: string | RegExp = "", to = ""): XlsxFile => {
  const { parts } = openXlsx(file);
  const text = new TextDecoder().decode(parts.get(DRAWING));
  const now = text.replace(from, to);
  if (from !== "" && now === text) throw new Error(`${String(from)} isn't there`);
  return openXlsx(writeZip(new Map([...parts, [DRAWING, new TextEncoder().encode(now)]])));
};

const pictureOf = ({ book }: XlsxFile): FilePicture | undefined => book.sheets[0]?.filePictures?.[0];

const svgText = (each: XlsxFile): string =>
  Buffer.from(pictureOf(each)?.source.replace("data:image/svg+xml;base64,", "") ?? "", "base64").toString();

/** The attributes of the SVG's elements of a name. */
const elementsOf = (each: XlsxFile, name: string): Record<string, string>[] =>
  descendantsOf(parseXml(Buffer.from(svgText(each)), "svg").root, name).map(({ attributes }) =>
    Object.fromEntries(attributes),
  );

it("draws a group of lines, faces and words where it lies", () => {
  const read = opened();
  expect(pictureOf(read)).toMatchObject({
    from: { row: 3, column: 1, offsetPx: { x: 0, y: 0 } },
    to: { widthPx: 200, heightPx: 100 },
    description: "A wall with its rise.",
  });
  expect(elementsOf(read, "path")).toMatchObject([
    { d: "M20 30L80 30L80 70L20 70Z", fill: "#F4F1EA", stroke: "#1D2B32", "stroke-width": "0.75" },
    { d: "M10 90L90 10", "stroke-width": "1", "stroke-dasharray": "4 3" },
    { d: "M120 20L120 80" },
    // The frame of the words has no line and no face.
    { fill: "none", stroke: "none" },
  ]);
  const arrows = elementsOf(read, "polygon").map(({ points }) => points?.split(" ")[0]);
  expect(arrows).toEqual(["120,20", "120,80"]);
  expect(elementsOf(read, "text")).toMatchObject([{ x: "140", y: "50", "text-anchor": "start" }]);
  expect(svgText(read)).toContain(">5 &lt; 6</tspan>");
  expect(read.notShown).toEqual([]);
});

it("draws what a group makes larger, and what is flipped", () => {
  const twice = opened(
    /<a:ext cx="1905000" cy="952500"\/><a:chOff/,
    '<a:ext cx="3810000" cy="1905000"/><a:chOff',
  );
  expect(elementsOf(twice, "path")[0]).toMatchObject({ d: "M40 60L160 60L160 140L40 140Z" });
  const flipped = opened('<a:xfrm flipV="1">', '<a:xfrm flipH="1">');
  expect(elementsOf(flipped, "path")[1]).toMatchObject({ d: "M90 10L10 90" });
});

it("draws nothing of what is hidden in a group", () => {
  const read = opened('<xdr:cNvPr id="3" name="3"/>', '<xdr:cNvPr id="3" name="3" hidden="1"/>');
  expect(elementsOf(read, "path")[0]).toMatchObject({ d: "M10 90L90 10" });
});

it("keeps the file's drawing to the letter", () => {
  const read = opened();
  expect(saveXlsx({ file: read, calculated: read.book }, read.book)).toBe(read.bytes);
});

it("draws nothing but what it knows, and lets no text of the file become markup", () => {
  const read = opened("5 &lt; 6", "&lt;script&gt;alert(1)&lt;/script&gt;");
  expect(elementsOf(read, "script")).toEqual([]);
  expect(svgText(read)).toContain("&lt;script&gt;");
});

it.each<[string, string | RegExp, string]>([
  ["a color of the theme", '<a:srgbClr val="F4F1EA"/>', '<a:schemeClr val="accent1"/>'],
  ["a color that is none", 'val="F4F1EA"', 'val="url(#a)"'],
  ["a faint color", '<a:srgbClr val="F4F1EA"/>', '<a:srgbClr val="F4F1EA"><a:alpha val="9"/></a:srgbClr>'],
  [
    "colors that run into each other",
    /<a:solidFill><a:srgbClr val="F4F1EA"\/><\/a:solidFill>/,
    "<a:gradFill/>",
  ],
  ["another shape", 'prst="line"', 'prst="cloud"'],
  ["a curve", /<a:lnTo>(.*?)<\/a:lnTo>/, "<a:cubicBezTo>$1</a:cubicBezTo>"],
  ["a place that is worked out", /<a:pt x="0"/, '<a:pt x="hc"'],
  ["something turned", "<a:xfrm flip", '<a:xfrm rot="60000" flip'],
  ["words to be broken into lines", 'wrap="none"', 'wrap="square"'],
  ["words that stand in a cell", 'textlink=""', 'textlink="$A$1"'],
  ["another arrow", 'headEnd type="triangle"', 'headEnd type="oval"'],
  ["dashes of its own", '<a:prstDash val="dash"/>', "<a:custDash/>"],
  ["dashes of a name that is none", 'prstDash val="dash"', 'prstDash val="constructor"'],
  ["words at a place that is none", 'algn="l"', 'algn="toString"'],
  ["words at a height that is none", 'anchor="ctr"', 'anchor="__proto__"'],
  ["words under bullets", '<a:pPr algn="l"/>', '<a:pPr algn="l"><a:buChar char="-"/></a:pPr>'],
  ["words that are underlined", 'sz="1000"', 'sz="1000" u="sng"'],
  ["a shadow", "</xdr:spPr>", "<a:effectLst><a:outerShdw/></a:effectLst></xdr:spPr>"],
  ["something far away", '<a:off x="190500"', '<a:off x="1e308"'],
  ["a chart among the shapes", "</xdr:grpSp>", "<xdr:graphicFrame/></xdr:grpSp>"],
  ["no size", '<a:ext cx="1905000" cy="952500"/><a:chOff', '<a:ext cx="0" cy="0"/><a:chOff'],
])("leaves a drawing alone that holds %s, and names it", (_, from, to) => {
  const read = opened(from, to);
  expect(pictureOf(read)).toBeUndefined();
  expect(read.notShown).toEqual(["1 sheet with drawings"]);
});
