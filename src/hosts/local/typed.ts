import type { Workbook } from "@univerjs/core";
import { a1 } from "../../sheets/address";
import type { Typed } from "../../sheets/builtSheets";
import { fromCellData } from "./cells";

/** What was typed into every sheet; cells that a formula spills into hold nothing of their own. */
export const typedIn = (workbook: Workbook): Typed =>
  new Map(
    workbook.getSheets().map((sheet) => {
      const cells = new Map<string, string | number | boolean>();
      sheet.getCellMatrix().forValue((row, column, cell) => {
        const content = cell?.f || fromCellData(cell);
        if (content !== null && content !== "") cells.set(a1({ row, column }), content);
      });
      return [sheet.getName(), cells] as const;
    }),
  );
