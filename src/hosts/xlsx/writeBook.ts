import { CellError } from "../../../shared/cell";
import type { Book, BookCell, BookName, BookSheet } from "./book";
import { themeColours } from "./colours";
import { lacksResult } from "./doubtfulResults";
import { addDrawing } from "./drawing";
import { dynamicArrayMark } from "./dynamicArrays";
import { changeElement, insertInOrder, prefixOf, removeElement, WORKBOOK_ORDER } from "./elementOrder";
import {
  EMPTY_SHEET,
  emptyPackage,
  STYLES_CONTENT_TYPE,
  USUAL_STYLES,
  WORKSHEET_CONTENT_TYPE,
} from "./emptyPackage";
import { FileError } from "./fileError";
import { fileFormula } from "./formulaForm";
import { PackageDraft } from "./packageDraft";
import { isBuiltInName } from "./readBook";
import { readStyles } from "./readStyles";
import { anchoredThings, sheetChanges, unwritableFormulas, whatIfChanges } from "./refusals";
import { patchSheet } from "./sheetPatch";
import type { Splice } from "./splices";
import { missingPlaces } from "./missingPlaces";
import { StylesDraft } from "./stylesDraft";
import { partOfKind, workbookParts, type WorkbookParts } from "./workbookParts";
import { childOf, childrenOf, numberAttribute, type XmlPart } from "./xml";
import { attributesText, escapeXml } from "./xmlText";
import type { Parts } from "./zip";

/** A file that was opened: its parts, its cells as it has them, and the workbook as it stood when all was calculated. */
export interface Opened {
  readonly parts: Parts;
  readonly inFile: Book;
  readonly calculated: Book;
}

const RELATIONSHIPS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

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

/** A result that the file doesn't have, or only as #NAME?: it is written though nothing was changed. */
const isMissing = (inFile: BookCell | undefined, calculated: BookCell): boolean =>
  calculated.formula !== undefined &&
  inFile?.formula !== undefined &&
  lacksResult(inFile.value) &&
  calculated.value !== null &&
  calculated.value !== "" &&
  !(calculated.value instanceof CellError);

/**
 * What to compare the present sheet with: as it stood when the file had been calculated, so that results on which engine and
 * file differ stay the file's until they change here; without the results that the file lacks.
 */
const baseline = (inFile: BookSheet | undefined, calculated: BookSheet): BookSheet => ({
  ...calculated,
  cells: new Map(
    [...calculated.cells].map(([row, cells]) => [
      row,
      new Map(
        [...cells].map(([column, cell]) => {
          const there = inFile?.cells.get(row)?.get(column);
          return [column, isMissing(there, cell) ? { ...cell, value: there?.value ?? null } : cell];
        }),
      ),
    ]),
  ),
});

const nameKey = ({ name, sheet }: BookName): string => `${name.toLowerCase()}\n${sheet ?? ""}`;

const nameTargetText = (target: string): string => (target.startsWith("=") ? fileFormula(target) : target);

/** The changes of the list of names: new ones, those that mean something else, those that are gone. */
const nameChanges = (
  { source, root }: XmlPart,
  workbook: WorkbookParts,
  before: readonly BookName[],
  now: readonly BookName[],
): Splice[] => {
  const x = prefixOf(root);
  const was = new Map(before.map((name) => [nameKey(name), name.target]));
  const is = new Map(now.map((name) => [nameKey(name), name]));
  const list = childOf(root, "definedNames");
  const inside: Splice[] = [];
  for (const element of childrenOf(list, "definedName")) {
    const name = element.attributes.get("name") ?? "";
    const sheet = workbook.sheets[numberAttribute(element, "localSheetId") ?? -1]?.name;
    const key = nameKey({ name, target: "", ...(sheet !== undefined && { sheet }) });
    if (isBuiltInName(name) || !was.has(key)) continue;
    const present = is.get(key);
    if (!present) inside.push(removeElement(element));
    else if (present.target !== was.get(key))
      inside.push({
        start: element.innerStart,
        end: element.innerEnd,
        text: escapeXml(nameTargetText(present.target)),
      });
  }
  const order = [...workbook.sheets.map(({ name }) => name)];
  const added = now
    .filter((name) => !was.has(nameKey(name)))
    .map(({ name, sheet, target }) => {
      const index = sheet === undefined ? undefined : order.indexOf(sheet);
      return `<${x}definedName${attributesText({ name, localSheetId: index })}>${escapeXml(nameTargetText(target))}</${x}definedName>`;
    })
    .join("");
  if (added === "" && inside.length === 0) return [];
  if (list) return [changeElement(source, list, { inside, append: added })];
  return [
    insertInOrder(root, WORKBOOK_ORDER, "definedNames", `<${x}definedNames>${added}</${x}definedNames>`),
  ];
};

const addSheetPart = (draft: PackageDraft, workbookPath: string, { name, isHidden }: BookSheet): string => {
  const path = draft.freePath("xl/worksheets/sheet", ".xml");
  draft.add(path, WORKSHEET_CONTENT_TYPE, EMPTY_SHEET);
  const id = draft.relate(workbookPath, "worksheet", path);
  draft.edit(workbookPath, ({ source, root }) => {
    const list = childOf(root, "sheets");
    if (!list) throw new FileError("The file's workbook has no list of sheets.");
    const x = prefixOf(root);
    const numbers = list.children.map((sheet) => numberAttribute(sheet, "sheetId") ?? 0);
    const attributes = {
      name,
      sheetId: Math.max(0, ...numbers) + 1,
      state: isHidden ? "hidden" : undefined,
      "r:id": id,
    };
    // The prefix is declared here, whatever the part around calls it.
    return [
      changeElement(source, list, {
        append: `<${x}sheet xmlns:r="${RELATIONSHIPS}"${attributesText(attributes)}/>`,
      }),
    ];
  });
  return path;
};

/** The part with the looks of cells; a package without one gets one. */
const stylesOf = (draft: PackageDraft, workbook: WorkbookParts): string => {
  const there = partOfKind(workbook, "styles");
  if (there !== undefined) return there;
  const path = draft.freePath("xl/styles", ".xml");
  draft.add(path, STYLES_CONTENT_TYPE, USUAL_STYLES);
  draft.relate(workbook.path, "styles", path);
  return path;
};

/** Makes every reader calculate all of it at its next opening: wanted where results here can't be relied on. */
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
  /** Sheets on which rows, columns or blocks of cells were moved since the file was opened. */
  readonly movedSheets?: ReadonlySet<string>;
  /** Formulas whose results differ between file and engine. */
  readonly hasDoubtfulResults?: boolean;
}

/** A signature vouches for the file as it was. */
export const refuseSigned = (parts: Parts): void => {
  if ([...parts.keys()].some((path) => path.toLowerCase().startsWith("_xmlsignatures/")))
    throw new FileError(
      "The workbook wasn't saved: it carries a digital signature, which a change would break. Take the signature off in Excel first.",
    );
};

const refuse = (problems: readonly string[]): void => {
  if (problems.length > 0) throw new FileError(`The workbook wasn't saved: ${problems.join("; ")}.`);
};

/**
 * The package of an opened file with what has changed since, or a new package. Every part in which nothing has changed is the
 * opened file's own; what can't be written is refused with the list.
 */
export const writeBook = (opened: Opened | undefined, now: Book, options: SaveOptions = {}): Parts => {
  const parts = opened?.parts ?? emptyPackage();
  const draft = new PackageDraft(parts);
  const before = opened?.calculated ?? EMPTY_BOOK;
  const workbook = workbookParts(parts);
  const paths = new Map(workbook.sheets.map(({ name, path }) => [name, path]));
  const baselines = new Map(
    before.sheets.map((sheet) => [
      sheet.name,
      baseline(
        opened?.inFile.sheets.find(({ name }) => name === sheet.name),
        sheet,
      ),
    ]),
  );

  refuse([
    ...sheetChanges(before, now),
    ...now.sheets.flatMap((sheet) => {
      const was = baselines.get(sheet.name);
      const path = paths.get(sheet.name);
      const problems = unwritableFormulas(was, sheet);
      if (!was || path === undefined) return problems;
      const { root } = draft.read(path);
      const anchored = options.movedSheets?.has(sheet.name) ? anchoredThings(root) : [];
      const hasOther =
        options.movedSheets?.has(sheet.name) &&
        [...parts.keys()].some((each) => /^xl\/(?:charts|pivot|externalLinks)/i.test(each));
      return [
        ...problems,
        ...whatIfChanges(root, was, sheet),
        ...(anchored.length > 0
          ? [
              `rows, columns or cells were moved on "${sheet.name}", and these would stay behind: ${anchored.join(", ")}`,
            ]
          : []),
        ...(hasOther
          ? [
              `rows, columns or cells were moved on "${sheet.name}", and charts or pivot tables of the file may refer to them`,
            ]
          : []),
      ];
    }),
  ]);

  for (const sheet of now.sheets)
    if (!paths.has(sheet.name)) paths.set(sheet.name, addSheetPart(draft, workbook.path, sheet));

  const stylesPath = stylesOf(draft, workbook);
  const stylesPart = draft.read(stylesPath);
  const themePath = partOfKind(workbook, "theme");
  const theme = themePath !== undefined && draft.has(themePath) ? draft.read(themePath).root : undefined;
  const styles = new StylesDraft(stylesPart, readStyles(stylesPart.root, themeColours(theme)));
  let mark: string | undefined;
  const dynamicArray = (): string =>
    (mark ??= dynamicArrayMark(draft, workbook.path, partOfKind(workbook, "sheetMetadata")));

  let changesFormulas = false;
  let changesCells = false;
  for (const sheet of now.sheets) {
    const path = paths.get(sheet.name) ?? "";
    const was = baselines.get(sheet.name) ?? blankSheet(sheet.name);
    const patch = () => patchSheet(draft.read(path), was, sheet, { styles, looks: now.styles, dynamicArray });
    let patched = patch();
    if (patched.splices.length === 0) continue;
    if (draft.edit(path, missingPlaces)) patched = patch();
    const { splices } = patched;
    changesCells = true;
    changesFormulas ||= patched.changesFormulas;
    draft.edit(path, () => splices);
  }
  draft.edit(stylesPath, () => styles.changes());
  for (const { name, drawing } of now.sheets) if (drawing) addDrawing(draft, paths.get(name) ?? "", drawing);

  draft.edit(workbook.path, (part) => [
    ...nameChanges(part, workbookParts(draft.result()), before.names, now.names),
    ...childrenOf(childOf(part.root, "sheets"), "sheet").flatMap((element) => {
      const sheet = now.sheets.find(({ name }) => name === element.attributes.get("name"));
      const was = baselines.get(sheet?.name ?? "");
      if (!sheet || !was || was.isHidden === sheet.isHidden) return [];
      return [
        changeElement(part.source, element, { attributes: { state: sheet.isHidden ? "hidden" : undefined } }),
      ];
    }),
  ]);

  const chain = partOfKind(workbook, "calcChain");
  if (changesFormulas && chain !== undefined) draft.remove(workbook.path, chain);
  if (changesCells && options.hasDoubtfulResults) calculateOnOpening(draft, workbook.path);
  return draft.result();
};
