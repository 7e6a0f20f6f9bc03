import { readArea } from "../../sheets/address";
import type { Survey } from "../../sheets/extend/survey";
import type { ExcelEntry } from "./excelHost";
import { areaOf, PLACE_AND_SIZE, splitAddress } from "./ranges";
import { paddedBy, toCell, toFormula } from "./readSheet";

/** The last cell of every sheet of Excel's. */
const END = { row: 1_048_575, column: 16_383 };

/** The sheet in front, as somebody must know it who wants to write into it. Two steps: what is there, then its details. */
export const survey = (excel: ExcelEntry): Promise<Survey> =>
  excel.run(async (context) => {
    const { workbook } = context;
    const sheet = workbook.worksheets.getActiveWorksheet();
    const selected = workbook.getSelectedRange();
    const used = sheet.getUsedRangeOrNullObject(true);
    const tables = selected.getTables(false);
    sheet.load("name");
    sheet.protection.load("protected");
    sheet.autoFilter.load("isDataFiltered");
    selected.load(PLACE_AND_SIZE);
    used.load(`values,formulas,${PLACE_AND_SIZE}`);
    tables.load("items/name,items/showHeaders,items/showTotals");
    workbook.names.load("items/name");
    await context.sync();

    const found = {
      sheet: sheet.name,
      selected: areaOf(selected),
      end: END,
      isProtected: sheet.protection.protected,
      names: workbook.names.items.map(({ name }) => name),
    };
    if (used.isNullObject)
      return { ...found, cells: [], formulas: [], merged: [], isFiltered: false, hiddenRows: [] };

    const table = tables.items[0];
    const tableRange = table?.getRange();
    tableRange?.load(PLACE_AND_SIZE);
    table?.autoFilter.load("isDataFiltered");
    const merged = used.getMergedAreasOrNullObject();
    merged.load("address");
    const rows = used.getRowProperties({ rowHidden: true });
    await context.sync();

    const { rowIndex, columnIndex } = used;
    return {
      ...found,
      cells: paddedBy(rowIndex, columnIndex, used.values as unknown[][], toCell, null),
      formulas: paddedBy(rowIndex, columnIndex, used.formulas as unknown[][], toFormula, ""),
      ...(table &&
        tableRange && {
          table: {
            name: table.name,
            area: areaOf(tableRange),
            hasHeadings: table.showHeaders,
            hasTotals: table.showTotals,
          },
        }),
      merged: merged.isNullObject ? [] : splitAddress(merged.address).map(readArea),
      isFiltered: sheet.autoFilter.isDataFiltered || (table?.autoFilter.isDataFiltered ?? false),
      hiddenRows: rows.value.flatMap(({ rowHidden }, index) => (rowHidden ? [rowIndex + index] : [])),
    };
  });
