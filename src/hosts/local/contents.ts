import type { Injector, Workbook } from "@univerjs/core";
import type { Contents } from "../../sheets/contents";
import { namesIn } from "./names";
import { readWhole, type ReadCell } from "./readSheet";
import { formulaAt } from "./survey";

/** Every sheet, and what the names stand for. */
export const readContents = (injector: Injector, workbook: Workbook, read: ReadCell): Contents => ({
  sheets: new Map(
    workbook.getSheets().map((sheet) => {
      const cells = readWhole(injector, sheet, read);
      const formulas = cells.map((line, row) =>
        line.map((_, column) => formulaAt(injector, sheet, row, column)),
      );
      return [sheet.getName(), { cells, formulas }] as const;
    }),
  ),
  targets: new Map(namesIn(injector, workbook).map(({ name, target }) => [name, target])),
});
