import { a1 } from "../../sheets/address";
import { nameKey, type Content, type Standing } from "../../sheets/builtSheets";
import type { ExcelEntry } from "./excelHost";

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

const targetsOf = ({ items }: Excel.NamedItemCollection, sheet?: string): [string, string][] =>
  items.map(({ name, formula }) => [nameKey(name, sheet), String(formula)]);

/** What was typed. A cell that a formula spills into counts with what it shows: then more is refused. */
export const readStanding = (excel: ExcelEntry): Promise<Standing> =>
  excel.run(async (context) => {
    const { worksheets, names } = context.workbook;
    worksheets.load("items/name");
    names.load("items/name,items/formula");
    await context.sync();
    const sheets = worksheets.items.map((sheet) => ({
      sheet,
      used: sheet.getUsedRangeOrNullObject(true),
    }));
    for (const { sheet, used } of sheets) {
      used.load("formulas,rowIndex,columnIndex");
      sheet.names.load("items/name,items/formula");
    }
    await context.sync();
    return {
      sheets: new Map(sheets.map(({ sheet, used }) => [sheet.name, cellsOf(used)] as const)),
      names: new Map([
        ...targetsOf(names),
        ...sheets.flatMap(({ sheet }) => targetsOf(sheet.names, sheet.name)),
      ]),
    };
  });
