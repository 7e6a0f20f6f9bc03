import type { Cell } from "../../../shared/cell";
import type { Question } from "../problem";
import type { CellAddress } from "../../workbook/address";
import type { InputPrompt, PrintableSheet } from "../../workbook/printableSheet";
import { text } from "../../workbook/plan";
import { rowHeightsOf } from "../../workbook/rowHeights";
import { PAGE_COLUMNS, PaperRows } from "./paperRows";

const ROW_PX = 20;
const HEADING_PX = 24;
/** Room to write by hand. */
const ANSWER_PX = 30;
/** Rows to work in. */
const WORKING_ROWS = 16;
/** Typed text stays as it was typed: `6/12` doesn't become a date. */
const AS_TYPED = "@";

/** A problem's page, and where on it the answers are written. */
export interface ProblemSheet {
  readonly sheet: PrintableSheet;
  readonly answerPlaces: readonly CellAddress[];
}

/** A sheet's name takes at most 31 letters. */
export const problemSheetName = (number: number, { title }: Question): string =>
  `${number} ${title}`.slice(0, 31);

/**
 * The page of one problem. It is made of the question alone: what isn't in there can't be given away, by a formula, a hidden
 * cell or anything else.
 */
export const problemSheet = (number: number, question: Question, classLine: string): ProblemSheet => {
  const { title, words, givens, fields, figure } = question;
  const rows = new PaperRows();
  rows.line(`${number}  ${title}`, "title");
  rows.line(classLine, "note");
  rows.skip();
  rows.lines(words, "label");
  rows.skip();
  for (const given of givens) {
    rows.put(0, text(given.label), "label");
    rows.put(1, text(given.text), "total");
    rows.skip();
  }
  const drawing = figure && { at: { row: rows.row + 1, column: 0 }, figure };
  rows.skip(drawing ? 2 + Math.ceil(drawing.figure.height / ROW_PX) : 1);
  const headingRow = rows.row;
  rows.headings("Find", "Your answer", "Unit", "Write it as");
  const inputPrompts: InputPrompt[] = [];
  const answerPlaces = fields.map(({ label, unit, form, choices }) => {
    rows.put(0, text(label), "label");
    const at = rows.put(1, null, "input", { numberFormat: AS_TYPED, ...(choices && { choices }) });
    rows.put(2, text(unit), "centered");
    rows.put(3, text(form), "note");
    rows.skip();
    if (!choices)
      inputPrompts.push({
        at,
        title: unit === "" ? "Your answer" : `Your answer, in ${unit}`,
        prompt: `Write ${form}.`,
      });
    return at;
  });
  rows.skip();
  rows.line("Working", "section");
  rows.skip(WORKING_ROWS);
  rows.cautions();
  return {
    answerPlaces,
    sheet: {
      name: problemSheetName(number, question),
      cells: rows.cells,
      columnWidths: PAGE_COLUMNS,
      rowHeights: {
        ...rowHeightsOf(rows.cells),
        [headingRow]: HEADING_PX,
        ...Object.fromEntries(answerPlaces.map(({ row }) => [row, ANSWER_PX])),
      },
      print: "one page, portrait",
      frozenRows: 0,
      inputPrompts,
      ...(drawing && { drawing }),
    },
  };
};

/** Whether what was printed on a page still stands there; answers and working are the student's own. */
export const isAsPrinted = ({ sheet }: ProblemSheet, cellAt: (place: CellAddress) => Cell): boolean =>
  sheet.cells.every((cell) => cell.content?.kind !== "text" || (cellAt(cell) ?? "") === cell.content.text);
