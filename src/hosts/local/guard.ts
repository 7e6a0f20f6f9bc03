import { CustomCommandExecutionError, ICommandService, type Injector, type Workbook } from "@univerjs/core";
import {
  InsertColMutation,
  InsertRowMutation,
  MoveColsMutation,
  MoveRangeMutation,
  MoveRowsMutation,
  RemoveColMutation,
  RemoveRowMutation,
  ReorderRangeMutation,
  SetRangeValuesMutation,
} from "@univerjs/sheets";
import { isProtectedHere } from "./protection";

/** Whatever changes cells or their places. */
const CHANGES = new Set([
  SetRangeValuesMutation.id,
  InsertRowMutation.id,
  RemoveRowMutation.id,
  InsertColMutation.id,
  RemoveColMutation.id,
  MoveRowsMutation.id,
  MoveColsMutation.id,
  MoveRangeMutation.id,
  ReorderRangeMutation.id,
]);

interface ChangeParams {
  readonly subUnitId?: string;
  readonly from?: { readonly subUnitId: string };
  readonly to?: { readonly subUnitId: string };
}

/** Refuses what would change a sheet that a plan protects. Results that a calculation puts there are marked as local. */
export const guardProtected = (injector: Injector, workbook: Workbook): void => {
  injector.get(ICommandService).beforeCommandExecuted(({ id, params }, options) => {
    if (!CHANGES.has(id) || options?.onlyLocal) return;
    const { subUnitId, from, to } = (params ?? {}) as ChangeParams;
    for (const sheetId of [subUnitId, from?.subUnitId, to?.subUnitId]) {
      const sheet = sheetId === undefined ? undefined : workbook.getSheetBySheetId(sheetId);
      if (sheet && isProtectedHere(sheet))
        throw new CustomCommandExecutionError(`"${sheet.getName()}" is protected. Nothing was written.`);
    }
  });
};
