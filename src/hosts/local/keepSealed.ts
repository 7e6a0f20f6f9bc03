import { CustomCommandExecutionError, ICommandService, type Injector, type Workbook } from "@univerjs/core";
import { sealedAs } from "../../sheets/sealedSheets";
import { readSheetContents } from "./contents";
import type { ReadCell } from "./readSheet";

interface Keeping {
  /** The command by which a person asks that a sheet be deleted; our own Undo takes sheets away without it. */
  readonly commandId: string;
  readonly read: ReadCell;
  readonly tell: (sentence: string) => void;
}

/** Other sheets go by what was signed or issued, and no one can make it again: it isn't deleted by hand. */
export const keepSealedSheets = (
  injector: Injector,
  workbook: Workbook,
  { commandId, read, tell }: Keeping,
): void => {
  injector.get(ICommandService).beforeCommandExecuted(({ id, params }) => {
    if (id !== commandId) return;
    const { subUnitId = "" } = (params ?? {}) as { readonly subUnitId?: string };
    const sheet = workbook.getSheetBySheetId(subUnitId) ?? workbook.getActiveSheet();
    const sealed = sealedAs(readSheetContents(injector, sheet, read));
    if (!sealed) return;
    tell(`"${sheet.getName()}" is ${sealed}: it wasn't deleted. Hide it where it is in the way.`);
    // The engine takes this error for "no", without a word of its own.
    throw new CustomCommandExecutionError(`${sheet.getName()} is ${sealed}.`);
  });
};
