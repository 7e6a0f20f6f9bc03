import {
  BooleanNumber,
  ICommandService,
  type IMutationInfo,
  type Injector,
  type Workbook,
  type Worksheet,
} from "@univerjs/core";
import {
  RemoveSheetCommand,
  RemoveSheetMutation,
  SetRangeValuesMutation,
  SetWorksheetActiveOperation,
  SheetInterceptorService,
  type IRemoveSheetCommandParams,
  type IRemoveSheetMutationParams,
  type ISetRangeValuesMutationParams,
} from "@univerjs/sheets";

/** The next sheet that is shown, or the last one before. */
const neighborOf = (workbook: Workbook, sheetId: string): Worksheet | undefined => {
  const sheets = workbook.getSheets();
  const at = sheets.findIndex((sheet) => sheet.getSheetId() === sheetId);
  const isShown = (sheet: Worksheet): boolean => sheet.isSheetHidden() !== BooleanNumber.TRUE;
  return sheets.slice(at + 1).find(isShown) ?? sheets.slice(0, Math.max(0, at)).findLast(isShown);
};

/**
 * The engine lets formulas follow on the very sheet that was taken away, such as one by its own name, fails, and leaves it at that:
 * the formulas that read the sheet don't follow, and Undo never hears of it. So there is nothing to follow on that sheet.
 */
const skipFormulasOnDeletedSheet = (injector: Injector): void => {
  const service = injector.get(SheetInterceptorService);
  const mutationsOf = service.onCommandExecute.bind(service);
  service.onCommandExecute = (command) => {
    const mutations = mutationsOf(command);
    if (command.id !== RemoveSheetCommand.id) return mutations;
    const { subUnitId } = command.params as IRemoveSheetCommandParams;
    const isItsOwn = ({ id, params }: IMutationInfo): boolean =>
      id === SetRangeValuesMutation.id && (params as ISetRangeValuesMutationParams).subUnitId === subUnitId;
    return { ...mutations, redos: mutations.redos.filter((redo) => !isItsOwn(redo)) };
  };
};

/**
 * The engine measures the sheet in front at every change of a cell, and throws where that sheet has just been taken away: the
 * formulas that read it are blank from then on, and Undo never hears of it. So another sheet comes to the front first.
 */
const activateAnotherSheetFirst = (injector: Injector, workbook: Workbook): void => {
  const commands = injector.get(ICommandService);
  commands.beforeCommandExecuted(({ id, params }) => {
    if (id !== RemoveSheetMutation.id) return;
    const { unitId, subUnitId } = params as IRemoveSheetMutationParams;
    if (workbook.getActiveSheet().getSheetId() !== subUnitId) return;
    const next = neighborOf(workbook, subUnitId);
    if (next)
      commands.syncExecuteCommand(SetWorksheetActiveOperation.id, { unitId, subUnitId: next.getSheetId() });
  });
};

/** Lets the engine take a sheet away to the end, whatever is on it and wherever it is. */
export const deleteSheetsCompletely = (injector: Injector, workbook: Workbook): void => {
  skipFormulasOnDeletedSheet(injector);
  activateAnotherSheetFirst(injector, workbook);
};
