import { IUniverInstanceService, UniverInstanceType, type Injector, type Workbook } from "@univerjs/core";
import { SheetsDataValidationValidatorService } from "@univerjs/sheets-data-validation";

/**
 * The engine looks through the drop-downs of a sheet that isn't in front when the browser is idle, and throws where the sheet was
 * taken away by then, as Undo of a takeoff does on a busy machine. So a sheet that is gone has nothing to look through.
 */
export const skipDeletedSheets = (injector: Injector): void => {
  const units = injector.get(IUniverInstanceService);
  const service = injector.get(SheetsDataValidationValidatorService);
  const validate = service.validatorRanges.bind(service);
  service.validatorRanges = (unitId, sheetId, ranges) =>
    units.getUnit<Workbook>(unitId, UniverInstanceType.UNIVER_SHEET)?.getSheetBySheetId(sheetId)
      ? validate(unitId, sheetId, ranges)
      : Promise.resolve([]);
};
