import { ICommandService, type Injector, type IWorkbookData, type Worksheet } from "@univerjs/core";
import {
  IActiveDirtyManagerService,
  ISuperTableService,
  RemoveSuperTableMutation,
  SetSuperTableMutation,
} from "@univerjs/engine-formula";
import {
  InsertSheetMutation,
  RemoveSheetMutation,
  type IInsertSheetMutationParams,
  type IRemoveSheetMutationParams,
} from "@univerjs/sheets";
import type { CellAddress } from "../../../workbook/address";
import type { SpreadsheetTable } from "../../../workbook/survey";
import { parseRange } from "../../../xlsx/book/a1References";
import { isStructuralEdit, watchStructuralEdits } from "../engine/structuralEdits";
import { fileMetadataOf, readFileMetadata } from "../engine/fileMetadata";
import { tableParts } from "../engineFixes/tableParts";
import { escapedHeading } from "../engineFixes/tableHeadings";

/** Watches which sheets are deleted and haven't been restored. */
const watchDeletedSheets = (commands: ICommandService): ReadonlySet<string> => {
  const deleted = new Set<string>();
  commands.onCommandExecuted(({ id, params }) => {
    if (id === RemoveSheetMutation.id) deleted.add((params as IRemoveSheetMutationParams).subUnitId);
    if (id === InsertSheetMutation.id) deleted.delete((params as IInsertSheetMutationParams).sheet.id);
  });
  return deleted;
};

const SHEET_INSERTED_OR_REMOVED: ReadonlySet<string> = new Set([
  RemoveSheetMutation.id,
  InsertSheetMutation.id,
]);

/**
 * Registers the tables of a file for formulas such as SUM(Bids[Feet]); call it before the workbook is created. The engine doesn't
 * move a table with inserted, deleted or moved rows, columns or cells, and keeps it when its sheet is deleted. Formulas that refer
 * to such a table show #NAME? instead of results from the wrong cells, until the change is undone.
 */
export const registerTables = (injector: Injector, { id, sheets }: Partial<IWorkbookData>): void => {
  const unitId = id ?? "";
  const tables = Object.entries(sheets ?? {}).flatMap(([sheetId, { custom }]) =>
    readFileMetadata(custom).tables.flatMap((table) => {
      const titleMap = new Map(table.columns.map((column, index) => [escapedHeading(column), index]));
      return tableParts(table).map(({ name, ...range }) => ({
        unitId,
        tableName: name,
        reference: { sheetId, range, titleMap },
      }));
    }),
  );
  if (tables.length === 0) return;

  const service = injector.get(ISuperTableService);
  for (const { tableName, reference } of tables) service.registerTable(unitId, tableName, reference);

  const commands = injector.get(ICommandService);
  const movedSheetIds = watchStructuralEdits(commands);
  const deletedSheetIds = watchDeletedSheets(commands);
  for (const commandId of [SetSuperTableMutation.id, RemoveSuperTableMutation.id])
    injector.get(IActiveDirtyManagerService).register(commandId, {
      commandId,
      getDirtyData: () => ({
        forceCalculation: true,
        dirtySuperTableMap: { [unitId]: Object.fromEntries(tables.map(({ tableName }) => [tableName, "1"])) },
      }),
    });
  commands.onCommandExecuted((command) => {
    if (!isStructuralEdit(command.id) && !SHEET_INSERTED_OR_REMOVED.has(command.id)) return;
    const moved = movedSheetIds();
    for (const table of tables) {
      const { sheetId } = table.reference;
      const isRegistered = service.getTableMap(unitId)?.has(table.tableName) ?? false;
      if (isRegistered !== (moved.has(sheetId) || deletedSheetIds.has(sheetId))) continue;
      const { id } = isRegistered ? RemoveSuperTableMutation : SetSuperTableMutation;
      commands.syncExecuteCommand(id, table, { onlyLocal: true });
    }
  });
};

/** The file's table that holds a cell, unless the table may have moved. */
export const tableAt = (
  injector: Injector,
  sheet: Worksheet,
  { row, column }: CellAddress,
): SpreadsheetTable | undefined => {
  const registered = injector.get(ISuperTableService).getTableMap(sheet.getUnitId());
  for (const { name, range, hasHeadings, hasTotals } of fileMetadataOf(sheet).tables) {
    const area = parseRange(range);
    if (!area || !registered?.has(name)) continue;
    const { from, to } = area;
    if (row >= from.row && row <= to.row && column >= from.column && column <= to.column)
      return { name, area, hasHeadings, hasTotals };
  }
  return undefined;
};
