import { encodeXml } from "./packageDraft";
import { RELATIONSHIP_TYPES } from "./relationships";
import type { Parts } from "./zip";

const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const PACKAGE = "http://schemas.openxmlformats.org/package/2006";
const SPREADSHEET = "application/vnd.openxmlformats-officedocument.spreadsheetml";

export const WORKSHEET_CONTENT_TYPE = `${SPREADSHEET}.worksheet+xml`;
export const STYLES_CONTENT_TYPE = `${SPREADSHEET}.styles+xml`;

/** A blank sheet. */
export const EMPTY_SHEET = `<worksheet xmlns="${MAIN}"><sheetViews><sheetView workbookViewId="0"/></sheetViews><sheetFormatPr defaultRowHeight="15"/><sheetData/><pageMargins left="0.5" right="0.5" top="0.75" bottom="0.75" header="0.3" footer="0.3"/></worksheet>`;

export const DEFAULT_STYLES = `<styleSheet xmlns="${MAIN}"><fonts count="1"><font><sz val="11"/><color rgb="FF000000"/><name val="Calibri"/></font></fonts><fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills><borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders><cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs><cellXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/></cellXfs><cellStyles count="1"><cellStyle name="Normal" xfId="0" builtinId="0"/></cellStyles></styleSheet>`;

/** The calcId of a current Excel. An older one would make it recalculate on opening, even without our functions. */
const CURRENT_CALCULATION = "191029";

const WORKBOOK = `<workbook xmlns="${MAIN}" xmlns:r="${RELATIONSHIP_TYPES}"><bookViews><workbookView/></bookViews><sheets/><calcPr calcId="${CURRENT_CALCULATION}"/></workbook>`;

const relationships = (...each: readonly [id: string, kind: string, target: string][]): string =>
  `<Relationships xmlns="${PACKAGE}/relationships">${each.map(([id, kind, target]) => `<Relationship Id="${id}" Type="${RELATIONSHIP_TYPES}/${kind}" Target="${target}"/>`).join("")}</Relationships>`;

/** The package for a new workbook. */
export const emptyPackage = (): Parts =>
  new Map(
    Object.entries({
      "[Content_Types].xml": `<Types xmlns="${PACKAGE}/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/><Override PartName="/xl/workbook.xml" ContentType="${SPREADSHEET}.sheet.main+xml"/><Override PartName="/xl/styles.xml" ContentType="${STYLES_CONTENT_TYPE}"/></Types>`,
      "_rels/.rels": relationships(["rId1", "officeDocument", "/xl/workbook.xml"]),
      "xl/workbook.xml": WORKBOOK,
      "xl/_rels/workbook.xml.rels": relationships(["rId1", "styles", "/xl/styles.xml"]),
      "xl/styles.xml": DEFAULT_STYLES,
    }).map(([path, text]) => [path, encodeXml(text)]),
  );
