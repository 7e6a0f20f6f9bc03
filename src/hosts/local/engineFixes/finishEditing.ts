import { awaitTime, ICommandService, type Injector } from "@univerjs/core";
import { DeviceInputEventType } from "@univerjs/engine-render";
import { FormulaCalculationSessionService } from "@univerjs/sheets-formula";
import { IEditorBridgeService, SetCellEditVisibleOperation } from "@univerjs/sheets-ui";
import { KeyCode } from "@univerjs/ui";
import { firstValueFrom, race, timer } from "rxjs";

/** A value that no formula reads starts no calculation. Any other gives its results sooner than this. */
const LONGEST_WAIT_MS = 2000;

/**
 * Commits the cell that is being edited, as Enter does. The engine leaves the cell open when someone clicks a button of the pane,
 * which would lose what was typed. Resolves when the new value has been calculated.
 */
export const finishEditing = async (injector: Injector, unitId: string): Promise<void> => {
  if (!injector.get(IEditorBridgeService).isVisible().visible) return;
  const calculated = firstValueFrom(
    race(injector.get(FormulaCalculationSessionService).resultApplied$, timer(LONGEST_WAIT_MS)),
  );
  injector.get(ICommandService).syncExecuteCommand(SetCellEditVisibleOperation.id, {
    visible: false,
    eventType: DeviceInputEventType.Keyboard,
    keycode: KeyCode.ENTER,
    unitId,
  });
  await awaitTime(0);
  await calculated;
};
