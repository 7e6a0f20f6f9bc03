import type { ICommandService, Workbook, Worksheet } from "@univerjs/core";
import { SetWorksheetActiveOperation } from "@univerjs/sheets";

/**
 * Shows a sheet's own name on its tab again after a new name was typed there and rejected. The engine leaves the rejected name on the
 * tab, and the tabs ignore clicks until they are drawn again, which happens when a sheet becomes active.
 */
export const restoreTabName = (commands: ICommandService, workbook: Workbook, sheet: Worksheet): void => {
  const tab = document.querySelector(`[data-u-comp=slide-tab-item][data-id="${sheet.getSheetId()}"] span`);
  if (tab) tab.textContent = sheet.getName();
  const active = { unitId: workbook.getUnitId(), subUnitId: workbook.getActiveSheet().getSheetId() };
  commands.syncExecuteCommand(SetWorksheetActiveOperation.id, active);
};
