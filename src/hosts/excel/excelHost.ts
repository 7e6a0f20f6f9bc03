import { a1 } from "../../workbook/address";
import { refuseUndoAfterEdits, refuseUndoOfLastSheets } from "../../workbook/undoAddedSheets";
import type { PlannedCell, SheetPlan, WorkbookPlan } from "../../workbook/plan";
import { PAGE_SETUP } from "../../workbook/pageSetup";
import { RULE_COLOR, STYLES, type Style } from "../../workbook/styles";
import type { Host } from "../../workbook/host";
import type { ExcelEntry } from "./ranges/excelEntry";
import { allOrNothing } from "./write/allOrNothing";
import { toCellInput } from "./write/cellInput";
import { readContents } from "./read/readContents";
import { newQueue } from "./write/queue";
import { POINTS_PER_PX } from "./write/points";
import { putCells } from "./write/putCells";
import { putPicture, type InsertSvg } from "./write/putPicture";
import { readActiveSheet, readNamedRange } from "./read/readSheet";
import { repair } from "./write/repair";
import { readEnteredContents } from "./read/enteredContents";
import { survey } from "./read/survey";
import { watchWorkbook } from "./watchWorkbook";

const applyStyle = (range: Excel.Range, style: Style): void => {
  const { format } = range;
  if (style.bold) format.font.bold = true;
  if (style.italic) format.font.italic = true;
  if (style.sizePt) format.font.size = style.sizePt;
  if (style.color) format.font.color = style.color;
  if (style.fill) format.fill.color = style.fill;
  if (style.wrap) format.wrapText = true;
  if (style.align === "center") format.horizontalAlignment = "Center";
  if (style.border)
    for (const edge of ["EdgeTop", "EdgeBottom", "EdgeLeft", "EdgeRight"] as const) {
      const border = format.borders.getItem(edge);
      border.style = "Continuous";
      border.color = RULE_COLOR;
    }
};

const NOT_IN_LIST: Excel.DataValidationErrorAlert = {
  showAlert: true,
  style: "Warning",
  title: "Not in the list",
  message: "This isn't in the list. Keep it?",
};

const writeCell = (sheet: Excel.Worksheet, cell: PlannedCell): void => {
  const range = sheet.getRange(a1(cell));
  if (cell.numberFormat) range.numberFormat = [[cell.numberFormat]];
  if (cell.content) range.formulas = [[toCellInput(cell.content)]];
  if (cell.style) applyStyle(range, STYLES[cell.style]);
  if (cell.choices) {
    range.dataValidation.rule = { list: { inCellDropDown: true, source: cell.choices.join(",") } };
    // A warning only: users may enter edges and trims of their own.
    range.dataValidation.errorAlert = NOT_IN_LIST;
  }
};

const writeSheet = (sheet: Excel.Worksheet, plan: SheetPlan): void => {
  plan.columnWidths.forEach((pixels, column) => {
    sheet.getRange(a1({ row: 0, column })).format.columnWidth = pixels * POINTS_PER_PX;
  });
  for (const [row, pixels] of Object.entries(plan.rowHeights))
    sheet.getRange(a1({ row: Number(row), column: 0 })).format.rowHeight = pixels * POINTS_PER_PX;
  plan.cells.forEach((cell) => {
    writeCell(sheet, cell);
  });
  if (plan.print) {
    const { orientation, pagesHigh } = PAGE_SETUP[plan.print];
    sheet.pageLayout.orientation = orientation === "landscape" ? "Landscape" : "Portrait";
    sheet.pageLayout.zoom = {
      horizontalFitToPages: 1,
      ...(pagesHigh !== undefined && { verticalFitToPages: pagesHigh }),
    };
  }
  if (plan.frozenRows > 0) sheet.freezePanes.freezeRows(plan.frozenRows);
  if (plan.isProtected) sheet.protection.protect({ allowFormatColumns: true, allowFormatRows: true });
};

interface Before {
  readonly sheetIds: ReadonlySet<string>;
  readonly names: ReadonlySet<string>;
}

const readBefore = (excel: ExcelEntry): Promise<Before> =>
  excel.run(async (context) => {
    const { worksheets, names } = context.workbook;
    worksheets.load("items/id");
    names.load("items/name");
    await context.sync();
    return {
      sheetIds: new Set(worksheets.items.map(({ id }) => id)),
      names: new Set(names.items.map(({ name }) => name)),
    };
  });

/** Deletes the plan's sheets and names, except those that were there before the write. */
const deleteAdded = (excel: ExcelEntry, plan: WorkbookPlan, before: Before): Promise<void> =>
  excel.run(async (context) => {
    const { worksheets, names } = context.workbook;
    worksheets.load("items/id,items/name");
    names.load("items/name");
    await context.sync();
    for (const item of names.items)
      if (!before.names.has(item.name) && plan.names.some(({ name }) => name === item.name)) item.delete();
    for (const sheet of worksheets.items)
      if (!before.sheetIds.has(sheet.id) && plan.sheets.some(({ name }) => name === sheet.name))
        sheet.delete();
    await context.sync();
  });

const writePlan = (excel: ExcelEntry, plan: WorkbookPlan): Promise<void> =>
  excel.run(async (context) => {
    const { workbook } = context;
    workbook.application.suspendScreenUpdatingUntilNextSync();
    const sheets = plan.sheets.map(({ name }) => workbook.worksheets.add(name));
    // Names come first: a formula with a name that doesn't exist yet would show #NAME?.
    plan.names.forEach(({ name, sheet, range }) => {
      workbook.names.add(name, workbook.worksheets.getItem(sheet).getRange(range));
    });
    plan.sheets.forEach((sheetPlan, index) => {
      writeSheet(sheets[index] as Excel.Worksheet, sheetPlan);
    });
    await context.sync();
  });

const activate = (excel: ExcelEntry, { sheets: [first] }: WorkbookPlan): Promise<void> =>
  excel.run(async (context) => {
    if (first) context.workbook.worksheets.getItem(first.name).activate();
    await context.sync();
  });

/** Excel, through Office.js. (Tested with a stand-in only, never in Excel itself.) */
export const excelHost = (excel: ExcelEntry, insertSvg: InsertSvg): Host => {
  const inPictureQueue = newQueue();
  return {
    title: "Excel",
    existing: () =>
      excel.run(async (context) => {
        const { worksheets, names } = context.workbook;
        const active = worksheets.getActiveWorksheet();
        active.load("name");
        worksheets.load("items/name");
        names.load("items/name");
        await context.sync();
        return {
          sheets: worksheets.items.map(({ name }) => name),
          names: names.items.map(({ name }) => name),
          activeSheetName: active.name,
        };
      }),
    survey: () => survey(excel),
    putCells: (patch, run) => putCells(excel, patch, run),
    repair: (run) => repair(excel, run),
    activeSheet: () => readActiveSheet(excel),
    namedRange: (name) => readNamedRange(excel, name),
    contents: () => readContents(excel),
    watch: (listener) => watchWorkbook(excel, listener),
    putPicture: (picture) => inPictureQueue(() => putPicture(excel, insertSvg, picture)),
    addSheets: async (plan) => {
      const before = await readBefore(excel);
      const undo = (): Promise<void> => deleteAdded(excel, plan, before);
      const built = await allOrNothing(async () => {
        await writePlan(excel, plan);
        const asBuilt = await readEnteredContents(excel, (sheet) =>
          plan.sheets.some(({ name }) => name === sheet),
        );
        await activate(excel, plan);
        return asBuilt;
      }, undo);
      return async () => {
        const now = await readEnteredContents(excel);
        refuseUndoAfterEdits(plan, built, now);
        refuseUndoOfLastSheets(plan, now.sheets.keys());
        await undo();
      };
    },
  };
};
