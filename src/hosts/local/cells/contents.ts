import type { Injector, Workbook, Worksheet } from "@univerjs/core";
import type { Contents, SheetContents } from "../../../workbook/contents";
import { definedNamesIn } from "../engine/definedNames";
import { readWhole, type ReadCell } from "./readSheet";
import { formulaAt } from "./survey";

export const readSheetContents = (injector: Injector, sheet: Worksheet, read: ReadCell): SheetContents => {
  const cells = readWhole(injector, sheet, read);
  const formulas = cells.map((line, row) => line.map((_, column) => formulaAt(injector, sheet, row, column)));
  return { cells, formulas };
};

/** Every sheet's values and formulas, and what the defined names refer to. */
export const readContents = (injector: Injector, workbook: Workbook, read: ReadCell): Contents => ({
  sheets: new Map(
    workbook.getSheets().map((sheet) => [sheet.getName(), readSheetContents(injector, sheet, read)] as const),
  ),
  targets: new Map(definedNamesIn(injector, workbook).map(({ name, target }) => [name, target])),
});
