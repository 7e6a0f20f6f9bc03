import type { Contents, SheetContents } from "../../../workbook/contents";
import type { ExcelEntry } from "../ranges/excelEntry";
import { readInPieces } from "../ranges/readInPieces";
import { linesOf, sheetContents } from "./readSheet";
import { usedRanges } from "../ranges/usedRanges";

const BLANK: SheetContents = { cells: [], formulas: [] };

/** Every sheet, and what the defined names refer to. */
export const readContents = (excel: ExcelEntry): Promise<Contents> =>
  excel.run(async (context) => {
    const { worksheets, names } = context.workbook;
    worksheets.load("items/name");
    names.load("items/name,items/formula");
    await context.sync();
    const blocks = await usedRanges(context, worksheets.items);
    const read = await readInPieces(
      context,
      blocks,
      (range) => {
        range.load("values,formulas");
        return range;
      },
      linesOf,
    );
    const sheets = new Map(worksheets.items.map(({ name }) => [name, BLANK]));
    for (const [index, { name, area }] of blocks.entries())
      sheets.set(name, sheetContents(area.from, read[index] ?? []));
    return {
      sheets,
      targets: new Map(names.items.map(({ name, formula }) => [name, String(formula).replace(/^=/, "")])),
    };
  });
