import { LAST_CELL, readArea } from "../../../workbook/address";
import type { Survey } from "../../../workbook/survey";
import type { ExcelEntry } from "../ranges/excelEntry";
import { areaOf, PLACE_AND_SIZE, splitAddress } from "../ranges/ranges";
import { readInPieces } from "../ranges/readInPieces";
import { linesOf, sheetContents, type Line } from "./readSheet";

interface SurveyedLine extends Line {
  readonly isHidden: boolean;
}

/** What must be known of the active sheet to write into it. */
export const survey = (excel: ExcelEntry): Promise<Survey> =>
  excel.run(async (context) => {
    const { workbook } = context;
    const sheet = workbook.worksheets.getActiveWorksheet();
    const selected = workbook.getSelectedRange();
    const used = sheet.getUsedRangeOrNullObject(true);
    const tables = selected.getTables(false);
    sheet.load("id,name");
    sheet.protection.load("protected");
    sheet.autoFilter.load("isDataFiltered");
    selected.load(PLACE_AND_SIZE);
    used.load(PLACE_AND_SIZE);
    tables.load("items/name,items/showHeaders,items/showTotals");
    workbook.names.load("items/name");
    await context.sync();

    const found = {
      sheet: sheet.name,
      selected: areaOf(selected),
      end: LAST_CELL,
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
    await context.sync();

    const area = areaOf(used);
    const [lines = []] = await readInPieces(
      context,
      // By id: another sheet may be active by the next sync.
      [{ sheet: workbook.worksheets.getItem(sheet.id), name: sheet.name, area }],
      (range) => {
        range.load("values,formulas");
        return { range, rows: range.getRowProperties({ rowHidden: true }) };
      },
      ({ range, rows }) =>
        linesOf(range).map((line, row): SurveyedLine => ({
          ...line,
          isHidden: rows.value[row]?.rowHidden ?? false,
        })),
    );
    return {
      ...found,
      ...sheetContents(area.from, lines),
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
      hiddenRows: lines.flatMap(({ isHidden }, row) => (isHidden ? [area.from.row + row] : [])),
    };
  });
