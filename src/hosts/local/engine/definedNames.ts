import type { Injector, Workbook } from "@univerjs/core";
import { IDefinedNamesService } from "@univerjs/engine-formula";
import type { BookName } from "../../../xlsx/book/book";

/** The engine's id for the scope of the whole workbook. */
const WORKBOOK_SCOPE = "AllDefaultWorkbook";

/** A workbook's defined names and what they refer to. */
export const definedNamesIn = (injector: Injector, workbook: Workbook): BookName[] =>
  Object.values(injector.get(IDefinedNamesService).getDefinedNameMap(workbook.getUnitId()) ?? {}).flatMap(
    ({ name, formulaOrRefString: target, localSheetId }): BookName[] => {
      if (!localSheetId || localSheetId === WORKBOOK_SCOPE) return [{ name, target }];
      // The engine keeps a sheet's own names after the sheet is deleted.
      const sheet = workbook.getSheetBySheetId(localSheetId)?.getName();
      return sheet === undefined ? [] : [{ name, target, sheet }];
    },
  );
