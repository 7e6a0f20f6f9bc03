import {
  CustomCommandExecutionError,
  ICommandService,
  IUndoRedoService,
  RedoCommand,
  UndoCommand,
  type IMutationInfo,
  type Injector,
  type Workbook,
  type Worksheet,
} from "@univerjs/core";
import { RemoveSheetMutation, SetWorksheetNameCommand } from "@univerjs/sheets";
import type { CellAddress } from "../../../workbook/address";
import { issueSealAddress } from "../../../sheets/changeOrder/seals";
import type { SheetContents } from "../../../workbook/contents";
import { sealedAs } from "../../../sheets/sealCheck/sealedSheets";
import { sheetChangesOf } from "../cells/sheetChanges";
import { readSheetContents } from "../cells/contents";
import type { ReadCell } from "../cells/readSheet";

interface SealedSheetOptions {
  /** The command that a person deletes a sheet with. Our own Undo deletes sheets without it. */
  readonly deletionId: string;
  /** The command that opens a sheet's tab for renaming. */
  readonly renameId: string;
  /** Shows the sheet's own name on its tab again after another was typed there. */
  readonly restoreTabName: (sheet: Worksheet) => void;
  readonly read: ReadCell;
  readonly tell: (message: string) => void;
}

const sheetIdOf = ({ params = {} }: { readonly params?: object }): string =>
  (params as { readonly subUnitId?: string }).subUnitId ?? "";

/**
 * Other sheets rely on a sheet that was signed or issued, and nobody can make it again. So it can't be deleted or renamed, nor undone
 * by the workbook's own Undo, which gives no warning. The Undo of the card that made it names what it removes.
 */
export const protectSealedSheets = (
  injector: Injector,
  workbook: Workbook,
  { deletionId, renameId, restoreTabName, read, tell }: SealedSheetOptions,
): void => {
  const stop = (message: string): never => {
    tell(message);
    // The engine cancels a command on this error and shows nothing.
    throw new CustomCommandExecutionError(message);
  };

  const contentsOf = (sheet: Worksheet): SheetContents => readSheetContents(injector, sheet, read);

  const stopDeletion = (sheet: Worksheet): void => {
    const sealed = sealedAs(contentsOf(sheet));
    if (sealed) stop(`"${sheet.getName()}" is ${sealed}, so it wasn't deleted. You can hide it instead.`);
  };

  const stopRenaming = (sheet: Worksheet): void => {
    const sealed = sealedAs(contentsOf(sheet));
    if (!sealed) return;
    restoreTabName(sheet);
    stop(`"${sheet.getName()}" is ${sealed}, so it keeps its name: other sheets refer to it by name.`);
  };

  const sheetOf = (command: { readonly params?: object }): Worksheet =>
    workbook.getSheetBySheetId(sheetIdOf(command)) ?? workbook.getActiveSheet();

  /** What these steps on one sheet would remove of a sealed sheet, as text. */
  const lostOf = (sheet: Worksheet, steps: readonly IMutationInfo[]): string | undefined => {
    const contents = contentsOf(sheet);
    const sealed = sealedAs(contents);
    if (!sealed) return undefined;
    if (steps.some(({ id }) => id === RemoveSheetMutation.id))
      return `"${sheet.getName()}", which is ${sealed}`;
    const seal = sealed === "issued" ? issueSealAddress({ contents }) : undefined;
    const isSeal = ({ row, column }: CellAddress): boolean => row === seal?.row && column === seal.column;
    const changesSeal = steps
      .flatMap(({ id, params }) => sheetChangesOf(id, params))
      .some(({ kind, cells = [] }) => kind === "values" && cells.some(isSeal));
    return changesSeal ? `the seal of "${sheet.getName()}", which is issued` : undefined;
  };

  const stopSteps = (steps: readonly IMutationInfo[] = []): void => {
    for (const sheetId of new Set(steps.map(sheetIdOf))) {
      const sheet = workbook.getSheetBySheetId(sheetId);
      const lost =
        sheet &&
        lostOf(
          sheet,
          steps.filter((step) => sheetIdOf(step) === sheetId),
        );
      if (lost !== undefined)
        stop(
          `That would remove ${lost}. Nothing was changed. If it was made by mistake, use Undo on the card that made it.`,
        );
    }
  };

  const undoRedo = injector.get(IUndoRedoService);
  injector.get(ICommandService).beforeCommandExecuted((command) => {
    if (command.id === deletionId) stopDeletion(sheetOf(command));
    if ([renameId, SetWorksheetNameCommand.id].includes(command.id)) stopRenaming(sheetOf(command));
    if (command.id === UndoCommand.id) stopSteps(undoRedo.pitchTopUndoElement()?.undoMutations);
    if (command.id === RedoCommand.id) stopSteps(undoRedo.pitchTopRedoElement()?.redoMutations);
  });
};
