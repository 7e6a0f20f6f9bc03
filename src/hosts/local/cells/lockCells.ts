import {
  CustomCommandExecutionError,
  type ICommandService,
  type IExecutionOptions,
  type Worksheet,
} from "@univerjs/core";
import { RemoveSheetMutation } from "@univerjs/sheets";
import type { Area } from "../../../workbook/address";
import { sheetChangesOf } from "./sheetChanges";

/** Marks our own steps of a write that goes on. */
export const OWN_WRITE: IExecutionOptions = { isOurs: true };

/**
 * Keeps cells from being changed or moved by anybody else while they are written piece by piece: else the write couldn't be
 * taken back exactly. Other cells take what is typed. Returns how to let go.
 */
export const lockCells = (
  commands: ICommandService,
  sheet: Worksheet,
  { from, to }: Area,
  tell: (message: string) => void,
): (() => void) => {
  const sheetId = sheet.getSheetId();
  const isHeld = (row: number, column: number): boolean =>
    row >= from.row && row <= to.row && column >= from.column && column <= to.column;
  const held = commands.beforeCommandExecuted(({ id, params }, options) => {
    if (options?.onlyLocal || options?.["isOurs"]) return;
    const isRemoved =
      id === RemoveSheetMutation.id && (params as { subUnitId?: string }).subUnitId === sheetId;
    const isChanged = sheetChangesOf(id, params).some(
      (change) =>
        change.sheetId === sheetId && (change.cells?.some(({ row, column }) => isHeld(row, column)) ?? true),
    );
    if (!isRemoved && !isChanged) return;
    tell(`"${sheet.getName()}" is being written to: wait until that is done, or cancel it.`);
    // The engine takes this error for "no", without a word of its own.
    throw new CustomCommandExecutionError(`${sheet.getName()} is being written to.`);
  });
  return () => {
    held.dispose();
  };
};
