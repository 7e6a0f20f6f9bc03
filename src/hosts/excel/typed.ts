import { a1 } from "../../sheets/address";
import type { Typed } from "../../sheets/builtSheets";
import type { ExcelEntry } from "./excelHost";

type Content = string | number | boolean;

const cellsOf = (used: Excel.Range): ReadonlyMap<string, Content> => {
  const cells = new Map<string, Content>();
  if (used.isNullObject) return cells;
  const { rowIndex, columnIndex } = used;
  (used.formulas as Content[][]).forEach((line, row) => {
    line.forEach((content, column) => {
      if (content !== "") cells.set(a1({ row: rowIndex + row, column: columnIndex + column }), content);
    });
  });
  return cells;
};

/** What was typed into every sheet. A cell that a formula spills into counts with what it shows: then more is refused. */
export const readTyped = (excel: ExcelEntry): Promise<Typed> =>
  excel.run(async (context) => {
    const { worksheets } = context.workbook;
    worksheets.load("items/name");
    await context.sync();
    const sheets = worksheets.items.map(({ name }) => ({
      name,
      used: worksheets.getItem(name).getUsedRangeOrNullObject(true),
    }));
    for (const { used } of sheets) used.load("formulas,rowIndex,columnIndex");
    await context.sync();
    return new Map(sheets.map(({ name, used }) => [name, cellsOf(used)] as const));
  });
