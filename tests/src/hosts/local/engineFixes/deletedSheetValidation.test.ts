import { SheetsDataValidationValidatorService } from "@univerjs/sheets-data-validation";
import { skipDeletedSheets } from "../../../../../src/hosts/local/engineFixes/deletedSheetValidation";
import { text } from "../../../../../src/workbook/plan";
import { openedUniver } from "../openedUniver";

const RANGE = { startRow: 0, endRow: 0, startColumn: 0, endColumn: 0 };

const openedBid = () => {
  const cells = [{ row: 0, column: 0, content: text("hip"), choices: ["hip", "gable"] }];
  const sheets = [{ name: "Bid", cells, columnWidths: [], rowHeights: {}, frozenRows: 0 }];
  const { univer, injector } = openedUniver(sheets);
  return { univer, injector, service: injector.get(SheetsDataValidationValidatorService) };
};

test("the lists of a deleted sheet are skipped; those of another sheet are still validated", async () => {
  const { univer, injector, service } = openedBid();
  skipDeletedSheets(injector);
  expect(await service.validatorRanges("bid", "gone", [RANGE])).toEqual([]);
  expect(await service.validatorRanges("bid", "sheet-1", [RANGE])).toEqual([["valid"]]);
  univer.dispose();
});

test("without the fix, validating a deleted sheet fails", async () => {
  const { univer, service } = openedBid();
  await expect(service.validatorRanges("bid", "gone", [RANGE])).rejects.toThrow(
    "cannot find current worksheet",
  );
  univer.dispose();
});
