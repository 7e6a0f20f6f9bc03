import {
  CustomCommandExecutionError,
  ICommandService,
  type Injector,
  type Workbook,
  type Worksheet,
} from "@univerjs/core";
import { a1, type CellAddress } from "../../../workbook/address";
import { sheetChangesOf, type SheetChange } from "../cells/sheetChanges";
import { fileMetadataOf } from "../engine/fileMetadata";
import { hasProtection, isProtectedByPlan } from "../engine/protection";

/** Whether the file lets a cell be changed though its sheet is protected; a cell without a look has its row's or column's. */
const isUnlocked = (sheet: Worksheet, { row, column }: CellAddress): boolean => {
  const { rowData, columnData } = sheet.getConfig();
  const style = sheet.getCellRaw(row, column)?.s ?? rowData[row]?.s ?? columnData[column]?.s;
  return typeof style === "string" && fileMetadataOf(sheet).unlockedStyles.includes(style);
};

/** What a protected sheet keeps from a change, in words; undefined where the change goes by it. */
const reasonToRefuse = (sheet: Worksheet, { kind, cells }: SheetChange): string | undefined => {
  if (kind === "moves") return "nothing was moved";
  if (!cells) return "no look was changed";
  const locked = cells.find((cell) => !isUnlocked(sheet, cell));
  return locked && `${a1(locked)} wasn't changed`;
};

/** Stops what a person does by hand to a sheet that a plan or its file protects, and says so; results of formulas go on. */
export const protectSheets = (
  injector: Injector,
  workbook: Workbook,
  tell: (message: string) => void,
): void => {
  injector.get(ICommandService).beforeCommandExecuted(({ id, params }, options) => {
    // Results that a calculation puts into cells are marked as local.
    if (options?.onlyLocal) return;
    for (const change of sheetChangesOf(id, params)) {
      const sheet = workbook.getSheetBySheetId(change.sheetId);
      const stays = sheet && hasProtection(sheet) && reasonToRefuse(sheet, change);
      if (!stays) continue;
      const name = sheet.getName();
      tell(
        isProtectedByPlan(sheet)
          ? `"${name}" is protected: ${stays}.`
          : `"${name}" is protected in its file: ${stays}. Take the protection off in Excel first.`,
      );
      // The engine takes this error for "no", without a word of its own.
      throw new CustomCommandExecutionError(`${name} is protected.`);
    }
  });
};
