import type { SheetCellAddress } from "../../workbook/address";
import type { Contents } from "../../workbook/contents";
import { cellsOf, referencesOf } from "./references";
import { contentsReader } from "./workbookReader";

/**
 * Every cell that some cells are calculated from, directly or through others, themselves included, each once. Skipped cells are
 * left out, and so are the cells that only they lead to.
 */
export const allPrecedents = (
  contents: Contents,
  from: readonly SheetCellAddress[],
  isSkipped: (cell: SheetCellAddress) => boolean = () => false,
): SheetCellAddress[] => {
  const reader = contentsReader(contents);
  const seen = new Map<string, SheetCellAddress>();
  const waiting = [...from];
  for (let cell = waiting.pop(); cell; cell = waiting.pop()) {
    const key = `${cell.row},${cell.column},${cell.sheet}`;
    if (seen.has(key) || isSkipped(cell)) continue;
    seen.set(key, cell);
    for (const reference of referencesOf(contents, cell.sheet, cell))
      for (const precedent of cellsOf(reference, reader)) waiting.push(precedent);
  }
  return [...seen.values()];
};
