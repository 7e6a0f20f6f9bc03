import "@univerjs/design/lib/index.css";
import "@univerjs/ui/lib/index.css";
import "@univerjs/docs-ui/lib/index.css";
import "@univerjs/sheets-ui/lib/index.css";
import "@univerjs/sheets-formula-ui/lib/index.css";
import "@univerjs/sheets-data-validation-ui/lib/index.css";
import "@univerjs/drawing-ui/lib/index.css";
import "@univerjs/sheets-drawing-ui/lib/index.css";
import {
  LocaleType,
  LogLevel,
  Univer,
  UniverInstanceType,
  mergeLocales,
  type IWorkbookData,
  type Workbook,
} from "@univerjs/core";
import DesignEnUS from "@univerjs/design/locale/en-US";
import { UniverDocsPlugin } from "@univerjs/docs";
import { UniverDocsUIPlugin } from "@univerjs/docs-ui";
import DocsUIEnUS from "@univerjs/docs-ui/locale/en-US";
import { UniverFormulaEnginePlugin } from "@univerjs/engine-formula";
import { UniverRenderEnginePlugin } from "@univerjs/engine-render";
import { UniverSheetsPlugin } from "@univerjs/sheets";
import SheetsEnUS from "@univerjs/sheets/locale/en-US";
import { UniverDataValidationPlugin } from "@univerjs/data-validation";
import { UniverDocsDrawingPlugin } from "@univerjs/docs-drawing";
import { UniverDrawingPlugin } from "@univerjs/drawing";
import { UniverDrawingUIPlugin } from "@univerjs/drawing-ui";
import DrawingUIEnUS from "@univerjs/drawing-ui/locale/en-US";
import { UniverSheetsDrawingPlugin } from "@univerjs/sheets-drawing";
import { UniverSheetsDrawingUIPlugin } from "@univerjs/sheets-drawing-ui";
import SheetsDrawingUIEnUS from "@univerjs/sheets-drawing-ui/locale/en-US";
import { UniverSheetsDataValidationPlugin } from "@univerjs/sheets-data-validation";
import { UniverSheetsDataValidationUIPlugin } from "@univerjs/sheets-data-validation-ui";
import DataValidationUIEnUS from "@univerjs/sheets-data-validation-ui/locale/en-US";
import DataValidationEnUS from "@univerjs/sheets-data-validation/locale/en-US";
import { CalculationMode, UniverSheetsFormulaPlugin } from "@univerjs/sheets-formula";
import SheetsFormulaEnUS from "@univerjs/sheets-formula/locale/en-US";
import { UniverSheetsFormulaUIPlugin } from "@univerjs/sheets-formula-ui";
import SheetsFormulaUIEnUS from "@univerjs/sheets-formula-ui/locale/en-US";
import { UniverSheetsNumfmtPlugin } from "@univerjs/sheets-numfmt";
import { UniverSheetsUIPlugin } from "@univerjs/sheets-ui";
import SheetsUIEnUS from "@univerjs/sheets-ui/locale/en-US";
import { defaultTheme } from "@univerjs/themes";
import { UniverUIPlugin } from "@univerjs/ui";
import UIEnUS from "@univerjs/ui/locale/en-US";
import { editAtFullPrecision } from "../engineFixes/fullPrecisionEditing";
import { functionClasses, functionDescriptions } from "../formulas/engineFunctions";
import type { CustomFunction } from "../formulas/customFunction";
import { recordErrorMessages } from "../formulas/errorMessageRuntime";
import { ErrorMessages } from "../engine/errorMessages";
import { applyEngineFixes } from "../engineFixes/applyEngineFixes";
import { describePictures } from "../pictures/pictureDescriptions";
import { keepSuggestionsFresh } from "../engineFixes/functionSuggestions";
import { registerTables } from "../formulas/fileTables";
import { parseTypedNumbers } from "../engineFixes/typedNumbers";
import { openWorkbook, type PageWorkbook } from "../workbook/pageWorkbook";

const locale = mergeLocales(
  DesignEnUS,
  UIEnUS,
  DocsUIEnUS,
  SheetsEnUS,
  SheetsUIEnUS,
  SheetsFormulaEnUS,
  SheetsFormulaUIEnUS,
  DataValidationEnUS,
  DataValidationUIEnUS,
  DrawingUIEnUS,
  SheetsDrawingUIEnUS,
);

/** Puts a workbook into an element of the page, with the catalog's functions in it. */
export const showWorkbook = (
  container: HTMLElement,
  catalog: readonly CustomFunction[],
  snapshot: Partial<IWorkbookData>,
  dark = false,
): PageWorkbook => {
  applyEngineFixes();
  const errorMessages = new ErrorMessages();
  const univer = new Univer({
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: locale },
    logLevel: LogLevel.ERROR,
    theme: defaultTheme,
    darkMode: dark,
  });
  univer.registerPlugins([
    [UniverDocsPlugin],
    [UniverRenderEnginePlugin],
    [UniverUIPlugin, { container, header: true, toolbar: true, contextMenu: true }],
    [UniverDocsUIPlugin],
    [UniverFormulaEnginePlugin, { function: functionClasses(catalog, errorMessages) }],
    [UniverSheetsPlugin],
    [UniverSheetsUIPlugin],
    [UniverSheetsNumfmtPlugin],
    // Results kept in the snapshot have no sentences with them: calculate everything once.
    [
      UniverSheetsFormulaPlugin,
      { description: functionDescriptions(catalog), initialFormulaComputing: CalculationMode.FORCED },
    ],
    [UniverSheetsFormulaUIPlugin],
    [UniverDataValidationPlugin],
    [UniverSheetsDataValidationPlugin],
    // Its search box would take the focus from a person who is typing into the cell already.
    [UniverSheetsDataValidationUIPlugin, { showSearchOnDropdown: false }],
    [UniverDocsDrawingPlugin],
    [UniverDrawingPlugin],
    [UniverDrawingUIPlugin],
    [UniverSheetsDrawingPlugin],
    [UniverSheetsDrawingUIPlugin],
  ]);
  const injector = univer.__getInjector();
  recordErrorMessages(injector, errorMessages);
  registerTables(injector, snapshot);
  const workbook = univer.createUnit<IWorkbookData, Workbook>(UniverInstanceType.UNIVER_SHEET, snapshot);
  parseTypedNumbers(injector, workbook);
  describePictures(injector, workbook, container);
  editAtFullPrecision(injector, workbook);
  keepSuggestionsFresh(injector);
  const page = openWorkbook(injector, workbook, errorMessages, () => {
    univer.dispose();
    container.removeAttribute("aria-description");
    delete container.dataset["grid"];
    delete container.dataset["calculatedAt"];
  });
  void page.painted.then(() => {
    container.dataset["grid"] = "painted";
    performance.mark("grid-painted");
  });
  page.onCalculated(() => {
    container.dataset["calculatedAt"] = String(performance.now());
  });
  return page;
};
