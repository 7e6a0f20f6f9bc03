import type { Injector, Workbook } from "@univerjs/core";
import { IDefinedNamesService } from "@univerjs/engine-formula";
import type { BookName } from "../xlsx/book";

/** The engine's own way to say that a name is known everywhere. */
const EVERYWHERE = "AllDefaultWorkbook";

/** The names that a workbook has, with what they stand for. */
export const namesIn = (injector: Injector, workbook: Workbook): BookName[] =>
  Object.values(injector.get(IDefinedNamesService).getDefinedNameMap(workbook.getUnitId()) ?? {}).map(
    ({ name, formulaOrRefString, localSheetId }) => {
      const sheet =
        localSheetId && localSheetId !== EVERYWHERE
          ? workbook.getSheetBySheetId(localSheetId)?.getName()
          : undefined;
      return { name, target: formulaOrRefString, ...(sheet !== undefined && { sheet }) };
    },
  );
