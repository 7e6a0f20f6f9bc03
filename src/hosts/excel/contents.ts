import type { Contents, SheetContents } from "../../sheets/contents";
import type { ExcelEntry } from "./excelHost";
import { readInPieces } from "./readInPieces";
import { paddedBy, toCell, toFormula } from "./readSheet";
import { usedBlocks } from "./usedBlocks";

/** What the cells of a line show, and what was typed into them. */
interface Line {
  readonly values: readonly unknown[];
  readonly formulas: readonly unknown[];
}

const BLANK: SheetContents = { cells: [], formulas: [] };

/** Every sheet, and what the names stand for. */
export const readContents = (excel: ExcelEntry): Promise<Contents> =>
  excel.run(async (context) => {
    const { worksheets, names } = context.workbook;
    worksheets.load("items/name");
    names.load("items/name,items/formula");
    await context.sync();
    const blocks = await usedBlocks(context, worksheets.items);
    const read = await readInPieces(
      context,
      blocks,
      (range) => {
        range.load("values,formulas");
        return range;
      },
      ({ values, formulas }): Line[] =>
        values.map((line: unknown[], row) => ({
          values: line,
          formulas: (formulas[row] ?? []) as unknown[],
        })),
    );
    const sheets = new Map(worksheets.items.map(({ name }) => [name, BLANK]));
    for (const [index, { name, area }] of blocks.entries()) {
      const lines = read[index] ?? [];
      sheets.set(name, {
        cells: paddedBy(
          area.from,
          lines.map(({ values }) => values),
          toCell,
          null,
        ),
        formulas: paddedBy(
          area.from,
          lines.map(({ formulas }) => formulas),
          toFormula,
          "",
        ),
      });
    }
    return {
      sheets,
      targets: new Map(names.items.map(({ name, formula }) => [name, String(formula).replace(/^=/, "")])),
    };
  });
