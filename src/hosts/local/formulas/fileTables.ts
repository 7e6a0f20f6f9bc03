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

/** Watches which sheets were taken away and haven't come back. */
const watchDeletedSheets = (commands: ICommandService): ReadonlySet<string> => {
  const gone = new Set<string>();
  commands.onCommandExecuted(({ id, params }) => {
    if (id === RemoveSheetMutation.id) gone.add((params as IRemoveSheetMutationParams).subUnitId);
    if (id === InsertSheetMutation.id) gone.delete((params as IInsertSheetMutationParams).sheet.id);
  });
  return gone;
};

const SHEET_INSERTED_OR_REMOVED: ReadonlySet<string> = new Set([
  RemoveSheetMutation.id,
  InsertSheetMutation.id,
]);

/**
 * Makes the tables of a file known to formulas, such as SUM(Bids[Feet]); call it before the workbook is made. Where rows, columns
 * or cells are moved on a sheet, the engine doesn't move its tables with them, nor does it forget them with their sheet: their
 * formulas then say #NAME? instead of answering about other cells, or as before, until that is undone.
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
  const goneSheetIds = watchDeletedSheets(commands);
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
      const isKnown = service.getTableMap(unitId)?.has(table.tableName) ?? false;
      if (isKnown !== (moved.has(sheetId) || goneSheetIds.has(sheetId))) continue;
      const { id } = isKnown ? RemoveSuperTableMutation : SetSuperTableMutation;
      commands.syncExecuteCommand(id, table, { onlyLocal: true });
    }
  });
};

/** The table of the file that a place is in, while it stands where the file has it. */
export const tableAt = (
  injector: Injector,
  sheet: Worksheet,
  { row, column }: CellAddress,
): SpreadsheetTable | undefined => {
  const known = injector.get(ISuperTableService).getTableMap(sheet.getUnitId());
  for (const { name, range, hasHeadings, hasTotals } of fileMetadataOf(sheet).tables) {
    const area = parseRange(range);
    if (!area || !known?.has(name)) continue;
    const { from, to } = area;
    if (row >= from.row && row <= to.row && column >= from.column && column <= to.column)
      return { name, area, hasHeadings, hasTotals };
  }
  return undefined;
};
