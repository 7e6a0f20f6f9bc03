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

/** Whether two are the same sheet: by the engine's id, or by name in books without an engine. */
const isSame = (a: BookSheet, b: BookSheet): boolean =>
  a.id === undefined || b.id === undefined ? a.name === b.name : a.id === b.id;

/** The sheets that were renamed or deleted. */
const sheetRenames = (before: Book, now: Book): SheetRenames =>
  new Map(
    before.sheets.flatMap((sheet): [string, string | undefined][] => {
      const present = now.sheets.find((each) => isSame(each, sheet));
      return present?.name === sheet.name ? [] : [[sheet.name.toLowerCase(), present?.name]];
    }),
  );

/** The current name of a sheet of the file; undefined where it was deleted. */
export const currentName = (renames: SheetRenames, name: string): string | undefined => {
  const key = name.toLowerCase();
  return renames.has(key) ? renames.get(key) : name;
};

/** The renamed and deleted sheets of a file, and the tables deleted with them. */
export const renamesAndDeletions = (inFile: Book, calculated: Book, now: Book): RenamesAndDeletions => {
  const sheets = sheetRenames(calculated, now);
  const gone = inFile.sheets.filter(({ name }) => currentName(sheets, name) === undefined);
  const goneTables = gone.flatMap(({ tables = [] }) => tables.map(({ name }) => name.toLowerCase()));
  return { sheets, deletedTables: new Set(goneTables) };
};

const updateCell = (cell: BookCell, changes: RenamesAndDeletions): BookCell => {
  const formula = cell.formula && updateWhereEngineDoesNot(cell.formula, changes);
  return formula === cell.formula ? cell : { ...cell, formula };
};

/** The workbook with references updated where the engine doesn't update them. */
export const updateCells = (book: Book, changes: RenamesAndDeletions): Book => {
  if (changes.sheets.size === 0) return book;
  const followed = ({ cells }: BookSheet): BookSheet["cells"] =>
    new Map(
      [...cells].map(([row, inRow]) => [
        row,
        new Map([...inRow].map(([column, cell]) => [column, updateCell(cell, changes)])),
      ]),
    );
  return { ...book, sheets: book.sheets.map((sheet) => ({ ...sheet, cells: followed(sheet) })) };
};

/** Elements with a formula outside cells: in rules, charts, tables, names. */
const FORMULA_ELEMENTS = new Set(
  "f formula formula1 formula2 calculatedColumnFormula totalsRowFormula definedName".split(" "),
);
/** Attributes with a reference: of links, shapes and form controls. */
const REFERENCE_ATTRIBUTES = ["location", "textlink", "fmlaLink", "fmlaRange", "fmlaTxbx", "fmlaGroup"];

const PIVOT_SOURCES = new Set(["worksheetSource", "rangeSet"]);

const PARTS_WITH_REFERENCES =
  /^xl\/(?:workbook|worksheets|charts|drawings|tables|ctrlProps|pivotCache\/pivotCacheDefinition)[^]*\.xml$/i;

/** The new values of an element's attributes that refer to renamed or deleted sheets. */
const updatedAttributes = (element: XmlElement, changes: RenamesAndDeletions): Record<string, string> => {
  const follow = (name: string, to: (was: string) => string | undefined): [string, string][] => {
    const was = element.attributes.get(name);
    const is = was === undefined ? undefined : to(was);
    return is === undefined || is === was ? [] : [[name, is]];
  };
  // A pivot table's source. One in another file has a relationship id; a deleted sheet keeps its name there.
  const isSource =
    PIVOT_SOURCES.has(element.name) && ![...element.attributes.keys()].some((key) => /:id$/.test(key));
  return Object.fromEntries([
    ...REFERENCE_ATTRIBUTES.flatMap((name) => follow(name, (was) => updateReferences(was, changes))),
    ...(isSource ? follow("sheet", (was) => currentName(changes.sheets, was)) : []),
  ]);
};

/** The changes of an element and its descendants. The engine has updated the cells already. */
const referenceChanges = (source: string, element: XmlElement, changes: RenamesAndDeletions): Splice[] => {
  if (element.name === "sheetData") return [];
  if (FORMULA_ELEMENTS.has(element.name) && element.children.length === 0) {
    const text = updateReferences(element.text, changes);
    if (text === element.text) return [];
    return [{ start: element.innerStart, end: element.innerEnd, text: escapeXml(text) }];
  }
  const attributes = updatedAttributes(element, changes);
  const inside = element.children.flatMap((child) => referenceChanges(source, child, changes));
  return Object.keys(attributes).length === 0
    ? inside
    : [changeElement(source, element, { attributes, inside })];
};

/** The changes of the sheets' names in the workbook part. */
const sheetNameChanges = ({ source, root }: XmlPart, renames: SheetRenames): Splice[] =>
  childrenOf(childOf(root, "sheets"), "sheet").flatMap((element) => {
    const was = element.attributes.get("name") ?? "";
    const name = currentName(renames, was);
    return name === undefined || name === was
      ? []
      : [changeElement(source, element, { attributes: { name } })];
  });

/** Renames and deletes the sheets of a package, and updates what refers to them. */
export const applyRenamesAndDeletions = (
  draft: PackageDraft,
  workbookPath: string,
  changes: RenamesAndDeletions,
): void => {
  if (changes.sheets.size === 0) return;
  for (const [name, now] of changes.sheets) if (now === undefined) removeSheetPart(draft, workbookPath, name);
  for (const path of draft.result().keys())
    if (PARTS_WITH_REFERENCES.test(path))
      draft.edit(path, ({ source, root }) => referenceChanges(source, root, changes));
  draft.edit(workbookPath, (part) => sheetNameChanges(part, changes.sheets));
};
