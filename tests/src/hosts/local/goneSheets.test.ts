import {
  LocaleType,
  LogLevel,
  Univer,
  UniverInstanceType,
  type IWorkbookData,
  type Workbook,
} from "@univerjs/core";
import { UniverDataValidationPlugin } from "@univerjs/data-validation";
import { UniverFormulaEnginePlugin } from "@univerjs/engine-formula";
import { UniverSheetsPlugin } from "@univerjs/sheets";
import {
  SheetsDataValidationValidatorService,
  UniverSheetsDataValidationPlugin,
} from "@univerjs/sheets-data-validation";
import { UniverSheetsFormulaPlugin } from "@univerjs/sheets-formula";
import { passOverGoneSheets } from "../../../../src/hosts/local/goneSheets";
import { workbookData } from "../../../../src/hosts/local/snapshot";
import { text } from "../../../../src/sheets/plan";

const RANGE = { startRow: 0, endRow: 0, startColumn: 0, endColumn: 0 };

// When the first half fails, a newer engine no longer needs goneSheets.ts: take it out.
it("drop-downs of a sheet that is gone are passed over; those of another are still looked through", async () => {
  const univer = new Univer({
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: {} },
    logLevel: LogLevel.SILENT,
  });
  univer.registerPlugins([
    [UniverFormulaEnginePlugin],
    [UniverSheetsPlugin],
    [UniverSheetsFormulaPlugin],
    [UniverDataValidationPlugin],
    [UniverSheetsDataValidationPlugin],
  ]);
  const cells = [{ row: 0, column: 0, content: text("hip"), choices: ["hip", "gable"] }];
  const sheets = [{ name: "Bid", cells, columnWidths: [], rowHeights: {}, frozenRows: 0 }];
  univer.createUnit<IWorkbookData, Workbook>(
    UniverInstanceType.UNIVER_SHEET,
    workbookData("bid", { sheets, names: [] }),
  );
  const injector = univer.__getInjector();
  const service = injector.get(SheetsDataValidationValidatorService);
  await expect(service.validatorRanges("bid", "gone", [RANGE])).rejects.toThrow(
    "cannot find current worksheet",
  );

  passOverGoneSheets(injector);
  expect(await service.validatorRanges("bid", "gone", [RANGE])).toEqual([]);
  expect(await service.validatorRanges("bid", "sheet-1", [RANGE])).toEqual([["valid"]]);
  univer.dispose();
});
