import type { CellPatch, Undo } from "../../../workbook/patch";
import { NO_MONITOR, type ProgressMonitor } from "../../../workbook/progressMonitor";
import type { ExcelEntry } from "../ranges/excelEntry";
import { allOrNothing } from "./allOrNothing";
import { readTarget, type PatchTarget } from "./patchTarget";
import { refuseEdits, restoreTarget } from "./restoreTarget";
import { writePatch, type WrittenSlice } from "./writePatch";

/** The target as it is written again: whatever is in its cells by now is ours. */
const overwritten = (target: PatchTarget): PatchTarget => ({
  ...target,
  patch: { ...target.patch, mayReplace: () => true },
});

/** Writes into blank cells of a sheet: all of them or none. Returns how to undo it. */
export const putCells = async (
  excel: ExcelEntry,
  patch: CellPatch,
  run: ProgressMonitor = NO_MONITOR,
): Promise<Undo> => {
  const target = await readTarget(excel, patch);
  let written: WrittenSlice[] = [];
  const restore = (): Promise<void> => restoreTarget(excel, target, written);
  await allOrNothing(() => writePatch(excel, target, written, run), restore);
  return async (undoRun = NO_MONITOR) => {
    await refuseEdits(excel, target, written, undoRun);
    await allOrNothing(restore, async () => {
      written = [];
      await writePatch(excel, overwritten(target), written, NO_MONITOR);
    });
  };
};
