import {
  CustomCommandExecutionError,
  type ICommandService,
  type IExecutionOptions,
  type Worksheet,
} from "@univerjs/core";
import { RemoveSheetMutation } from "@univerjs/sheets";
import type { Area } from "../../../workbook/address";
import { sheetChangesOf } from "./sheetChanges";

/** Marks the steps of our own write, which the lock lets through. */
export const OWN_WRITE: IExecutionOptions = { isOurs: true };

/**
 * Locks cells against edits while they are written piece by piece; otherwise Undo couldn't restore them exactly. Other cells can
 * still be edited. Returns the function that unlocks them.
 */
export const lockCells = (
  commands: ICommandService,
  sheet: Worksheet,
  { from, to }: Area,
  tell: (message: string) => void,
): (() => void) => {
  const sheetId = sheet.getSheetId();
  const isLocked = (row: number, column: number): boolean =>
    row >= from.row && row <= to.row && column >= from.column && column <= to.column;
  const listener = commands.beforeCommandExecuted(({ id, params }, options) => {
    if (options?.onlyLocal || options?.["isOurs"]) return;
    const isRemoved =
      id === RemoveSheetMutation.id && (params as { subUnitId?: string }).subUnitId === sheetId;
    const isChanged = sheetChangesOf(id, params).some(
      (change) =>
        change.sheetId === sheetId &&
        (change.cells?.some(({ row, column }) => isLocked(row, column)) ?? true),
    );
    if (!isRemoved && !isChanged) return;
    tell(`"${sheet.getName()}" is being written to. Wait until that finishes, or cancel it.`);
    // The engine cancels a command on this error and shows nothing.
    throw new CustomCommandExecutionError(`${sheet.getName()} is being written to.`);
  });
  return () => {
    listener.dispose();
  };
};
