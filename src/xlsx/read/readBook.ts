import type { Book, BookName } from "../book/book";
import { fileStyleKey } from "../book/book";
import { themeColors } from "../styles/colors";
import { FileError } from "../book/fileError";
import { shownFormula } from "../formulas/storedFormula";
import { pictureBudget } from "./drawings/pictureBudget";
import { readDrawings, type SheetDrawings } from "./drawings/readDrawings";
import { readSharedStrings } from "./cellValues";
import { readSheet } from "./readSheet";
import { hidesRows, readTables } from "./readTables";
import { readStyles, unlockedFormats } from "../styles/readStyles";
import { partOfKind, workbookParts, type WorkbookParts } from "../package/workbookParts";
import { childOf, childrenOf, numberAttribute, parseXml, type XmlElement } from "../xml/xml";
import type { Parts } from "../package/zip";

const rootOf = (parts: Parts, path: string | undefined): XmlElement | undefined => {
  const bytes = path === undefined ? undefined : parts.get(path);
  return bytes && path !== undefined ? parseXml(bytes, path).root : undefined;
};

const ONE_RANGE = /^(?:'(?:[^']|'')+'|[^'!\s]+)!\$?[A-Z]{1,3}\$?\d+(?::\$?[A-Z]{1,3}\$?\d+)?$/i;

/** Names reserved by the format, such as a print area. */
export const isBuiltInName = (name: string): boolean => name.toLowerCase().startsWith("_xlnm.");

export const readNames = ({ root, sheets }: Pick<WorkbookParts, "root" | "sheets">): BookName[] =>
  childrenOf(childOf(root, "definedNames"), "definedName").flatMap((element) => {
    const name = element.attributes.get("name") ?? "";
    const sheet = sheets[numberAttribute(element, "localSheetId") ?? -1]?.name;
    if (name === "" || isBuiltInName(name)) return [];
    const target = ONE_RANGE.test(element.text) ? element.text : shownFormula(element.text);
    return [{ name, target, ...(sheet !== undefined && { sheet }) }];
  });

/**
 * The whole workbook as plain values, as far as we can show it. Calls `see` with each sheet's part and drawings while they are
 * in memory: parts are large.
 */
export const readBook = (parts: Parts, see: (sheet: XmlElement, drawings: SheetDrawings) => void): Book => {
  const workbook = workbookParts(parts);
  const texts = rootOf(parts, partOfKind(workbook, "sharedStrings"));
  const sharedTexts = texts ? readSharedStrings(texts) : [];
  const styleSheet = rootOf(parts, partOfKind(workbook, "styles"));
  const styles = styleSheet
    ? readStyles(styleSheet, themeColors(rootOf(parts, partOfKind(workbook, "theme"))))
    : [];
  const shown = workbook.sheets.filter(({ hasCells }) => hasCells);
  if (shown.length === 0) throw new FileError("This workbook has no sheet with cells.");
  const budget = pictureBudget();
  return {
    sheets: shown.map(({ name, path, isHidden }) => {
      const root = rootOf(parts, path);
      if (!root) throw new FileError(`The file has no part for its sheet "${name}".`);
      const drawings = readDrawings(parts, path, budget);
      see(root, drawings);
      const tables = readTables(parts, path);
      return {
        ...readSheet(name, isHidden, root, sharedTexts),
        tables,
        isFiltered: hidesRows(root) || tables.some((table) => table.hidesRows),
        ...(drawings.pictures.length > 0 && { filePictures: drawings.pictures }),
      };
    }),
    names: readNames(workbook),
    unlockedStyles: styleSheet ? unlockedFormats(styleSheet).map(fileStyleKey) : [],
    styles: new Map(styles.map((style, index) => [fileStyleKey(index), style])),
  };
};
