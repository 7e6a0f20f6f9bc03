import type { SheetCellAddress } from "../../workbook/address";
import type { Contents } from "../../workbook/contents";
import { referencesOf } from "./references";

/**
 * Every cell that some cells are worked out from, themselves included, as far as the sheets go; each once. Cells that are passed
 * over are left out, and what only they are worked out from.
 */
export const allPrecedents = (
  contents: Contents,
  from: readonly SheetCellAddress[],
  isPassedOver: (spot: SheetCellAddress) => boolean = () => false,
): SheetCellAddress[] => {
  const seen = new Map<string, SheetCellAddress>();
  const waiting = [...from];
  for (let spot = waiting.pop(); spot; spot = waiting.pop()) {
    const key = `${spot.row},${spot.column},${spot.sheet}`;
    if (seen.has(key) || isPassedOver(spot)) continue;
    seen.set(key, spot);
    for (const { sheet, area } of referencesOf(contents, spot.sheet, spot)) {
      const cells = contents.sheets.get(sheet)?.cells ?? [];
      for (let row = area.from.row; row <= Math.min(area.to.row, cells.length - 1); row++)
        for (
          let column = area.from.column;
          column <= Math.min(area.to.column, (cells[row]?.length ?? 0) - 1);
          column++
        )
          waiting.push({ sheet, row, column });
    }
  }
  return [...seen.values()];
};
