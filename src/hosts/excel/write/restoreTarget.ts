import { InputError } from "../../../../shared/inputError";
import {
  addressesIn,
  areaAddress,
  cellCount,
  type Area,
  type CellAddress,
  type SheetCellAddress,
} from "../../../workbook/address";
import type { ProgressMonitor } from "../../../workbook/progressMonitor";
import { refuseChanged } from "../../../workbook/patch";
import type { SpreadsheetTable } from "../../../workbook/survey";
import { blockAt, rowsIn } from "../ranges/cellBlock";
import type { ExcelEntry } from "../ranges/excelEntry";
import { areaOf, PLACE_AND_SIZE, rangeOf } from "../ranges/ranges";
import type { PatchTarget } from "./patchTarget";
import { grownTable, type WrittenSlice } from "./writePatch";

/** Whether a cell of a slice still holds what was written to it; nothing is known of a slice that Excel hasn't answered for. */
const isAsWritten =
  ({ area, formulas }: WrittenSlice, now: Excel.Range) =>
  (address: CellAddress): boolean =>
    formulas !== undefined && blockAt({ area, rows: now.formulas }, address) === blockAt(formulas, address);

/** The areas of a slice to restore: all of it, or cell by cell what a person hasn't changed. */
const areasToRestore = (slice: WrittenSlice, now: Excel.Range): Area[] => {
  if (slice.formulas === undefined) return [slice.area];
  const ours = addressesIn(slice.area).filter(isAsWritten(slice, now));
  return ours.length === cellCount(slice.area)
    ? [slice.area]
    : ours.map((address) => ({ from: address, to: address }));
};

const queueRestore = (sheet: Excel.Worksheet, target: PatchTarget, area: Area): void => {
  const range = rangeOf(sheet, area);
  range.formulas = rowsIn(target.formulas, area);
  if (target.isUnformatted) range.clear("Formats");
  else range.numberFormat = rowsIn(target.numberFormats, area);
};

/** Restores what was written, except cells that a person has changed since. */
export const restoreTarget = (
  excel: ExcelEntry,
  target: PatchTarget,
  written: readonly WrittenSlice[],
): Promise<void> =>
  excel.run(async (context) => {
    const { workbook } = context;
    const { table } = target.patch;
    const sheet = workbook.worksheets.getItem(target.sheetId);
    // The table grew with the last slice.
    if (table && written.at(-1)?.area.to.row === target.area.to.row)
      workbook.tables.getItem(table.name).resize(rangeOf(sheet, table.area));
    for (const slice of written) {
      const now = rangeOf(sheet, slice.area);
      now.load("formulas");
      workbook.application.suspendScreenUpdatingUntilNextSync();
      // Carries out the slice before, too.
      await context.sync();
      for (const area of areasToRestore(slice, now)) queueRestore(sheet, target, area);
    }
    await context.sync();
  });

const refuseChangedCells = async (
  context: Excel.RequestContext,
  { sheetId }: PatchTarget,
  written: readonly WrittenSlice[],
  { onProgress, signal }: ProgressMonitor,
): Promise<void> => {
  const sheet = context.workbook.worksheets.getItem(sheetId);
  sheet.load("name");
  const changed: SheetCellAddress[] = [];
  for (const [index, slice] of written.entries()) {
    const now = rangeOf(sheet, slice.area);
    now.load("formulas");
    await context.sync();
    signal.throwIfAborted();
    const isOurs = isAsWritten(slice, now);
    for (const address of addressesIn(slice.area))
      if (!isOurs(address)) changed.push({ ...address, sheet: sheet.name });
    onProgress((index + 1) / written.length);
  }
  refuseChanged(changed);
};

/** Rows that a person has added to the table since would be cut off. */
const refuseChangedTable = async (
  context: Excel.RequestContext,
  target: PatchTarget,
  { name, area }: Pick<SpreadsheetTable, "name" | "area">,
): Promise<void> => {
  const range = context.workbook.tables.getItem(name).getRange();
  range.load(PLACE_AND_SIZE);
  await context.sync();
  if (areaAddress(areaOf(range)) !== areaAddress(grownTable(area, target)))
    throw new InputError(`The table ${name} has changed since; nothing was undone.`);
};

/** Refuses where a person has changed what was written. A formula stays the same whatever it shows, so a difference is an edit. */
export const refuseEdits = (
  excel: ExcelEntry,
  target: PatchTarget,
  written: readonly WrittenSlice[],
  run: ProgressMonitor,
): Promise<void> =>
  excel.run(async (context) => {
    await refuseChangedCells(context, target, written, run);
    if (target.patch.table) await refuseChangedTable(context, target, target.patch.table);
  });
