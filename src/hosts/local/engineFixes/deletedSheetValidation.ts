import { IUniverInstanceService, UniverInstanceType, type Injector, type Workbook } from "@univerjs/core";
import { SheetsDataValidationValidatorService } from "@univerjs/sheets-data-validation";

/**
 * The engine validates the drop-down lists of inactive sheets while the browser is idle, and throws if a sheet has been deleted by
 * then, as Undo of a takeoff does on a busy machine. With the fix, a deleted sheet has no cells to validate.
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
