import { readDropDowns } from "./readDropDowns";
import type { XmlElement } from "../xml/xml";
import type { SheetDrawings } from "./drawings/readDrawings";
import type { Parts } from "../package/zip";

/** Kinds of parts that we keep and mostly don't show, by path. */
const PARTS: readonly (readonly [path: RegExp, one: string, many: string])[] = [
  [/^xl\/charts\/chart[^/]*\.xml$/i, "chart", "charts"],
  [/^xl\/chartsheets\/[^/]*\.xml$/i, "chart sheet", "chart sheets"],
  [/^xl\/pivotTables\/[^/]*\.xml$/i, "pivot table", "pivot tables"],
  [/^xl\/vbaProject\.bin$/i, "macro project", "macro projects"],
  // An SVG is the second version of a raster picture.
  [/^xl\/media\/[^/]*(?<!\.svg)$/i, "picture", "pictures"],
  [/^xl\/comments[^/]*\.xml$|^xl\/comments\/[^/]*\.xml$/i, "sheet with comments", "sheets with comments"],
  [/^xl\/tables\/[^/]*\.xml$/i, "table", "tables"],
  [/^xl\/externalLinks\/[^/]*\.xml$/i, "link to another workbook", "links to other workbooks"],
  [/^xl\/slicers\/[^/]*\.xml$/i, "slicer", "slicers"],
  [/^xl\/ctrlProps\/[^/]*\.xml$/i, "form control", "form controls"],
  [/^_xmlsignatures\/sig[^/]*\.xml$/i, "digital signature", "digital signatures"],
];

/** A drawing part may hold charts and pictures only. It counts as a drawing where it has shapes. */
const DRAWING_PART = /^xl\/drawings\/drawing[^/]*\.xml$/i;
const SHAPE = /<(?:\w+:)?(?:sp|cxnSp)[\s>]/;

/** Elements of a sheet that we keep and don't show. */
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

/** How many elements of each kind a sheet has that aren't shown. */
export const countNotShown = (sheet: XmlElement): ReadonlyMap<string, number> =>
  new Map(
    ELEMENTS.map(([name]) => [
      name,
      // The cells, by far the largest part, have none of them.
      sheet.children.reduce(
        (sum, child) =>
          sum + (child.name === name ? 1 : child.name === "sheetData" ? 0 : countElements(child, name)),
        name === "dataValidation" ? -readDropDowns(sheet).length : 0,
      ),
    ]),
  );

const holdsDrawing = ([path, bytes]: readonly [string, Uint8Array]): boolean =>
  DRAWING_PART.test(path) && SHAPE.test(new TextDecoder().decode(bytes));

/** What isn't shown of a sheet: counts by element, and the parts of its drawings. */
export interface SheetNotShown extends Pick<
  SheetDrawings,
  "partsShown" | "partsNotShown" | "linkedPictures"
> {
  readonly counts: ReadonlyMap<string, number>;
}

/** The parts of which something isn't shown. */
const hiddenParts = (
  parts: Parts,
  inSheets: readonly SheetNotShown[],
): [path: string, bytes: Uint8Array][] => {
  const shown = new Set(inSheets.flatMap((sheet) => sheet.partsShown));
  for (const path of inSheets.flatMap(({ partsNotShown }) => partsNotShown)) shown.delete(path);
  return [...parts].filter(([path]) => !shown.has(path));
};

/** What a file has that isn't shown, for the user: `2 charts`, `1 macro project`. */
export const contentNotShown = (parts: Parts, inSheets: readonly SheetNotShown[]): string[] => {
  const hidden = hiddenParts(parts, inSheets);
  return [
    ...PARTS.flatMap(([path, one, many]) =>
      counted(hidden.filter(([each]) => path.test(each)).length, one, many),
    ),
    ...counted(hidden.filter(holdsDrawing).length, "sheet with drawings", "sheets with drawings"),
    ...counted(
      inSheets.reduce((sum, { linkedPictures }) => sum + linkedPictures, 0),
      "picture that isn't in the file",
      "pictures that aren't in the file",
    ),
    ...ELEMENTS.flatMap(([name, one, many]) =>
      counted(
        inSheets.reduce((sum, { counts }) => sum + (counts.get(name) ?? 0), 0),
        one,
        many,
      ),
    ),
  ];
};
