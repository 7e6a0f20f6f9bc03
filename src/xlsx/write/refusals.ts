import { a1 } from "../../workbook/address";
import type { Book, BookSheet } from "../book/book";
import { hasFormControls } from "./comments";
import { cellChanges } from "./cellChanges";
import { unwritablePart } from "../formulas/storedFormula";
import { parseRange } from "../book/a1References";
import type { SheetMoves } from "../book/rowColumnMoves";
import type { PackageDraft } from "../package/packageDraft";
import { childOf } from "../xml/xml";
import type { XmlElement } from "../xml/xml";
import { allCellElements } from "../read/sheetCells";

const COMMENTS_OR_CONTROLS = "comments or form controls";

/** Elements that refer to fixed cells of a sheet and that we don't move with rows and columns. */
const ANCHORED: readonly (readonly [element: string, words: string])[] = [
  ["conditionalFormatting", "conditional formats"],
  ["dataValidations", "validation rules"],
  ["hyperlinks", "links"],
  ["autoFilter", "a filter"],
  ["protectedRanges", "protected ranges"],
  ["drawing", "charts, pictures or shapes"],
  ["legacyDrawing", COMMENTS_OR_CONTROLS],
  ["tableParts", "tables"],
  ["rowBreaks", "page breaks"],
  ["colBreaks", "page breaks"],
  ["extLst", "extras of newer Excel versions"],
];

const anchoredContent = (sheet: XmlElement): string[] => [
  ...new Set(ANCHORED.flatMap(([name, words]) => (childOf(sheet, name) ? [words] : []))),
];

/** Comments move with whole rows and columns (`comments.ts`). */
const followsMoves = (draft: PackageDraft, path: string, moves: SheetMoves): boolean =>
  moves !== "scattered" && !hasFormControls(draft, path);

/** What wouldn't move along where rows, columns or cells were moved on a sheet of the file. */
export const leftBehind = (draft: PackageDraft, name: string, path: string, moves: SheetMoves): string[] => {
  const things = anchoredContent(draft.read(path).root);
  const anchored = followsMoves(draft, path, moves)
    ? things.filter((words) => words !== COMMENTS_OR_CONTROLS)
    : things;
  const moved = `rows, columns or cells were moved on "${name}", and`;
  return [
    ...(anchored.length > 0
      ? [`${moved} these would not move with them: ${anchored.join(", ")}; undo the move (Ctrl+Z), then save`]
      : []),
    ...([...draft.result().keys()].some((each) => /^xl\/(?:charts|pivot|externalLinks)/i.test(each))
      ? [`${moved} charts or pivot tables in the file may refer to them`]
      : []),
  ];
};

/** New or changed formulas that we can't store. */
export const unwritableFormulas = (before: BookSheet | undefined, now: BookSheet): string[] =>
  [...now.cells].flatMap(([row, cells]) =>
    [...cells].flatMap(([column, { formula }]) => {
      if (formula === undefined || before?.cells.get(row)?.get(column)?.formula === formula) return [];
      const part = unwritablePart(formula);
      return part === undefined
        ? []
        : [`the formula in "${now.name}", ${a1({ row, column })} uses ${part}, which can't be saved yet`];
    }),
  );

/** Changes to cells of a what-if data table, which can't be changed one by one. */
export const whatIfChanges = (sheet: XmlElement, before: BookSheet, now: BookSheet): string[] => {
  const tables = allCellElements(sheet).flatMap(({ element }) => {
    const formula = childOf(element, "f");
    const range =
      formula?.attributes.get("t") === "dataTable"
        ? parseRange(formula.attributes.get("ref") ?? "")
        : undefined;
    return range ? [range] : [];
  });
  if (tables.length === 0) return [];
  const changed = cellChanges(before, now).find(({ row, column }) =>
    tables.some(
      ({ from, to }) => row >= from.row && row <= to.row && column >= from.column && column <= to.column,
    ),
  );
  return changed
    ? [`"${now.name}", ${a1(changed)} is part of a what-if table, which can't be changed here`]
    : [];
};

/** Whether the file's sheets, by their current names, are in a different order. */
export const orderChanges = (ofFile: readonly string[], now: Book): string[] => {
  const kept = now.sheets.map(({ name }) => name).filter((name) => ofFile.includes(name));
  return kept.some((name, index) => ofFile[index] !== name)
    ? ["the file's sheets are in a different order"]
    : [];
};
