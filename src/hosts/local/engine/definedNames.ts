import type { Injector, Workbook } from "@univerjs/core";
import { IDefinedNamesService } from "@univerjs/engine-formula";
import type { BookName } from "../../../xlsx/book/book";

/** The engine's own way to say that a name is known everywhere. */
const WORKBOOK_SCOPE = "AllDefaultWorkbook";

/** The names that a workbook has, with what they stand for. */
export const definedNamesIn = (injector: Injector, workbook: Workbook): BookName[] =>
  Object.values(injector.get(IDefinedNamesService).getDefinedNameMap(workbook.getUnitId()) ?? {}).flatMap(
    ({ name, formulaOrRefString: target, localSheetId }): BookName[] => {
      if (!localSheetId || localSheetId === WORKBOOK_SCOPE) return [{ name, target }];
      // The engine keeps a sheet's own names when the sheet is gone.
      const sheet = workbook.getSheetBySheetId(localSheetId)?.getName();
      return sheet === undefined ? [] : [{ name, target, sheet }];
    },
  );
