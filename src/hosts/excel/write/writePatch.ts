import type { Area } from "../../../workbook/address";
import { formatSource, refuseOccupied } from "../../../workbook/patch";
import type { ProgressMonitor } from "../../../workbook/progressMonitor";
import { blockAt, rowsIn, type CellBlock } from "../ranges/cellBlock";
import type { ExcelEntry } from "../ranges/excelEntry";
import { rangeOf, slicesOf } from "../ranges/ranges";
import { toCellInput } from "./cellInput";
import { occupiedCells, type PatchTarget } from "./patchTarget";

/** A slice of the target that was written, or was being written when something failed. */
export interface WrittenSlice {
  readonly area: Area;
  /** As Excel keeps them; undefined until it has answered. */
  formulas?: CellBlock;
}

/** What Excel calls the number format of a cell without one. */
const NO_FORMAT = "General";

/** A cell keeps its own number format where the patch gives none; null leaves it as it is. */
const numberFormatsFor = (target: PatchTarget, slice: Area): unknown[][] => {
  const own = rowsIn(target.numberFormats, slice);
  return rowsIn(target.cells, slice).map((line, row) =>
    line.map((cell, column) => {
      if (!cell || cell.numberFormat !== undefined) return cell?.numberFormat ?? null;
      return own[row]?.[column] === NO_FORMAT ? (target.rowNumberFormats[column] ?? null) : null;
    }),
  );
};

/** The table's area with the patch's columns added to it. */
export const grownTable = ({ from, to }: Area, { area }: PatchTarget): Area => ({
  from,
  to: { row: to.row, column: area.to.column },
});

/** Loads the cells of a slice. The check, called after the next sync, refuses what a person has typed there since. */
const loadTyped = (
  sheet: Excel.Worksheet,
  { patch, cells }: PatchTarget,
  slice: Area | undefined,
): (() => void) => {
  if (!slice) return () => undefined;
  const range = rangeOf(sheet, slice);
  range.load("values,formulas");
  return () => {
    const { values, formulas } = range;
    const occupied = occupiedCells({ area: slice, rows: values }, { area: slice, rows: formulas }, patch);
    refuseOccupied(occupied.filter((address) => blockAt(cells, address)));
  };
};

/** Queues the formats and formulas of a slice; returns its range. */
const queueSlice = (sheet: Excel.Worksheet, target: PatchTarget, slice: Area): Excel.Range => {
  const range = rangeOf(sheet, slice);
  const source = formatSource(target.patch, slice);
  // Formats come first: a formula that goes into a cell of text format stays text. A table formats its own cells.
  if (source && target.isUnformatted && !target.patch.table)
    range.copyFrom(rangeOf(sheet, source), "Formats");
  range.numberFormat = numberFormatsFor(target, slice);
  // null leaves a cell as it is.
  range.formulas = rowsIn(target.cells, slice).map((line) =>
    line.map((cell) => (cell ? toCellInput(cell.content) : null)),
  );
  return range;
};

/**
 * Writes the patch slice by slice, each in one sync, and adds each to `written` before its turn. Refuses before a slice where
 * a person has typed into its cells since they were read.
 */
export const writePatch = (
  excel: ExcelEntry,
  target: PatchTarget,
  written: WrittenSlice[],
  { onProgress, signal }: ProgressMonitor,
): Promise<void> =>
  excel.run(async (context) => {
    const { workbook } = context;
    const { patch, area } = target;
    const sheet = workbook.worksheets.getItem(target.sheetId);
    const slices = slicesOf(area);
    let refuseTyped = loadTyped(sheet, target, slices[0]);
    await context.sync();
    for (const [index, slice] of slices.entries()) {
      refuseTyped();
      const step: WrittenSlice = { area: slice };
      written.push(step);
      workbook.application.suspendScreenUpdatingUntilNextSync();
      const range = queueSlice(sheet, target, slice);
      if (patch.table && index === slices.length - 1)
        workbook.tables
          .getItem(patch.table.name)
          .resize(rangeOf(sheet, grownTable(patch.table.area, target)));
      range.load("formulas");
      refuseTyped = loadTyped(sheet, target, slices[index + 1]);
      await context.sync();
      step.formulas = { area: slice, rows: range.formulas };
      signal.throwIfAborted();
      onProgress((index + 1) / slices.length);
    }
  });
