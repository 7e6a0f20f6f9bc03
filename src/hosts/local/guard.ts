import { CustomCommandExecutionError, ICommandService, type Injector, type Workbook } from "@univerjs/core";
import { SetRangeValuesMutation, type ISetRangeValuesMutationParams } from "@univerjs/sheets";
import { isMove, movedSheetIdsOf } from "./moves";
import { isProtectedHere } from "./protection";

const changedSheetIds = (id: string, params: object | undefined): readonly (string | undefined)[] => {
  if (id === SetRangeValuesMutation.id) return [(params as ISetRangeValuesMutationParams).subUnitId];
  return isMove(id) ? movedSheetIdsOf(params) : [];
};

/** Refuses what would change a sheet that a plan protects. Results that a calculation puts there are marked as local. */
export const guardProtected = (injector: Injector, workbook: Workbook): void => {
  injector.get(ICommandService).beforeCommandExecuted(({ id, params }, options) => {
    if (options?.onlyLocal) return;
    for (const sheetId of changedSheetIds(id, params)) {
      const sheet = sheetId === undefined ? undefined : workbook.getSheetBySheetId(sheetId);
      if (sheet && isProtectedHere(sheet))
        throw new CustomCommandExecutionError(`"${sheet.getName()}" is protected. Nothing was written.`);
    }
  });
};
