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

/** Adds a plan's sheets and names to the open workbook: all of them, or none if one fails. */
export const addSheets = async (
  injector: Injector,
  workbook: Workbook,
  plan: WorkbookPlan,
): Promise<Undo> => {
  const commands = injector.get(ICommandService);
  const unitId = workbook.getUnitId();
  const undos: (() => Promise<unknown>)[] = [];

  const run = async (
    command: { id: string },
    params: object,
    undo?: () => Promise<unknown>,
  ): Promise<void> => {
    if (!(await commands.executeCommand(command.id, params)))
      throw new Error("The workbook rejected the sheet. Nothing was added.");
    if (undo) undos.push(undo);
  };

  const undoAll = async (): Promise<void> => {
    for (const undo of undos.reverse()) await undo();
  };

  const stamp = Date.now().toString(36);
  const ids = plan.sheets.map((_, index) => `sheet-${stamp}-${index}`);

  // The whole build is one Undo step.
  const batch = injector.get(IUndoRedoService).__tempBatchingUndoRedo(unitId);
  try {
    // Names come first: a formula with a name that doesn't exist yet would show #NAME?.
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
      // A mutation, not a command: Undo of the command would remove rules from a sheet that is already deleted.
      for (const rule of dropDownRules(sheetPlan))
        await run(AddDataValidationMutation, { unitId, subUnitId, rule, source: "command" });
    }
    await run(SetWorksheetActivateCommand, { unitId, subUnitId: ids[0] });
  } catch (failure) {
    await undoAll();
    throw failure;
  } finally {
    batch.dispose();
  }

  const built = readEnteredContents(injector, workbook);
  return async () => {
    const now = readEnteredContents(injector, workbook);
    refuseUndoAfterEdits(plan, built, now);
    refuseUndoOfLastSheets(plan, now.sheets.keys());
    // Undoing the build is one Undo step too.
    const undoing = injector.get(IUndoRedoService).__tempBatchingUndoRedo(unitId);
    try {
      await undoAll();
    } finally {
      undoing.dispose();
    }
  };
};
