import { a1, type Area } from "../../../workbook/address";
import { nameKey, type EnteredContent, type EnteredContents } from "../../../workbook/enteredContents";
import type { ExcelEntry } from "../ranges/excelEntry";
import { readLines } from "../ranges/readInPieces";
import { usedRanges } from "../ranges/usedRanges";

const cellsOf = (
  { from }: Area,
  lines: readonly (readonly unknown[])[],
): ReadonlyMap<string, EnteredContent> =>
  new Map(
    lines.flatMap((line, row) =>
      line.flatMap((content, column): [string, EnteredContent][] =>
        content === ""
          ? []
          : [[a1({ row: from.row + row, column: from.column + column }), content as EnteredContent]],
      ),
    ),
  );

const targetsOf = ({ items }: Excel.NamedItemCollection, sheet?: string): [string, string][] =>
  items.map(({ name, formula }) => [nameKey(name, sheet), String(formula)]);

/** The formulas and values entered in sheets. A spilled cell counts as its value, so that Undo refuses more rather than less. */
export const readEnteredContents = (
  excel: ExcelEntry,
  isAsked: (sheet: string) => boolean = () => true,
): Promise<EnteredContents> =>
  excel.run(async (context) => {
    const { worksheets, names } = context.workbook;
    worksheets.load("items/name");
    names.load("items/name,items/formula");
    await context.sync();
    const asked = worksheets.items.filter(({ name }) => isAsked(name));
    const blocks = await usedRanges(context, asked);
    for (const sheet of worksheets.items) sheet.names.load("items/name,items/formula");
    const read = await readLines(context, blocks, "formulas");
    await context.sync();
    const sheets = new Map<string, ReadonlyMap<string, EnteredContent>>(
      asked.map(({ name }) => [name, new Map()]),
    );
    for (const [index, { name, area }] of blocks.entries())
      sheets.set(name, cellsOf(area, read[index] ?? []));
    return {
      sheets,
      names: new Map([
        ...targetsOf(names),
        ...worksheets.items.flatMap((sheet) => targetsOf(sheet.names, sheet.name)),
      ]),
    };
  });
