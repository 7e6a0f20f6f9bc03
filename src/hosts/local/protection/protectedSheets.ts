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

/** Whether the file leaves a cell of a protected sheet unlocked. A cell without a style has its row's or column's. */
const isUnlocked = (sheet: Worksheet, { row, column }: CellAddress): boolean => {
  const { rowData, columnData } = sheet.getConfig();
  const style = sheet.getCellRaw(row, column)?.s ?? rowData[row]?.s ?? columnData[column]?.s;
  return typeof style === "string" && fileMetadataOf(sheet).unlockedStyles.includes(style);
};

/** What a protected sheet doesn't let a change do, as text; undefined if the change is allowed. */
const refusedChange = (sheet: Worksheet, { kind, cells }: SheetChange): string | undefined => {
  if (kind === "structure") return "nothing was moved";
  if (!cells) return "no format was changed";
  const locked = cells.find((cell) => !isUnlocked(sheet, cell));
  return locked && `${a1(locked)} wasn't changed`;
};

/** Stops edits of a sheet that a plan or its file protects, with a message. Formulas on it are still calculated. */
export const protectSheets = (
  injector: Injector,
  workbook: Workbook,
  tell: (message: string) => void,
): void => {
  injector.get(ICommandService).beforeCommandExecuted(({ id, params }, options) => {
    // The engine marks the results of a calculation as local.
    if (options?.onlyLocal) return;
    for (const change of sheetChangesOf(id, params)) {
      const sheet = workbook.getSheetBySheetId(change.sheetId);
      const refused = sheet && hasProtection(sheet) && refusedChange(sheet, change);
      if (!refused) continue;
      const name = sheet.getName();
      tell(
        isProtectedByPlan(sheet)
          ? `"${name}" is protected: ${refused}.`
          : `"${name}" is protected in its file: ${refused}. Remove the protection in Excel first.`,
      );
      // The engine cancels a command on this error and shows nothing.
      throw new CustomCommandExecutionError(`${name} is protected.`);
    }
  });
};
