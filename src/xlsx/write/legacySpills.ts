import type { CellAddress } from "../../workbook/address";
import type { BookCell, BookSheet } from "../book/book";
import type { CellChange } from "./cellChanges";
import { addressKey, type CellElement } from "../read/sheetCells";
import { childOf } from "../xml/xml";

/** The cells that a cell's result fills. */
export const spillArea = (
  { row, column }: CellAddress,
  cell: BookCell | undefined,
): { rows: number; columns: number } & CellAddress => ({
  row,
  column,
  rows: cell?.spill?.rows ?? 1,
  columns: cell?.spill?.columns ?? 1,
});

const isWithin = ({ row, column }: CellAddress, block: ReturnType<typeof spillArea>): boolean =>
  row >= block.row &&
  row < block.row + block.rows &&
  column >= block.column &&
  column < block.column + block.columns;

/**
 * A plain formula in a file gives one cell (implicit intersection), even where its result spills here. It stays as the file has
 * it, and the cells that it fills here aren't written.
 */
export const withoutLegacySpills = (
  changes: readonly CellChange[],
  elements: ReadonlyMap<string, CellElement>,
  now: BookSheet,
  before: BookSheet,
): CellChange[] => {
  const blocks: ReturnType<typeof spillArea>[] = [];
  for (const [row, cells] of now.cells)
    for (const [column, cell] of cells) {
      const was = before.cells.get(row)?.get(column);
      const formula = childOf(elements.get(addressKey({ row, column }))?.element, "f");
      if (!formula || formula.attributes.get("t") === "array" || cell.formula !== was?.formula) continue;
      if (cell.spill) blocks.push(spillArea({ row, column }, cell));
      if (was?.spill) blocks.push(spillArea({ row, column }, was));
    }
  return changes.filter((change) => {
    const isOfFormula =
      change.now?.isSpilled === true || change.before?.isSpilled === true || change.now?.spill !== undefined;
    return !(isOfFormula && blocks.some((block) => isWithin(change, block)));
  });
};
