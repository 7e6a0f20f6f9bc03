import type { Injector, Workbook } from "@univerjs/core";
import { a1 } from "../../../workbook/address";
import { nameKey, type EnteredContent, type EnteredContents } from "../../../workbook/enteredContents";
import { fromCellData } from "../engine/cellData";
import { definedNamesIn } from "../engine/definedNames";
import { formulaAt } from "./survey";

/** Every cell's formula or value as entered. A cell that a formula spills into has none of its own. */
export const readEnteredContents = (injector: Injector, workbook: Workbook): EnteredContents => ({
  sheets: new Map(
    workbook.getSheets().map((sheet) => {
      const cells = new Map<string, EnteredContent>();
      sheet.getCellMatrix().forValue((row, column, cell) => {
        const content = formulaAt(injector, sheet, row, column) || fromCellData(cell);
        if (content !== null && content !== "") cells.set(a1({ row, column }), content);
      });
      return [sheet.getName(), cells] as const;
    }),
  ),
  names: new Map(
    definedNamesIn(injector, workbook).map(({ name, sheet, target }) => [nameKey(name, sheet), target]),
  ),
});
