import type { XlsxFile } from "./xlsxFile";
import { workbookParts } from "./workbookParts";
import { parseXml, type XmlElement } from "./xml";

/** Parts of a package that we carry and don't show, by where they stand. */
const PARTS: readonly (readonly [path: RegExp, one: string, many: string])[] = [
  [/^xl\/charts\/chart[^/]*\.xml$/i, "chart", "charts"],
  [/^xl\/chartsheets\/[^/]*\.xml$/i, "chart sheet", "chart sheets"],
  [/^xl\/pivotTables\/[^/]*\.xml$/i, "pivot table", "pivot tables"],
  [/^xl\/vbaProject\.bin$/i, "macro project", "macro projects"],
  [/^xl\/media\/[^/]*$/i, "picture", "pictures"],
  [/^xl\/comments[^/]*\.xml$|^xl\/comments\/[^/]*\.xml$/i, "sheet with comments", "sheets with comments"],
  [/^xl\/tables\/[^/]*\.xml$/i, "table", "tables"],
  [/^xl\/externalLinks\/[^/]*\.xml$/i, "link to another workbook", "links to other workbooks"],
  [/^xl\/slicers\/[^/]*\.xml$/i, "slicer", "slicers"],
  [/^xl\/ctrlProps\/[^/]*\.xml$/i, "form control", "form controls"],
  [/^_xmlsignatures\/sig[^/]*\.xml$/i, "digital signature", "digital signatures"],
];

/** A drawing part is also what a chart or a picture stands in: only one with shapes is a drawing to the eye. */
const DRAWING_PART = /^xl\/drawings\/drawing[^/]*\.xml$/i;
const SHAPE = /<(?:\w+:)?(?:sp|cxnSp)[\s>]/;

/** Elements of a sheet that we carry and don't show. */
const ELEMENTS: readonly (readonly [name: string, one: string, many: string])[] = [
  ["conditionalFormatting", "conditional format", "conditional formats"],
  ["dataValidation", "validation rule", "validation rules"],
  ["hyperlink", "link", "links"],
  ["autoFilter", "filter", "filters"],
  ["sheetProtection", "sheet protection", "sheet protections"],
];

const counted = (count: number, one: string, many: string): string[] =>
  count === 0 ? [] : [`${count} ${count === 1 ? one : many}`];

const countElements = (element: XmlElement, name: string): number =>
  element.children.reduce((sum, child) => sum + (child.name === name ? 1 : countElements(child, name)), 0);

/** What a file holds that isn't shown, in words: `2 charts`, `1 macro project`. All of it stays in the file. */
export const unseenThings = ({ parts }: XlsxFile): string[] => {
  const paths = [...parts.keys()];
  const inSheets = new Map<string, number>();
  for (const { path, hasCells } of workbookParts(parts).sheets) {
    const bytes = parts.get(path);
    if (!hasCells || !bytes) continue;
    // What stands beside the cells is little; the cells themselves needn't be looked through.
    for (const child of parseXml(bytes, path).root.children)
      for (const [name] of ELEMENTS)
        if (child.name !== "sheetData")
          inSheets.set(
            name,
            (inSheets.get(name) ?? 0) + (child.name === name ? 1 : countElements(child, name)),
          );
  }
  return [
    ...PARTS.flatMap(([path, one, many]) =>
      counted(paths.filter((each) => path.test(each)).length, one, many),
    ),
    ...counted(
      paths.filter((path) => DRAWING_PART.test(path) && SHAPE.test(new TextDecoder().decode(parts.get(path))))
        .length,
      "sheet with drawings",
      "sheets with drawings",
    ),
    ...ELEMENTS.flatMap(([name, one, many]) => counted(inSheets.get(name) ?? 0, one, many)),
  ];
};
