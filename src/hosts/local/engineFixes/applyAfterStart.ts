import type { Injector, Workbook } from "@univerjs/core";
import { skipDeletedSheets } from "./deletedSheetValidation";
import { editAtFullPrecision } from "./fullPrecisionEditing";
import { keepSuggestionsFresh } from "./functionSuggestions";
import { dropLateResults } from "./lateResults";
import { deleteSheetsCompletely } from "./sheetDeletion";
import { parseTypedNumbers } from "./typedNumbers";

/** Applies the fixes that the page's engine needs as soon as it holds a workbook. */
export const applyFixesAfterStart = (injector: Injector, workbook: Workbook): void => {
  parseTypedNumbers(injector, workbook);
  editAtFullPrecision(injector, workbook);
  keepSuggestionsFresh(injector);
  skipDeletedSheets(injector);
  dropLateResults(injector);
  deleteSheetsCompletely(injector, workbook);
};
