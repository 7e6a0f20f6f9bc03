import type { IRange, Injector, Workbook, Worksheet } from "@univerjs/core";
import { FormulaDataModel } from "@univerjs/engine-formula";
import { SheetsSelectionsService, WorksheetProtectionRuleModel } from "@univerjs/sheets";
import type { Area } from "../../../workbook/address";
import type { Survey } from "../../../workbook/survey";
import { definedNamesIn } from "../engine/definedNames";
import { fileMetadataOf } from "../engine/fileMetadata";
import { hasProtection } from "../engine/protection";
import { readActiveSheet, type ReadCell } from "./readSheet";
import { tableAt } from "../formulas/fileTables";

export const toArea = ({ startRow, startColumn, endRow, endColumn }: IRange): Area => ({
  from: { row: startRow, column: startColumn },
  to: { row: endRow, column: endColumn },
});

/** The selection within the sheet: the selection of a whole column or row has no last row or column. */
const withinSheet = (sheet: Worksheet, { from, to }: Area): Area => ({
  from: { row: from.row || 0, column: from.column || 0 },
  to: {
    row: Number.isNaN(to.row) ? sheet.getRowCount() - 1 : to.row,
    column: Number.isNaN(to.column) ? sheet.getColumnCount() - 1 : to.column,
  },
});

/** A cell's formula, also one that a fill shares with its neighbor; empty text if there is none. */
export const formulaAt = (injector: Injector, sheet: Worksheet, row: number, column: number): string =>
  injector.get(FormulaDataModel).getFormulaStringByCell(row, column, sheet.getSheetId(), sheet.getUnitId()) ??
  "";

/** Whether the engine's own rule, a plan or the sheet's file protects it. */
export const isProtected = (injector: Injector, sheet: Worksheet): boolean =>
  injector.get(WorksheetProtectionRuleModel).getRule(sheet.getUnitId(), sheet.getSheetId()) !== undefined ||
  hasProtection(sheet);

/** The active sheet, as the pane needs it to write there; `otherSelection` replaces its own selection. */
export const survey = (
  injector: Injector,
  workbook: Workbook,
  read: ReadCell,
  otherSelection?: Area,
): Survey => {
  const sheet = workbook.getActiveSheet();
  const { cells, selected } = readActiveSheet(injector, workbook, read);
  const range = injector.get(SheetsSelectionsService).getCurrentSelections().at(-1)?.range;
  const hidden = sheet.getHiddenRows();
  const ownSelection = range ? withinSheet(sheet, toArea(range)) : { from: selected, to: selected };
  const area = otherSelection ?? ownSelection;
  const table = tableAt(injector, sheet, area.from);
  return {
    sheet: sheet.getName(),
    selected: area,
    ...(table && { table }),
    cells,
    formulas: cells.map((line, row) => line.map((_, column) => formulaAt(injector, sheet, row, column))),
    end: { row: sheet.getRowCount() - 1, column: sheet.getColumnCount() - 1 },
    merged: sheet.getMergeData().map(toArea),
    isProtected: isProtected(injector, sheet),
    isFiltered: fileMetadataOf(sheet).isFiltered || cells.some((_, row) => sheet.getRowFiltered(row)),
    hiddenRows: hidden.flatMap(({ startRow, endRow }) =>
      Array.from({ length: endRow - startRow + 1 }, (_, index) => startRow + index),
    ),
    names: definedNamesIn(injector, workbook).map(({ name }) => name),
  };
};
