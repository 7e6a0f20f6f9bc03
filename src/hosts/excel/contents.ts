import type { Contents, SheetContents } from "../../sheets/contents";
import type { ExcelEntry } from "./excelHost";
import { paddedBy, toCell, toFormula } from "./readSheet";

/** Every sheet, and what the names stand for, in two steps. */
export const readContents = (excel: ExcelEntry): Promise<Contents> =>
  excel.run(async (context) => {
    const { worksheets, names } = context.workbook;
    worksheets.load("items/name");
    names.load("items/name,items/formula");
    await context.sync();
    const sheets = worksheets.items.map(({ name }) => ({
      name,
      used: worksheets.getItem(name).getUsedRangeOrNullObject(true),
    }));
    for (const { used } of sheets) used.load("values,formulas,rowIndex,columnIndex");
    await context.sync();
    return {
      sheets: new Map(
        sheets.map(({ name, used }): [string, SheetContents] => {
          if (used.isNullObject) return [name, { cells: [], formulas: [] }];
          const { rowIndex, columnIndex, values, formulas } = used;
          return [
            name,
            {
              cells: paddedBy(rowIndex, columnIndex, values as unknown[][], toCell, null),
              formulas: paddedBy(rowIndex, columnIndex, formulas as unknown[][], toFormula, ""),
            },
          ];
        }),
      ),
      targets: new Map(names.items.map(({ name, formula }) => [name, String(formula).replace(/^=/, "")])),
    };
  });
