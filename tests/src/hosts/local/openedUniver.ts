import {
  LocaleType,
  LogLevel,
  Univer,
  UniverInstanceType,
  type IWorkbookData,
  type Injector,
  type Workbook,
} from "@univerjs/core";
import { UniverDataValidationPlugin } from "@univerjs/data-validation";
import { UniverFormulaEnginePlugin } from "@univerjs/engine-formula";
import { UniverSheetsPlugin } from "@univerjs/sheets";
import { UniverSheetsDataValidationPlugin } from "@univerjs/sheets-data-validation";
import { UniverSheetsFormulaPlugin } from "@univerjs/sheets-formula";
import { UniverSheetsNumfmtPlugin } from "@univerjs/sheets-numfmt";
import { workbookData } from "../../../../src/hosts/local/engine/planSnapshot";
import type { SheetPlan } from "../../../../src/workbook/plan";

interface Opened {
  readonly univer: Univer;
  readonly workbook: Workbook;
  readonly injector: Injector;
}

/** The page's engine without its grid, with a workbook; `prepare` runs before the workbook is created. */
export const openedSnapshot = (
  snapshot: Partial<IWorkbookData>,
  prepare: (injector: Injector) => void = () => undefined,
): Opened => {
  const univer = new Univer({
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: {} },
    logLevel: LogLevel.SILENT,
  });
  univer.registerPlugins([
    [UniverFormulaEnginePlugin],
    [UniverSheetsPlugin],
    [UniverSheetsNumfmtPlugin],
    [UniverSheetsFormulaPlugin],
    [UniverDataValidationPlugin],
    [UniverSheetsDataValidationPlugin],
  ]);
  const injector = univer.__getInjector();
  prepare(injector);
  const workbook = univer.createUnit<IWorkbookData, Workbook>(UniverInstanceType.UNIVER_SHEET, snapshot);
  return { univer, workbook, injector };
};

/** The same with a workbook "bid" of these sheets, with their drop-down lists. */
export const openedUniver = (sheets: readonly SheetPlan[]): Opened =>
  openedSnapshot(workbookData("bid", { sheets, names: [] }));
