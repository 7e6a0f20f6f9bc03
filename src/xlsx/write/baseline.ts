import { CellError } from "../../../shared/cell";
import type { Book, BookCell, BookSheet } from "../book/book";
import type { SheetRenames } from "../formulas/sheetReferences";
import { lacksCachedResult } from "./cachedResults";
import { currentName } from "./sheetRenamesAndDeletions";

/** A result that the file lacks, or has only as #NAME?. It is written even where nothing has changed. */
const isMissing = (inFile: BookCell | undefined, calculated: BookCell): boolean =>
  calculated.formula !== undefined &&
  inFile?.formula !== undefined &&
  lacksCachedResult(inFile.value) &&
  calculated.value !== null &&
  calculated.value !== "" &&
  !(calculated.value instanceof CellError);

/**
 * What to compare the present sheet with: the sheet after the file's first calculation, without the results that the file
 * lacks. So where engine and file differ on a result, the file's stays until it changes here.
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

/** The baselines of an opened file's sheets, by their current names. */
export const baselines = (
  inFile: Book,
  calculated: Book,
  renames: SheetRenames,
): ReadonlyMap<string, BookSheet> =>
  new Map(
    calculated.sheets.flatMap((sheet): [string, BookSheet][] => {
      const name = currentName(renames, sheet.name);
      if (name === undefined) return [];
      const there = inFile.sheets.find((each) => each.name === sheet.name);
      return [[name, baseline(there, sheet)]];
    }),
  );
