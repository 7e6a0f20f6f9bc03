import type { ICommandService, Workbook, Worksheet } from "@univerjs/core";
import { SetWorksheetActiveOperation } from "@univerjs/sheets";

/**
 * Shows a sheet's name on its tab again, where another was typed that wasn't taken. The engine leaves what was typed there, and the
 * tabs take no click until they are drawn again, which they are when a sheet comes to the front.
 */
export const restoreTabName = (commands: ICommandService, workbook: Workbook, sheet: Worksheet): void => {
  const tab = document.querySelector(`[data-u-comp=slide-tab-item][data-id="${sheet.getSheetId()}"] span`);
  if (tab) tab.textContent = sheet.getName();
  const inFront = { unitId: workbook.getUnitId(), subUnitId: workbook.getActiveSheet().getSheetId() };
  commands.syncExecuteCommand(SetWorksheetActiveOperation.id, inFront);
};
