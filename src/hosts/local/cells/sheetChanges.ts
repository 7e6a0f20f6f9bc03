import {
  AddWorksheetMergeMutation,
  ClearSelectionFormatCommand,
  RemoveNumfmtMutation,
  RemoveWorksheetMergeMutation,
  SetBorderCommand,
  SetColDataMutation,
  SetColHiddenMutation,
  SetColVisibleMutation,
  SetNumfmtMutation,
  SetRangeValuesMutation,
  SetRowDataMutation,
  SetRowHiddenMutation,
  SetRowVisibleMutation,
  SetStyleCommand,
  SetWorksheetColWidthMutation,
  SetWorksheetRowHeightMutation,
  type ISetNumfmtMutationParams,
  type ISetRangeValuesMutationParams,
} from "@univerjs/sheets";
import type { IRange } from "@univerjs/core";
import { addressesIn, type CellAddress } from "../../../workbook/address";
import { isStructuralEdit, sheetIdsOfStructuralEdit } from "../engine/structuralEdits";
import { toArea } from "./survey";

/** What one of the engine's commands or mutations changes on a sheet. */
export interface SheetChange {
  readonly sheetId: string;
  readonly kind: "values" | "formats" | "structure";
  /** The changed cells; undefined if it changes rows, columns or the sheet's structure. */
  readonly cells?: readonly CellAddress[];
}

/** Commands that change only the format of cells. */
const CELL_FORMAT_COMMANDS = new Set([
  SetStyleCommand.id,
  SetBorderCommand.id,
  ClearSelectionFormatCommand.id,
]);

/** Mutations that change the format of rows, columns and merged cells. Row heights fitted to the content aren't among them. */
const FORMAT_MUTATIONS = new Set([
  AddWorksheetMergeMutation.id,
  RemoveWorksheetMergeMutation.id,
  SetColDataMutation.id,
  SetColHiddenMutation.id,
  SetColVisibleMutation.id,
  SetRowDataMutation.id,
  SetRowHiddenMutation.id,
  SetRowVisibleMutation.id,
  SetWorksheetColWidthMutation.id,
  SetWorksheetRowHeightMutation.id,
]);

const addressesInRanges = (ranges: readonly IRange[]): CellAddress[] =>
  ranges.flatMap((range) => addressesIn(toArea(range)));

const formattedRanges = (id: string, params: object | undefined): readonly IRange[] =>
  id === SetNumfmtMutation.id
    ? Object.values((params as ISetNumfmtMutationParams).values).flatMap(({ ranges }) => ranges)
    : (params as { readonly ranges: readonly IRange[] }).ranges;

/** What a command or mutation of the engine changes, for each sheet that it changes. */
export const sheetChangesOf = (id: string, params: object | undefined): readonly SheetChange[] => {
  const { subUnitId: sheetId = "" } = (params ?? {}) as { readonly subUnitId?: string };
  if (id === SetRangeValuesMutation.id) {
    const { cellValue, trigger = "" } = params as ISetRangeValuesMutationParams;
    const cells = Object.entries(cellValue ?? {}).flatMap(([row, inRow]) =>
      Object.keys(inRow).map((column): CellAddress => ({ row: Number(row), column: Number(column) })),
    );
    return [{ sheetId, kind: CELL_FORMAT_COMMANDS.has(trigger) ? "formats" : "values", cells }];
  }
  if (id === SetNumfmtMutation.id || id === RemoveNumfmtMutation.id)
    return [{ sheetId, kind: "formats", cells: addressesInRanges(formattedRanges(id, params)) }];
  if (FORMAT_MUTATIONS.has(id)) return [{ sheetId, kind: "formats" }];
  return isStructuralEdit(id)
    ? sheetIdsOfStructuralEdit(params).map((edited) => ({ sheetId: edited, kind: "structure" }))
    : [];
};
