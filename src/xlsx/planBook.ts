import type { IStyleData } from "@univerjs/core";
import type { PrintableSheet } from "../workbook/printableSheet";
import { a1 } from "../workbook/address";
import type { PlannedCell } from "../workbook/plan";
import { styleData } from "../workbook/styleData";
import type { Book, BookCell, BookSheet, DropDown } from "./book/book";

const contentOf = ({ content }: PlannedCell): Pick<BookCell, "value" | "formula"> => {
  switch (content?.kind) {
    case "text":
      return { value: content.text };
    case "number":
      return { value: content.number };
    case "formula":
      return { value: content.result ?? null, formula: content.formula };
    case undefined:
      return { value: null };
  }
};

const dropDownsOf = (cells: readonly PlannedCell[]): DropDown[] =>
  cells.flatMap((cell) => (cell.choices ? [{ ranges: [a1(cell)], choices: cell.choices }] : []));

const sizes = (pixels: Readonly<Record<number, number>>) =>
  new Map(Object.entries(pixels).map(([index, sizePx]) => [Number(index), { sizePx }]));

/** A book of new sheets, made without the engine. Formulas show the results that the plan gives. */
export const planBook = (sheets: readonly PrintableSheet[]): Book => {
  const styles = new Map<string, IStyleData>();
  const styleOf = ({ style, numberFormat }: PlannedCell): { style?: string } => {
    if (style === undefined && numberFormat === undefined) return {};
    const key = `${style ?? ""} ${numberFormat ?? ""}`;
    if (!styles.has(key)) styles.set(key, styleData(style, numberFormat));
    return { style: key };
  };
  const sheetOf = (sheet: PrintableSheet): BookSheet => {
    const cells = new Map<number, Map<number, BookCell>>();
    for (const cell of sheet.cells) {
      const row = cells.get(cell.row) ?? new Map<number, BookCell>();
      cells.set(cell.row, row);
      row.set(cell.column, { ...contentOf(cell), ...styleOf(cell) });
    }
    return {
      name: sheet.name,
      isHidden: false,
      cells,
      rows: sizes(sheet.rowHeights),
      columns: sizes({ ...sheet.columnWidths }),
      merges: [],
      frozen: { rows: sheet.frozenRows, columns: 0 },
      dropDowns: dropDownsOf(sheet.cells),
      ...(sheet.print && { print: sheet.print }),
      entries: sheet.inputPrompts,
      ...(sheet.pageBreaksBefore && { breaksBefore: sheet.pageBreaksBefore }),
      ...(sheet.drawing && { drawing: sheet.drawing }),
    };
  };
  return { sheets: sheets.map(sheetOf), names: [], styles };
};
