import {
  BooleanNumber,
  DataValidationType,
  type ICellData,
  type Injector,
  type IStyleData,
  type ISheetDataValidationRule,
  type Nullable,
  type Workbook,
  type Worksheet,
} from "@univerjs/core";
import { FormulaDataModel } from "@univerjs/engine-formula";
import { PAGE_SETUP } from "../../../workbook/pageSetup";
import type { Print } from "../../../workbook/plan";
import type { Book, BookCell, BookRowOrColumn, BookSheet, DropDown } from "../../../xlsx/book/book";
import { fileStyleIndex } from "../../../xlsx/book/book";
import { areaAddress } from "../../../workbook/address";
import { isFileRule } from "../engine/dropDowns";
import { definedNamesIn } from "../engine/definedNames";
import { hasProtection } from "../engine/protection";
import { readCell } from "../cells/readSheet";
import type { ErrorMessages } from "../engine/errorMessages";

/** The keys of styles: those from a file keep their key; others use their content as the key. */
const styleKeys =
  (workbook: Workbook, styles: Map<string, IStyleData>) =>
  (style: ICellData["s"]): { style?: string } => {
    if (!style) return {};
    const data = typeof style === "string" ? workbook.getStyles().get(style) : style;
    if (!data || (Object.keys(data).length === 0 && typeof style !== "string")) return {};
    const key =
      typeof style === "string" && fileStyleIndex(style) !== undefined ? style : JSON.stringify(data);
    styles.set(key, data);
    return { style: key };
  };

/** The page setup, which the engine only stores for us. */
const printOf = (kept: unknown): { print?: Print } =>
  typeof kept === "string" && kept in PAGE_SETUP ? { print: kept as Print } : {};

const dropDownsOf = (rules: readonly ISheetDataValidationRule[]): DropDown[] =>
  rules
    .filter((rule) => rule.type === DataValidationType.LIST && !isFileRule(rule))
    .map(({ ranges, formula1 }) => ({
      choices: (formula1 ?? "").split(","),
      ranges: ranges.map(({ startRow, startColumn, endRow, endColumn }) =>
        areaAddress({ from: { row: startRow, column: startColumn }, to: { row: endRow, column: endColumn } }),
      ),
    }));

/** The workbook as plain values, for `xlsx` to write. */
export const readBook = (
  injector: Injector,
  workbook: Workbook,
  errorMessages: ErrorMessages,
  rulesOf: (sheetId: string) => readonly ISheetDataValidationRule[],
): Book => {
  const styles = new Map<string, IStyleData>();
  const styleOf = styleKeys(workbook, styles);
  const formulas = injector.get(FormulaDataModel);
  const unitId = workbook.getUnitId();

  const readSheet = (sheet: Worksheet): BookSheet => {
    const sheetId = sheet.getSheetId();
    const config = sheet.getConfig();
    const cells = new Map<number, Map<number, BookCell>>();
    const put = (row: number, column: number, cell: BookCell): void => {
      const inRow = cells.get(row) ?? new Map<number, BookCell>();
      cells.set(row, inRow);
      inRow.set(column, cell);
    };
    const spills = formulas.getArrayFormulaRange()[unitId]?.[sheetId];
    sheet.getCellMatrix().forValue((row, column, data: Nullable<ICellData>) => {
      const hasFormula = Boolean(data?.f) || Boolean(data?.si);
      const formula = hasFormula ? formulas.getFormulaStringByCell(row, column, sheetId, unitId) : undefined;
      const value = readCell(injector, errorMessages, sheet, row, column);
      const cellStyle = styleOf(data?.s);
      if (value === null && !formula && cellStyle.style === undefined) return;
      const range = spills?.[row]?.[column];
      const [rows, columns] = range
        ? [range.endRow - range.startRow + 1, range.endColumn - range.startColumn + 1]
        : [1, 1];
      put(row, column, {
        value,
        ...(formula && { formula }),
        ...(formula && rows * columns > 1 && { spill: { rows, columns } }),
        ...cellStyle,
      });
    });
    const spilled = formulas.getArrayFormulaCellData()[unitId]?.[sheetId] ?? {};
    for (const [row, inRow] of Object.entries(spilled))
      for (const column of Object.keys(inRow ?? {})) {
        const ownCell = cells.get(Number(row))?.get(Number(column));
        if (ownCell?.formula !== undefined) continue;
        const value = readCell(injector, errorMessages, sheet, Number(row), Number(column));
        put(Number(row), Number(column), { ...ownCell, value, isSpilled: true });
      }
    const lines = <T extends { hd?: BooleanNumber; s?: ICellData["s"] }>(
      data: Record<number, Nullable<T>> | undefined,
      sizeOf: (line: T) => number | undefined,
    ) =>
      new Map(
        Object.entries(data ?? {}).flatMap(([index, line]): [number, BookRowOrColumn][] => {
          if (!line) return [];
          const sizePx = sizeOf(line);
          const read: BookRowOrColumn = {
            ...(sizePx !== undefined && { sizePx }),
            ...(line.hd === BooleanNumber.TRUE && { isHidden: true }),
            ...styleOf(line.s),
          };
          return Object.keys(read).length === 0 ? [] : [[Number(index), read]];
        }),
      );
    return {
      name: sheet.getName(),
      id: sheetId,
      isHidden: sheet.isSheetHidden() === BooleanNumber.TRUE,
      cells,
      // A height that the engine fitted itself isn't saved.
      rows: lines(config.rowData, ({ h, ia }) => (ia === BooleanNumber.TRUE ? undefined : h)),
      columns: lines(config.columnData, ({ w }) => w),
      merges: config.mergeData.map(({ startRow, startColumn, endRow, endColumn }) =>
        areaAddress({ from: { row: startRow, column: startColumn }, to: { row: endRow, column: endColumn } }),
      ),
      frozen: { rows: config.freeze.ySplit, columns: config.freeze.xSplit },
      dropDowns: dropDownsOf(rulesOf(sheetId)),
      isProtected: hasProtection(sheet),
      ...printOf(config.custom?.["print"]),
    };
  };

  const sheets = workbook.getSheets().map(readSheet);
  return { sheets, names: definedNamesIn(injector, workbook), styles };
};
