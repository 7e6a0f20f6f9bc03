import { CellError } from "../../../shared/cell";
import type { Book, BookCell, BookSheet } from "../book/book";
import type { SheetRenames } from "../formulas/sheetReferences";
import { lacksCachedResult } from "./cachedResults";
import { currentName } from "./sheetRenamesAndDeletions";

/** A result that the file doesn't have, or only as #NAME?: it is written though nothing was changed. */
const isMissing = (inFile: BookCell | undefined, calculated: BookCell): boolean =>
  calculated.formula !== undefined &&
  inFile?.formula !== undefined &&
  lacksCachedResult(inFile.value) &&
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

/** The sheets of an opened file to compare the present ones with, by the names that they have now. */
export const baselines = (
  inFile: Book,
  calculated: Book,
  fates: SheetRenames,
): ReadonlyMap<string, BookSheet> =>
  new Map(
    calculated.sheets.flatMap((sheet): [string, BookSheet][] => {
      const name = currentName(fates, sheet.name);
      if (name === undefined) return [];
      const there = inFile.sheets.find((each) => each.name === sheet.name);
      return [[name, baseline(there, sheet)]];
    }),
  );
