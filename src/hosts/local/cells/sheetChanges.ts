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

/** What one of the engine's steps does to a sheet. */
export interface SheetChange {
  readonly sheetId: string;
  readonly kind: "values" | "looks" | "moves";
  /** The cells, where it changes no more than cells. */
  readonly cells?: readonly CellAddress[];
}

/** The commands that change nothing of a cell but its look. */
const CELL_FORMAT_COMMANDS = new Set([
  SetStyleCommand.id,
  SetBorderCommand.id,
  ClearSelectionFormatCommand.id,
]);

/** Looks of rows, columns and blocks. Heights that follow from what cells hold aren't among them. */
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

/** What a step of the engine changes, by the sheets that it changes. */
export const sheetChangesOf = (id: string, params: object | undefined): readonly SheetChange[] => {
  const { subUnitId: sheetId = "" } = (params ?? {}) as { readonly subUnitId?: string };
  if (id === SetRangeValuesMutation.id) {
    const { cellValue, trigger = "" } = params as ISetRangeValuesMutationParams;
    const cells = Object.entries(cellValue ?? {}).flatMap(([row, inRow]) =>
      Object.keys(inRow).map((column): CellAddress => ({ row: Number(row), column: Number(column) })),
    );
    return [{ sheetId, kind: CELL_FORMAT_COMMANDS.has(trigger) ? "looks" : "values", cells }];
  }
  if (id === SetNumfmtMutation.id || id === RemoveNumfmtMutation.id)
    return [{ sheetId, kind: "looks", cells: addressesInRanges(formattedRanges(id, params)) }];
  if (FORMAT_MUTATIONS.has(id)) return [{ sheetId, kind: "looks" }];
  return isStructuralEdit(id)
    ? sheetIdsOfStructuralEdit(params).map((moved) => ({ sheetId: moved, kind: "moves" }))
    : [];
};
