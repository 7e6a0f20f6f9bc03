import type { CellAddress } from "../../workbook/address";
import type { InputPrompt, PrintableSheet } from "../../workbook/printableSheet";
import { text } from "../../workbook/plan";
import { rowHeightsOf } from "../../workbook/rowHeights";
import type { Question } from "../topic";
import { PAGE_COLUMNS, PageRows } from "./pageRows";

const ROW_PX = 20;
const HEADING_PX = 24;
/** Room to write by hand. */
const ANSWER_PX = 30;
const WORK_ROWS = 16;
/** Typed text stays as typed: `6/12` doesn't become a date. */
const AS_TYPED = "@";

/** Heads the column of answers. Marking looks for it, so it never changes. */
export const ANSWER_HEADING = "Your answer";

/** A problem's page, and the cells for its answers. */
export interface ProblemSheet {
  readonly sheet: PrintableSheet;
  readonly answerPlaces: readonly CellAddress[];
}

const MAX_SHEET_NAME = 31;

export const problemSheetName = (number: number, { title }: Question): string =>
  `${number} ${title}`.slice(0, MAX_SHEET_NAME);

/**
 * One problem's page. It is made from the question alone: what isn't in the question can't be given away by a formula, a hidden
 * cell or anything else.
 */
export const problemSheet = (number: number, question: Question, classLine: string): ProblemSheet => {
  const { title, text: questionText, givens, fields, figure } = question;
  const rows = new PageRows();
  rows.line(`${number}  ${title}`, "title");
  rows.line(classLine, "note");
  rows.skip();
  rows.paragraph(questionText, "label");
  rows.skip();
  for (const given of givens) {
    rows.put(0, text(given.label), "label");
    rows.put(1, text(given.text), "total");
    rows.skip();
  }
  const drawing = figure && { at: { row: rows.row + 1, column: 0 }, figure };
  rows.skip(drawing ? 2 + Math.ceil(drawing.figure.height / ROW_PX) : 1);
  const headingRow = rows.row;
  rows.headings("Find", ANSWER_HEADING, "Unit", "Write it as");
  const inputPrompts: InputPrompt[] = [];
  const answerPlaces = fields.map(({ label, unit, format, choices }) => {
    rows.put(0, text(label), "label");
    const at = rows.put(1, null, "input", { numberFormat: AS_TYPED, ...(choices && { choices }) });
    rows.put(2, text(unit), "centered");
    rows.put(3, text(format), "note");
    rows.skip();
    if (!choices)
      inputPrompts.push({
        at,
        title: unit === "" ? ANSWER_HEADING : `${ANSWER_HEADING}, in ${unit}`,
        prompt: `Write ${format}.`,
      });
    return at;
  });
  rows.skip();
  rows.line("Show your work", "section");
  rows.skip(WORK_ROWS);
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
