import { applySplices, type Splice } from "./splices";
import { isSelfClosing, type XmlElement } from "./xml";
import { escapeXml } from "./xmlText";

/** The order of child elements that the format requires (ECMA-376 part 1, annex A). */
export const SHEET_ORDER =
  "sheetPr dimension sheetViews sheetFormatPr cols sheetData sheetCalcPr sheetProtection protectedRanges scenarios autoFilter sortState dataConsolidate customSheetViews mergeCells phoneticPr conditionalFormatting dataValidations hyperlinks printOptions pageMargins pageSetup headerFooter rowBreaks colBreaks customProperties cellWatches ignoredErrors smartTags drawing legacyDrawing legacyDrawingHF picture oleObjects controls webPublishItems tableParts extLst".split(
    " ",
  );
export const WORKBOOK_ORDER =
  "fileVersion fileSharing workbookPr workbookProtection bookViews sheets functionGroups externalReferences definedNames calcPr oleSize customWorkbookViews pivotCaches".split(
    " ",
  );
export const STYLES_ORDER =
  "numFmts fonts fills borders cellStyleXfs cellXfs cellStyles dxfs tableStyles colors extLst".split(" ");

/** The element's prefix with its colon, such as `x:`; empty where it has none. */
export const prefixOf = ({ prefix }: XmlElement): string => (prefix === "" ? "" : `${prefix}:`);

/** Inserts text where an element of this name belongs. */
export const insertInOrder = (
  root: XmlElement,
  order: readonly string[],
  name: string,
  text: string,
): Splice => {
  const before = order.slice(0, order.indexOf(name));
  const last = root.children.filter((child) => before.includes(child.name)).at(-1);
  const at = last?.end ?? root.innerStart;
  return { start: at, end: at, text };
};

/** An opening tag with some attributes set; undefined removes one. */
const tagWith = (tag: string, attributes: Readonly<Record<string, string | undefined>>): string =>
  Object.entries(attributes).reduce((text, [name, value]) => {
    const bare = text.replace(new RegExp(`\\s${name}\\s*=\\s*(?:"[^"]*"|'[^']*')`), "");
    return value === undefined
      ? bare
      : bare.replace(/\s*(\/?>)$/, () => ` ${name}="${escapeXml(value)}"${/\/?>$/.exec(bare)?.[0] ?? ">"}`);
  }, tag);

interface Change {
  readonly attributes?: Readonly<Record<string, string | undefined>>;
  /** Changes inside of it. */
  readonly inside?: readonly Splice[];
  /** Added after its content. */
  readonly append?: string;
}

/** Changes an element's attributes and content. */
export const changeElement = (
  source: string,
  element: XmlElement,
  { attributes = {}, inside = [], append = "" }: Change,
): Splice => {
  const { start, innerStart, innerEnd, end } = element;
  const tag = tagWith(source.slice(start, innerStart), attributes);
  if (isSelfClosing(element)) {
    if (append === "") return { start, end, text: tag };
    return {
      start,
      end,
      text: `${tag.replace(/\s*\/>$/, ">")}${append}</${prefixOf(element)}${element.name}>`,
    };
  }
  const moved = inside.map((splice) => ({
    ...splice,
    start: splice.start - innerStart,
    end: splice.end - innerStart,
  }));
  const inner = applySplices(source.slice(innerStart, innerEnd), moved);
  return { start, end, text: tag + inner + append + source.slice(innerEnd, end) };
};

export const removeElement = ({ start, end }: XmlElement): Splice => ({ start, end, text: "" });
