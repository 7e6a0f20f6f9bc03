import { isBlank, type Cell } from "../../../shared/cell";
import { InputError } from "../../../shared/inputError";
import { areaAddress, overlap, type Area } from "../../workbook/address";
import { columnData, type ColumnData } from "./columnData";
import { currentRegion } from "./currentRegion";
import type { SpreadsheetTable, Survey } from "../../workbook/survey";
import { isSubtotal, totalCall } from "./totalRow";

/** A block of cells that columns can be added to: a heading row, rows of data, and possibly a row of totals. */
export interface Block {
  readonly sheet: string;
  readonly headingRow: number;
  readonly firstRow: number;
  readonly lastRow: number;
  /** The row of totals and how its formulas begin, such as `SUM(`; absent if the block has none. */
  readonly total?: { readonly row: number; readonly call: string };
  readonly firstColumn: number;
  readonly lastColumn: number;
  readonly headings: readonly string[];
  /** What kinds of values each column holds. */
  readonly data: readonly ColumnData[];
  readonly table?: SpreadsheetTable;
}

const HOW_TO_SELECT = "Select a table or a block with a heading row.";

/** How a spreadsheet writes the totals of a table. Filtered rows don't count. */
const TOTAL_OF_TABLE = "SUBTOTAL(109,";

const isText = (cell: Cell | undefined): boolean => typeof cell === "string" && cell.trim() !== "";

const columnsOf = ({ from, to }: Area): number[] =>
  Array.from({ length: to.column - from.column + 1 }, (_, index) => from.column + index);

/** The first row in which most columns hold text, so a title above the headings isn't mistaken for them. */
const headingRowOf = ({ cells }: Survey, area: Area): number | undefined => {
  const columns = columnsOf(area);
  for (let row = area.from.row; row < area.to.row; row++) {
    const texts = columns.filter((column) => isText(cells[row]?.[column])).length;
    if (texts * 2 > columns.length) return row;
  }
  return undefined;
};

const refuseUnwritable = (survey: Survey, area: Area): void => {
  if (survey.isProtected)
    throw new InputError(`"${survey.sheet}" is protected: unprotect it first. Nothing was written.`);
  if (survey.isFiltered)
    throw new InputError(
      `A filter hides rows of "${survey.sheet}", so a new column might skip them: clear the filter first.`,
    );
  const merged = survey.merged.find((each) => overlap(each, area));
  if (merged)
    throw new InputError(`${areaAddress(merged)} is merged: unmerge it, or select rows without it.`);
};

const refuseSubtotals = (survey: Survey, area: Area, firstRow: number, lastRow: number): void => {
  for (let row = firstRow; row <= lastRow; row++)
    if (isSubtotal(survey, area, row))
      throw new InputError(
        `Row ${row + 1} looks like a subtotal: select the rows of one section with their headings.`,
      );
};

/** The block that was read: `A3:H5 on "Bid": 2 rows below the headings`. */
export const blockInWords = (block: Block): string => {
  const rows = block.lastRow - block.firstRow + 1;
  const area: Area = {
    from: { row: block.headingRow, column: block.firstColumn },
    to: { row: block.total?.row ?? block.lastRow, column: block.lastColumn },
  };
  return `${areaAddress(area)} on "${block.sheet}": ${rows} row${rows === 1 ? "" : "s"} below the headings${
    block.total ? ", and a row of totals" : ""
  }`;
};

/** The selected block, or the block around the selected cell. Throws an InputError if columns can't be added to it. */
export const readBlock = (survey: Survey): Block => {
  const area = survey.table?.area ?? currentRegion(survey);
  if (!area) throw new InputError(`${HOW_TO_SELECT} There is nothing here.`);
  if (survey.table && !survey.table.hasHeadings)
    throw new InputError(`The table ${survey.table.name} shows no headings: show its heading row first.`);
  const headingRow = survey.table ? area.from.row : headingRowOf(survey, area);
  if (headingRow === undefined)
    throw new InputError(
      `${HOW_TO_SELECT} ${areaAddress(area)} has no row of headings with rows of data below it.`,
    );
  const columns = columnsOf(area);
  const whole: Area = { from: { row: headingRow, column: area.from.column }, to: area.to };
  refuseUnwritable(survey, whole);

  const call = totalCall(survey, whole) ?? (survey.table?.hasTotals ? TOTAL_OF_TABLE : undefined);
  const total = call === undefined ? undefined : { row: area.to.row, call };
  const lastRow = total ? total.row - 1 : area.to.row;
  if (lastRow <= headingRow) throw new InputError(`${HOW_TO_SELECT} There are no rows of data here.`);

  refuseSubtotals(survey, whole, headingRow + 1, lastRow);

  const cellsBelow = (column: number): (Cell | undefined)[] =>
    survey.cells.slice(headingRow + 1, lastRow + 1).map((row) => row[column]);
  return {
    sheet: survey.sheet,
    headingRow,
    firstRow: headingRow + 1,
    lastRow,
    ...(total && { total }),
    firstColumn: area.from.column,
    lastColumn: area.to.column,
    headings: columns.map((column) => {
      const heading = survey.cells[headingRow]?.[column];
      return isBlank(heading) ? "" : String(heading);
    }),
    data: columns.map((column) => columnData(cellsBelow(column))),
    ...(survey.table && { table: survey.table }),
  };
};
