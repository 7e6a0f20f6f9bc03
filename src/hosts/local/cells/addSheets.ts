import {
  ICommandService,
  IUndoRedoService,
  type Injector,
  type Workbook,
  type IWorksheetData,
} from "@univerjs/core";
import {
  InsertDefinedNameCommand,
  InsertSheetCommand,
  RemoveDefinedNameCommand,
  RemoveSheetCommand,
  SetWorksheetActivateCommand,
} from "@univerjs/sheets";
import { AddDataValidationMutation } from "@univerjs/data-validation";
import { refuseUndoAfterEdits, refuseUndoOfLastSheets } from "../../../workbook/undoAddedSheets";
import type { Undo } from "../../../workbook/patch";
import type { WorkbookPlan } from "../../../workbook/plan";
import { dropDownRules } from "../engine/dropDowns";
import { nameTarget, sheetData } from "../engine/planSnapshot";
import { readEnteredContents } from "./enteredContents";

/** Adds a plan's sheets and names to a workbook that is open: all of them, or none where one of them fails. */
export const addSheets = async (
  injector: Injector,
  workbook: Workbook,
  plan: WorkbookPlan,
): Promise<Undo> => {
  const commands = injector.get(ICommandService);
  const unitId = workbook.getUnitId();
  const done: (() => Promise<unknown>)[] = [];

  const run = async (
    command: { id: string },
    params: object,
    takeBack?: () => Promise<unknown>,
  ): Promise<void> => {
    if (!(await commands.executeCommand(command.id, params)))
      throw new Error("The workbook didn't take the sheet; nothing was added.");
    if (takeBack) done.push(takeBack);
  };

  const takeAway = async (): Promise<void> => {
    for (const takeBack of done.reverse()) await takeBack();
  };

  const stamp = Date.now().toString(36);
  const ids = plan.sheets.map((_, index) => `sheet-${stamp}-${index}`);

  // One build is one step for Undo.
  const batch = injector.get(IUndoRedoService).__tempBatchingUndoRedo(unitId);
  try {
    // Names first: a formula that calls on a name which isn't there yet would show #NAME?.
    for (const each of plan.names) {
      const name = {
        unitId,
        id: `${each.name}-${stamp}`,
        name: each.name,
        formulaOrRefString: nameTarget(each),
      };
      await run(InsertDefinedNameCommand, name, () =>
        commands.executeCommand(RemoveDefinedNameCommand.id, name),
      );
    }
    for (const [index, sheetPlan] of plan.sheets.entries()) {
      const subUnitId = ids[index] ?? "";
      const sheet = sheetData(subUnitId, sheetPlan) as IWorksheetData;
      await run(InsertSheetCommand, { unitId, sheet }, () =>
        commands.executeCommand(RemoveSheetCommand.id, { unitId, subUnitId }),
      );
      // Not as a command: Undo would take the rules off a sheet that is gone already.
      for (const rule of dropDownRules(sheetPlan))
        await run(AddDataValidationMutation, { unitId, subUnitId, rule, source: "command" });
    }
    await run(SetWorksheetActivateCommand, { unitId, subUnitId: ids[0] });
  } catch (failure) {
    await takeAway();
    throw failure;
  } finally {
    batch.dispose();
  }

  const built = readEnteredContents(injector, workbook);
  return async () => {
    const now = readEnteredContents(injector, workbook);
    refuseUndoAfterEdits(plan, built, now);
    refuseUndoOfLastSheets(plan, now.sheets.keys());
    // Taking away is one step for Undo too.
    const undoing = injector.get(IUndoRedoService).__tempBatchingUndoRedo(unitId);
    try {
      await takeAway();
    } finally {
      undoing.dispose();
    }
  };
};
