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
import { functionClasses, functionDescriptions } from "../formulas/engineFunctions";
import type { CustomFunction } from "../formulas/customFunction";
import { recordErrorMessages } from "../formulas/errorMessageRuntime";
import { ErrorMessages } from "../engine/errorMessages";
import { applyFixesAfterStart } from "../engineFixes/applyAfterStart";
import { applyFixesBeforeStart } from "../engineFixes/applyBeforeStart";
import { describePictures } from "../pictures/pictureDescriptions";
import { registerTables } from "../formulas/fileTables";
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

/** Shows a workbook in an element of the page, with the catalog's functions. */
export const showWorkbook = (
  container: HTMLElement,
  catalog: readonly CustomFunction[],
  snapshot: Partial<IWorkbookData>,
  dark = false,
): PageWorkbook => {
  applyFixesBeforeStart();
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
    // Results stored in the snapshot have no error messages, so everything is calculated once.
    [
      UniverSheetsFormulaPlugin,
      { description: functionDescriptions(catalog), initialFormulaComputing: CalculationMode.FORCED },
    ],
    [UniverSheetsFormulaUIPlugin],
    [UniverDataValidationPlugin],
    [UniverSheetsDataValidationPlugin],
    // The list's search box would take the focus from someone who is already typing into the cell.
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
  applyFixesAfterStart(injector, workbook);
  describePictures(injector, workbook, container);
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
