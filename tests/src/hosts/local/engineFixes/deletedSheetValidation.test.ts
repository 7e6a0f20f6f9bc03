import { SheetsDataValidationValidatorService } from "@univerjs/sheets-data-validation";
import { skipDeletedSheets } from "../../../../../src/hosts/local/engineFixes/deletedSheetValidation";
import { text } from "../../../../../src/workbook/plan";
import { openedUniver } from "../openedUniver";

const RANGE = { startRow: 0, endRow: 0, startColumn: 0, endColumn: 0 };

// When the first half fails, a newer engine no longer needs goneSheets.ts: take it out.
it("drop-downs of a sheet that is gone are passed over; those of another are still looked through", async () => {
  const cells = [{ row: 0, column: 0, content: text("hip"), choices: ["hip", "gable"] }];
  const sheets = [{ name: "Bid", cells, columnWidths: [], rowHeights: {}, frozenRows: 0 }];
  const { univer, injector } = openedUniver(sheets);
  const service = injector.get(SheetsDataValidationValidatorService);
  await expect(service.validatorRanges("bid", "gone", [RANGE])).rejects.toThrow(
    "cannot find current worksheet",
  );

  skipDeletedSheets(injector);
  expect(await service.validatorRanges("bid", "gone", [RANGE])).toEqual([]);
  expect(await service.validatorRanges("bid", "sheet-1", [RANGE])).toEqual([["valid"]]);
  univer.dispose();
});
