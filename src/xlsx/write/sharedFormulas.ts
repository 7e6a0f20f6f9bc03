import type { CellAddress } from "../../workbook/address";
import type { BookSheet } from "../book/book";
import type { CellChange } from "./cellChanges";
import { addressKey, sharedNumber, type CellElement } from "../read/sheetCells";
import { childOf } from "../xml/xml";

/** Cells whose shared formula was stored in a cell that now has another formula: each gets its own. */
export const orphanedChanges = (
  cells: readonly CellElement[],
  changes: readonly CellChange[],
  before: BookSheet,
  now: BookSheet,
): CellChange[] => {
  const changed = new Set(changes.map(addressKey));
  const hasNewFormula = ({ row, column }: CellAddress): boolean =>
    before.cells.get(row)?.get(column)?.formula !== now.cells.get(row)?.get(column)?.formula;
  const lost = new Set(
    cells
      .filter((cell) => childOf(cell.element, "f")?.text && hasNewFormula(cell))
      .flatMap((cell) => sharedNumber(cell) ?? []),
  );
  return cells.flatMap((cell) => {
    const { row, column } = cell;
    if (!lost.has(sharedNumber(cell) ?? "") || changed.has(addressKey(cell))) return [];
    return [
      { row, column, before: before.cells.get(row)?.get(column), now: now.cells.get(row)?.get(column) },
    ];
  });
};
