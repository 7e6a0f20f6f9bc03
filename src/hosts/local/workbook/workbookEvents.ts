import {
  ICommandService,
  IUndoRedoService,
  type Injector,
  type Workbook,
  type Worksheet,
} from "@univerjs/core";
import {
  SetRangeValuesMutation,
  SetWorksheetActiveOperation,
  SetWorksheetNameMutation,
  SheetsSelectionsService,
} from "@univerjs/sheets";
import { FormulaCalculationSessionService } from "@univerjs/sheets-formula";
import type { CellAddress } from "../../../workbook/address";
import { lastEdit } from "./lastEdit";
import type { ShownCell } from "./shownCell";

export type StopListening = () => void;

export interface WorkbookEvents {
  /** Reports the active cell now, and each time the selection settles. */
  onSelection(listener: (cell: ShownCell) => void): StopListening;
  /** Fires after cells change, by an edit or by a calculation. */
  onChange(listener: () => void): StopListening;
  /** Fires after each edit, Undo and Redo, whatever it changed. */
  onEdited(listener: () => void): StopListening;
  /** Fires after each calculation, when its results are in the cells. */
  onCalculated(listener: () => void): StopListening;
}

export const workbookEvents = (
  injector: Injector,
  workbook: Workbook,
  shownAt: (sheet: Worksheet, address: CellAddress) => ShownCell,
): WorkbookEvents => {
  const commands = injector.get(ICommandService);
  return {
    onSelection: (listener) => {
      const selections = injector.get(SheetsSelectionsService);
      const report = (): void => {
        // A sheet that becomes active for the first time has no selection yet: its first cell is active.
        const active = selections.getCurrentSelections().at(-1)?.primary;
        const address = { row: active?.actualRow ?? 0, column: active?.actualColumn ?? 0 };
        listener(shownAt(workbook.getActiveSheet(), address));
      };
      report();
      const subscription = selections.selectionChanged$.subscribe(report);
      // The selection stays the same when another sheet becomes active or the sheet is renamed.
      const sheets = commands.onCommandExecuted(({ id }) => {
        if (id === SetWorksheetActiveOperation.id || id === SetWorksheetNameMutation.id) report();
      });
      return () => {
        subscription.unsubscribe();
        sheets.dispose();
      };
    },
    onChange: (listener) => {
      const subscription = commands.onCommandExecuted(({ id }) => {
        if (id === SetRangeValuesMutation.id) listener();
      });
      return () => {
        subscription.dispose();
      };
    },
    onEdited: (listener) => {
      let last = lastEdit(injector, workbook);
      const subscription = injector.get(IUndoRedoService).undoRedoStatus$.subscribe(() => {
        const now = lastEdit(injector, workbook);
        if (now === last) return;
        last = now;
        listener();
      });
      return () => subscription.unsubscribe();
    },
    onCalculated: (listener) => {
      const { resultApplied$ } = injector.get(FormulaCalculationSessionService);
      const subscription = resultApplied$.subscribe(() => listener());
      return () => subscription.unsubscribe();
    },
  };
};
