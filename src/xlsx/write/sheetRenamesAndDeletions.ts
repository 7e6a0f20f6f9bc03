import type { Book, BookCell, BookSheet } from "../book/book";
import {
  updateReferences,
  updateWhereEngineDoesNot,
  type RenamesAndDeletions,
  type SheetRenames,
} from "../formulas/sheetReferences";
import type { PackageDraft } from "../package/packageDraft";
import { changeElement } from "../xml/elementOrder";
import type { Splice } from "../xml/splices";
import { childOf, childrenOf, type XmlElement, type XmlPart } from "../xml/xml";
import { escapeXml } from "../xml/xmlText";
import { removeSheetPart } from "./removeSheetPart";

/** The same sheet of the engine, whatever its name is now; books of no engine go by names. */
const isSame = (a: BookSheet, b: BookSheet): boolean =>
  a.id === undefined || b.id === undefined ? a.name === b.name : a.id === b.id;

/** What became of the sheets that have another name now, or were taken away. */
const sheetRenames = (before: Book, now: Book): SheetRenames =>
  new Map(
    before.sheets.flatMap((sheet): [string, string | undefined][] => {
      const present = now.sheets.find((each) => isSame(each, sheet));
      return present?.name === sheet.name ? [] : [[sheet.name.toLowerCase(), present?.name]];
    }),
  );

/** What a sheet of the file is called now; undefined where it was taken away. */
export const currentName = (fates: SheetRenames, name: string): string | undefined => {
  const key = name.toLowerCase();
  return fates.has(key) ? fates.get(key) : name;
};

/** What became of the sheets and tables of a file. */
export const renamesAndDeletions = (inFile: Book, calculated: Book, now: Book): RenamesAndDeletions => {
  const sheets = sheetRenames(calculated, now);
  const gone = inFile.sheets.filter(({ name }) => currentName(sheets, name) === undefined);
  const goneTables = gone.flatMap(({ tables = [] }) => tables.map(({ name }) => name.toLowerCase()));
  return { sheets, deletedTables: new Set(goneTables) };
};

const updateCell = (cell: BookCell, fates: RenamesAndDeletions): BookCell => {
  const formula = cell.formula && updateWhereEngineDoesNot(cell.formula, fates);
  return formula === cell.formula ? cell : { ...cell, formula };
};

/** The workbook with formulas that follow also where the engine leaves them as they were. */
export const updateCells = (book: Book, fates: RenamesAndDeletions): Book => {
  if (fates.sheets.size === 0) return book;
  const followed = ({ cells }: BookSheet): BookSheet["cells"] =>
    new Map(
      [...cells].map(([row, inRow]) => [
        row,
        new Map([...inRow].map(([column, cell]) => [column, updateCell(cell, fates)])),
      ]),
    );
  return { ...book, sheets: book.sheets.map((sheet) => ({ ...sheet, cells: followed(sheet) })) };
};

/** What holds a formula beside the cells: rules, charts, tables, names. */
const FORMULA_ELEMENTS = new Set(
  "f formula formula1 formula2 calculatedColumnFormula totalsRowFormula definedName".split(" "),
);
/** What says where to go, what to show, or which cell a button or a list of a form goes by. */
const REFERENCE_ATTRIBUTES = ["location", "textlink", "fmlaLink", "fmlaRange", "fmlaTxbx", "fmlaGroup"];

const PIVOT_SOURCES = new Set(["worksheetSource", "rangeSet"]);

const PARTS_WITH_REFERENCES =
  /^xl\/(?:workbook|worksheets|charts|drawings|tables|ctrlProps|pivotCache\/pivotCacheDefinition)[^]*\.xml$/i;

/** The attributes of an element that name sheets and have changed, as they are now. */
const updatedAttributes = (element: XmlElement, fates: RenamesAndDeletions): Record<string, string> => {
  const follow = (name: string, to: (was: string) => string | undefined): [string, string][] => {
    const was = element.attributes.get(name);
    const is = was === undefined ? undefined : to(was);
    return is === undefined || is === was ? [] : [[name, is]];
  };
  // The source of a pivot table: a sheet of another file has an arrow there; one that is gone stays named as it was.
  const isSource =
    PIVOT_SOURCES.has(element.name) && ![...element.attributes.keys()].some((key) => /:id$/.test(key));
  return Object.fromEntries([
    ...REFERENCE_ATTRIBUTES.flatMap((name) => follow(name, (was) => updateReferences(was, fates))),
    ...(isSource ? follow("sheet", (was) => currentName(fates.sheets, was)) : []),
  ]);
};

/** The changes of an element and all in it. Cells are the engine's: it has followed already. */
const referenceChanges = (source: string, element: XmlElement, fates: RenamesAndDeletions): Splice[] => {
  if (element.name === "sheetData") return [];
  if (FORMULA_ELEMENTS.has(element.name) && element.children.length === 0) {
    const text = updateReferences(element.text, fates);
    if (text === element.text) return [];
    return [{ start: element.innerStart, end: element.innerEnd, text: escapeXml(text) }];
  }
  const attributes = updatedAttributes(element, fates);
  const inside = element.children.flatMap((child) => referenceChanges(source, child, fates));
  return Object.keys(attributes).length === 0
    ? inside
    : [changeElement(source, element, { attributes, inside })];
};

/** The changes of the workbook's list that give its sheets the names that they have now. */
const sheetNameChanges = ({ source, root }: XmlPart, fates: SheetRenames): Splice[] =>
  childrenOf(childOf(root, "sheets"), "sheet").flatMap((element) => {
    const was = element.attributes.get("name") ?? "";
    const name = currentName(fates, was);
    return name === undefined || name === was
      ? []
      : [changeElement(source, element, { attributes: { name } })];
  });

/** Gives the sheets of a package the names that they have now, takes away those that are gone, and lets what refers to them follow. */
export const applyRenamesAndDeletions = (
  draft: PackageDraft,
  workbookPath: string,
  fates: RenamesAndDeletions,
): void => {
  if (fates.sheets.size === 0) return;
  for (const [name, now] of fates.sheets) if (now === undefined) removeSheetPart(draft, workbookPath, name);
  for (const path of draft.result().keys())
    if (PARTS_WITH_REFERENCES.test(path))
      draft.edit(path, ({ source, root }) => referenceChanges(source, root, fates));
  draft.edit(workbookPath, (part) => sheetNameChanges(part, fates.sheets));
};
