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

/** The next visible sheet, or else the last visible one before. */
const neighborOf = (workbook: Workbook, sheetId: string): Worksheet | undefined => {
  const sheets = workbook.getSheets();
  const at = sheets.findIndex((sheet) => sheet.getSheetId() === sheetId);
  const isShown = (sheet: Worksheet): boolean => sheet.isSheetHidden() !== BooleanNumber.TRUE;
  return sheets.slice(at + 1).find(isShown) ?? sheets.slice(0, Math.max(0, at)).findLast(isShown);
};

/**
 * The engine also updates formulas on the deleted sheet itself, such as one that refers to its own sheet by name. That fails, and the
 * deletion stops halfway: formulas on other sheets that read the deleted one keep their results, and Undo has no step for it. With
 * the fix, formulas on the deleted sheet aren't updated.
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
 * The engine measures the active sheet at every change of a cell, and throws if that sheet has just been deleted: the formulas that
 * read it become blank, and Undo has no step for it. With the fix, another sheet becomes active first.
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

/** Lets the engine finish deleting a sheet that is active or that refers to itself. */
export const deleteSheetsCompletely = (injector: Injector, workbook: Workbook): void => {
  skipFormulasOnDeletedSheet(injector);
  activateAnotherSheetFirst(injector, workbook);
};
