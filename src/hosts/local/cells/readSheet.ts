import { numfmt, type Injector, type Workbook, type Worksheet } from "@univerjs/core";
import {
  deserializeRangeWithSheet,
  ERROR_TYPE_SET,
  FormulaDataModel,
  IDefinedNamesService,
} from "@univerjs/engine-formula";
import { SheetsSelectionsService } from "@univerjs/sheets";
import { CellError, type Cell, type Matrix } from "../../../../shared/cell";
import { highest } from "../../../../shared/highest";
import { isDateSerial, isoDate } from "../../../../shared/sheetDate";
import type { ActiveSheet } from "../../../workbook/activeSheet";
import { cellDataAt, fromCellData } from "../engine/cellData";
import type { ErrorMessages } from "../engine/errorMessages";

const isErrorCode = (text: string): boolean => (ERROR_TYPE_SET as ReadonlySet<string>).has(text);

/** A cell's value as a function gets it: an error has its message. */
export const readCell = (
  injector: Injector,
  errorMessages: ErrorMessages,
  sheet: Worksheet,
  row: number,
  column: number,
): Cell => {
  const shown = fromCellData(cellDataAt(injector, sheet, row, column));
  if (typeof shown !== "string" || !isErrorCode(shown)) return shown;
  return new CellError(
    shown,
    errorMessages.at({ unitId: sheet.getUnitId(), sheetId: sheet.getSheetId(), row, column }, shown),
  );
};

/** Rows and columns in use, spilled cells included. */
export const usedSize = (
  injector: Injector,
  sheet: Worksheet,
): { readonly rowCount: number; readonly columnCount: number } => {
  const spilled =
    injector.get(FormulaDataModel).getArrayFormulaCellData()[sheet.getUnitId()]?.[sheet.getSheetId()] ?? {};
  const lastRow = highest(Object.keys(spilled).map(Number), sheet.getLastRowWithContent());
  const lastColumn = highest(
    Object.values(spilled).flatMap((cells) => Object.keys(cells ?? {}).map(Number)),
    sheet.getLastColumnWithContent(),
  );
  return { rowCount: lastRow + 1, columnCount: lastColumn + 1 };
};

export type ReadCell = (sheet: Worksheet, row: number, column: number) => Cell;

/** Reads a date as text (ISO 8601) instead of the serial number that a spreadsheet stores. */
export const datesAsText =
  (workbook: Workbook, read: ReadCell): ReadCell =>
  (sheet, row, column) => {
    const cell = read(sheet, row, column);
    if (typeof cell !== "number" || !Number.isInteger(cell) || !isDateSerial(cell)) return cell;
    const pattern = workbook.getStyles().getStyleByCell(sheet.getCellRaw(row, column))?.n?.pattern;
    return pattern !== undefined && numfmt.isDateFormat(pattern) ? isoDate(cell) : cell;
  };

const readBlock = (read: ReadCell, sheet: Worksheet, from: [number, number], to: [number, number]): Matrix =>
  Array.from({ length: to[0] - from[0] + 1 }, (_, row) =>
    Array.from({ length: to[1] - from[1] + 1 }, (_column, column) =>
      read(sheet, from[0] + row, from[1] + column),
    ),
  );

/** A whole sheet, spilled cells included. */
export const readWhole = (injector: Injector, sheet: Worksheet, read: ReadCell): Matrix => {
  const { rowCount, columnCount } = usedSize(injector, sheet);
  return readBlock(read, sheet, [0, 0], [rowCount - 1, columnCount - 1]);
};

/** The active sheet as it shows. */
export const readActiveSheet = (injector: Injector, workbook: Workbook, read: ReadCell): ActiveSheet => {
  const sheet = workbook.getActiveSheet();
  const active = injector.get(SheetsSelectionsService).getCurrentSelections().at(-1)?.primary;
  return {
    sheet: sheet.getName(),
    selected: { row: active?.actualRow ?? 0, column: active?.actualColumn ?? 0 },
    cells: readWhole(injector, sheet, read),
  };
};

/** The cells of a defined name; undefined if there is no such name, or it isn't a range. */
export const readNamedRange = (
  injector: Injector,
  workbook: Workbook,
  read: ReadCell,
  name: string,
): Matrix | undefined => {
  const names = injector.get(IDefinedNamesService).getDefinedNameMap(workbook.getUnitId()) ?? {};
  const found = Object.values(names).find((each) => each.name.toLowerCase() === name.toLowerCase());
  if (!found) return undefined;
  const { sheetName, range } = deserializeRangeWithSheet(found.formulaOrRefString);
  const sheet = workbook.getSheetBySheetName(sheetName);
  return sheet
    ? readBlock(read, sheet, [range.startRow, range.startColumn], [range.endRow, range.endColumn])
    : undefined;
};
