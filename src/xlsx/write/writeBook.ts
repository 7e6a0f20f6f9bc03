import { addSheetPart } from "./addSheetPart";
import { baselines } from "./baseline";
import type { Book, BookName, BookSheet } from "../book/book";
import type { SheetRenames } from "../formulas/sheetReferences";
import { themeColors } from "../styles/colors";
import { addDrawing } from "./drawing";
import { dynamicArrayMark } from "./dynamicArrays";
import { changeElement, insertInOrder, prefixOf, WORKBOOK_ORDER } from "../xml/elementOrder";
import { emptyPackage, STYLES_CONTENT_TYPE, DEFAULT_STYLES } from "../package/emptyPackage";
import { FileError } from "../book/fileError";
import type { SheetMoves } from "../book/rowColumnMoves";
import { moveComments } from "./comments";
import { explicitReferences } from "./explicitReferences";
import { nameChanges } from "./nameChanges";
import { PackageDraft } from "../package/packageDraft";
import { addPicture } from "./writePictures";
import { readStyles } from "../styles/readStyles";
import { leftBehind, orderChanges, unwritableFormulas, whatIfChanges } from "./refusals";
import {
  updateCells,
  renamesAndDeletions,
  applyRenamesAndDeletions,
  currentName,
} from "./sheetRenamesAndDeletions";
import { patchSheet } from "./sheetPatch";
import { StylesDraft } from "../styles/stylesDraft";
import { partOfKind, workbookParts, type WorkbookParts } from "../package/workbookParts";
import { childOf, childrenOf } from "../xml/xml";
import type { Parts } from "../package/zip";

/** An opened file: its parts, its cells as stored, and the workbook after its first calculation. */
export interface Opened {
  readonly parts: Parts;
  readonly inFile: Book;
  readonly calculated: Book;
}

const blankSheet = (name: string): BookSheet => ({
  name,
  isHidden: false,
  cells: new Map(),
  rows: new Map(),
  columns: new Map(),
  merges: [],
  frozen: { rows: 0, columns: 0 },
  dropDowns: [],
});

const EMPTY_BOOK: Book = { sheets: [], names: [], styles: new Map() };

/** The path of the styles part; a package without one gets one. */
const stylesOf = (draft: PackageDraft, workbook: WorkbookParts): string => {
  const there = partOfKind(workbook, "styles");
  if (there !== undefined) return there;
  const path = draft.freePath("xl/styles", ".xml");
  draft.add(path, STYLES_CONTENT_TYPE, DEFAULT_STYLES);
  draft.addRelationship(workbook.path, "styles", path);
  return path;
};

/** Makes every reader recalculate the workbook when it opens it. */
const calculateOnOpening = (draft: PackageDraft, path: string): void => {
  draft.edit(path, ({ source, root }) => {
    const element = childOf(root, "calcPr");
    const x = prefixOf(root);
    return element
      ? [changeElement(source, element, { attributes: { fullCalcOnLoad: "1" } })]
      : [insertInOrder(root, WORKBOOK_ORDER, "calcPr", `<${x}calcPr fullCalcOnLoad="1"/>`)];
  });
};

export interface SaveOptions {
  /** The moves on each sheet since the file was opened. */
  readonly movesBySheet?: ReadonlyMap<string, SheetMoves>;
  /** Whether some results differ between file and engine; saving changes then asks readers to recalculate. */
  readonly hasDifferingResults?: boolean;
}

/** The names scoped to the current names of their sheets, without those of deleted sheets. */
const namesNow = (names: readonly BookName[], renames: SheetRenames): BookName[] =>
  names.flatMap((name) => {
    if (name.sheet === undefined) return [name];
    const sheet = currentName(renames, name.sheet);
    return sheet === undefined ? [] : [{ ...name, sheet }];
  });

/** A digital signature covers the file as it was. */
export const refuseSigned = (parts: Parts): void => {
  if ([...parts.keys()].some((path) => path.toLowerCase().startsWith("_xmlsignatures/")))
    throw new FileError(
      "The workbook wasn't saved: it has a digital signature, which a change would break. Remove the signature in Excel first.",
    );
};

const refuse = (problems: readonly string[]): void => {
  if (problems.length > 0) throw new FileError(`The workbook wasn't saved: ${problems.join("; ")}.`);
};

/**
 * The package of an opened file with its changes, or a new package. Parts without changes keep the file's bytes. Throws a
 * `FileError` with the list of what can't be saved.
 */
export const writeBook = (opened: Opened | undefined, present: Book, options: SaveOptions = {}): Parts => {
  const parts = opened?.parts ?? emptyPackage();
  const draft = new PackageDraft(parts);
  const before = opened?.calculated ?? EMPTY_BOOK;
  const changes = renamesAndDeletions(opened?.inFile ?? EMPTY_BOOK, before, present);
  const now = updateCells(present, changes);
  applyRenamesAndDeletions(draft, workbookParts(parts).path, changes);
  // From here on, the file's sheets have their current names.
  const workbook = workbookParts(draft.result());
  const paths = new Map(workbook.sheets.map(({ name, path }) => [name, path]));
  const compared = opened
    ? baselines(opened.inFile, opened.calculated, changes.sheets)
    : new Map<string, BookSheet>();

  refuse([
    ...orderChanges([...compared.keys()], now),
    ...now.sheets.flatMap((sheet) => {
      const was = compared.get(sheet.name);
      const path = paths.get(sheet.name);
      const moves = options.movesBySheet?.get(sheet.name);
      return [
        ...unwritableFormulas(was, sheet),
        ...(was && path !== undefined ? whatIfChanges(draft.read(path).root, was, sheet) : []),
        ...(path !== undefined && moves ? leftBehind(draft, sheet.name, path, moves) : []),
      ];
    }),
  ]);

  for (const [name, moves] of options.movesBySheet ?? []) {
    const path = paths.get(name);
    if (path !== undefined && moves !== "scattered") moveComments(draft, path, moves);
  }
  for (const sheet of now.sheets)
    if (!paths.has(sheet.name)) paths.set(sheet.name, addSheetPart(draft, workbook.path, sheet));

  const stylesPath = stylesOf(draft, workbook);
  const stylesPart = draft.read(stylesPath);
  const themePath = partOfKind(workbook, "theme");
  const theme = themePath !== undefined && draft.has(themePath) ? draft.read(themePath).root : undefined;
  const stylesDraft = new StylesDraft(stylesPart, readStyles(stylesPart.root, themeColors(theme)));
  let mark: string | undefined;
  const markOnce = (): string =>
    (mark ??= dynamicArrayMark(draft, workbook.path, partOfKind(workbook, "sheetMetadata")));

  let changesFormulas = false;
  let changesCells = false;
  for (const sheet of now.sheets) {
    const path = paths.get(sheet.name) ?? "";
    const was = compared.get(sheet.name) ?? blankSheet(sheet.name);
    const patch = () =>
      patchSheet(draft.read(path), was, sheet, {
        stylesDraft,
        styles: now.styles,
        dynamicArrayMark: markOnce,
      });
    let patched = patch();
    if (patched.splices.length === 0) continue;
    if (draft.edit(path, explicitReferences)) patched = patch();
    const { splices } = patched;
    changesCells = true;
    changesFormulas ||= patched.changesFormulas;
    draft.edit(path, () => splices);
  }
  draft.edit(stylesPath, () => stylesDraft.changes());
  for (const { name, drawing, pictures = [] } of now.sheets) {
    const path = paths.get(name) ?? "";
    if (drawing) addDrawing(draft, path, drawing);
    for (const picture of pictures) addPicture(draft, path, picture);
  }

  draft.edit(workbook.path, (part) => [
    ...nameChanges(part, workbookParts(draft.result()), namesNow(before.names, changes.sheets), now.names),
    ...childrenOf(childOf(part.root, "sheets"), "sheet").flatMap((element) => {
      const sheet = now.sheets.find(({ name }) => name === element.attributes.get("name"));
      const was = compared.get(sheet?.name ?? "");
      if (!sheet || !was || was.isHidden === sheet.isHidden) return [];
      return [
        changeElement(part.source, element, { attributes: { state: sheet.isHidden ? "hidden" : undefined } }),
      ];
    }),
  ]);

  const chain = partOfKind(workbook, "calcChain");
  if (changesFormulas && chain !== undefined) draft.remove(workbook.path, chain);
  if (changesCells && options.hasDifferingResults) calculateOnOpening(draft, workbook.path);
  return draft.result();
};
