import { CellValueType, type ICellData, type IWorkbookData, type IWorksheetData } from "@univerjs/core";
import { sheetPrefix } from "../../../workbook/address";
import type { CellContent, PlannedCell, PlannedName, SheetPlan, WorkbookPlan } from "../../../workbook/plan";
import { dropDownRules, dropDownsResource } from "./dropDowns";
import { styleData } from "../../../workbook/styleData";
import { PROTECTED_BY_PLAN } from "./protection";

/** Blank rows after the plan's cells, to work in. */
const SPARE_ROWS = 60;
const FEWEST_COLUMNS = 26;

export const contentData = (content: CellContent): ICellData => {
  switch (content.kind) {
    case "text":
      return { v: content.text, t: CellValueType.STRING };
    case "number":
      return { v: content.number, t: CellValueType.NUMBER };
    case "formula":
      return { f: content.formula };
  }
};

const cellData = ({ content, style, numberFormat }: PlannedCell): ICellData => ({
  ...(content && contentData(content)),
  s: styleData(style, numberFormat),
});

/** A sheet of a plan as the engine's sheet data. */
export const sheetData = (id: string, plan: SheetPlan): Partial<IWorksheetData> => {
  const rows: Record<number, Record<number, ICellData>> = {};
  for (const cell of plan.cells) (rows[cell.row] ??= {})[cell.column] = cellData(cell);
  return {
    id,
    name: plan.name,
    cellData: rows,
    rowCount: plan.cells.reduce((rows, { row }) => Math.max(rows, row + 1), 0) + SPARE_ROWS,
    columnCount: Math.max(FEWEST_COLUMNS, plan.columnWidths.length),
    columnData: Object.fromEntries(plan.columnWidths.map((w, column) => [column, { w }])),
    rowData: Object.fromEntries(Object.entries(plan.rowHeights).map(([row, h]) => [row, { h }])),
    freeze: { xSplit: 0, ySplit: plan.frozenRows, startRow: plan.frozenRows, startColumn: -1 },
    custom: {
      // The engine doesn't print, but the page setup is saved to files.
      ...(plan.print && { print: plan.print }),
      ...(plan.isProtected && PROTECTED_BY_PLAN),
    },
  };
};

/** What a name refers to, as the engine writes it: `'Panel'!$B$4`. */
export const nameTarget = ({ sheet, range }: PlannedName): string => `${sheetPrefix(sheet)}${range}`;

/** The engine's resource for defined names. */
const namesResource = (names: readonly PlannedName[]) => ({
  name: "SHEET_DEFINED_NAME_PLUGIN",
  data: JSON.stringify(
    Object.fromEntries(
      names.map((each) => [
        each.name,
        { id: each.name, name: each.name, formulaOrRefString: nameTarget(each), comment: "" },
      ]),
    ),
  ),
});

const sheetId = (index: number): string => `sheet-${index + 1}`;

/** A plan as a snapshot for the engine. */
export const workbookData = (id: string, plan: WorkbookPlan): Partial<IWorkbookData> => ({
  id,
  name: "Gablewright",
  sheetOrder: plan.sheets.map((_, index) => sheetId(index)),
  sheets: Object.fromEntries(
    plan.sheets.map((sheet, index) => [sheetId(index), sheetData(sheetId(index), sheet)]),
  ),
  resources: [
    namesResource(plan.names),
    dropDownsResource(
      Object.fromEntries(plan.sheets.map((sheet, index) => [sheetId(index), dropDownRules(sheet)])),
    ),
  ],
});
