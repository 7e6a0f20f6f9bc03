import { awaitTime, ICommandService, type Injector } from "@univerjs/core";
import { DeviceInputEventType } from "@univerjs/engine-render";
import { FormulaCalculationSessionService } from "@univerjs/sheets-formula";
import { IEditorBridgeService, SetCellEditVisibleOperation } from "@univerjs/sheets-ui";
import { KeyCode } from "@univerjs/ui";
import { firstValueFrom, race, timer } from "rxjs";

/** A value that no formula reads starts no calculation; one that some read has its results sooner than this. */
const LONGEST_WAIT_MS = 2000;

/**
 * Takes what is being typed into a cell, as Enter would: a button of the pane may be pressed while the cell is still open,
 * and what stands in it must not be lost. Resolves when its results are there.
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
