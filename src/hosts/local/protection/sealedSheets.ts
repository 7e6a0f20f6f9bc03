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
  /** The command by which a person asks that a sheet be deleted; our own Undo takes sheets away without it. */
  readonly deletionId: string;
  /** The command that opens a sheet's tab for another name. */
  readonly renameId: string;
  /** Shows on a sheet's tab the name that it keeps, after another was typed there. */
  readonly restoreTabName: (sheet: Worksheet) => void;
  readonly read: ReadCell;
  readonly tell: (message: string) => void;
}

const sheetIdOf = ({ params = {} }: { readonly params?: object }): string =>
  (params as { readonly subUnitId?: string }).subUnitId ?? "";

/**
 * Other sheets go by what was signed or issued, and no one can make it again: it isn't deleted or renamed by hand, nor taken back by
 * the workbook's own Undo, which goes from step to step without a word. The Undo of the card that made it names what it takes back.
 */
export const protectSealedSheets = (
  injector: Injector,
  workbook: Workbook,
  { deletionId, renameId, restoreTabName, read, tell }: SealedSheetOptions,
): void => {
  const stop = (message: string): never => {
    tell(message);
    // The engine takes this error for "no", without a word of its own.
    throw new CustomCommandExecutionError(message);
  };

  const contentsOf = (sheet: Worksheet): SheetContents => readSheetContents(injector, sheet, read);

  const stopDeletion = (sheet: Worksheet): void => {
    const sealed = sealedAs(contentsOf(sheet));
    if (sealed) stop(`"${sheet.getName()}" is ${sealed}: it wasn't deleted. Hide it where it is in the way.`);
  };

  const stopRenaming = (sheet: Worksheet): void => {
    const sealed = sealedAs(contentsOf(sheet));
    if (!sealed) return;
    restoreTabName(sheet);
    stop(`"${sheet.getName()}" is ${sealed} and keeps its name, by which other sheets speak of it.`);
  };

  const named = (command: { readonly params?: object }): Worksheet =>
    workbook.getSheetBySheetId(sheetIdOf(command)) ?? workbook.getActiveSheet();

  /** What steps that change one sheet would take away of what is sealed, in words. */
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
    return changesSeal ? `the seal under which "${sheet.getName()}" is issued` : undefined;
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
          `That would take away ${lost}: nothing was changed. If it was made by mistake, the card that made it has Undo.`,
        );
    }
  };

  const undoRedo = injector.get(IUndoRedoService);
  injector.get(ICommandService).beforeCommandExecuted((command) => {
    if (command.id === deletionId) stopDeletion(named(command));
    if ([renameId, SetWorksheetNameCommand.id].includes(command.id)) stopRenaming(named(command));
    if (command.id === UndoCommand.id) stopSteps(undoRedo.pitchTopUndoElement()?.undoMutations);
    if (command.id === RedoCommand.id) stopSteps(undoRedo.pitchTopRedoElement()?.redoMutations);
  });
};
