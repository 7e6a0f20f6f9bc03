import type { Cell } from "../../../shared/cell";
import { InputError } from "../../../shared/inputError";
import type { Book, BookSheet } from "../../xlsx/book/book";
import type { CellAddress } from "../../workbook/address";
import { classLine } from "../class/classLine";
import { problemsOf } from "../class/practiceClass";
import { isAnswerKeySheet } from "../sheets/answerKeySheet";
import { NAME_ADDRESS, START_SHEET } from "../sheets/studentSheets";
import type { Submission } from "./markStudent";
import { answersOnPage, problemNumberOn, versionOfPage, type CellAt } from "./problemPage";
import { versionOn } from "./studentWorkbook";

const readerOf =
  (sheet: BookSheet): CellAt =>
  ({ row, column }: CellAddress): Cell =>
    sheet.cells.get(row)?.get(column)?.value ?? null;

function* valuesOn(sheet: BookSheet): Generator<Cell, void> {
  for (const row of sheet.cells.values()) for (const { value } of row.values()) yield value;
}

const isAnswerKey = ({ sheets }: Pick<Book, "sheets">): boolean =>
  sheets.some((sheet) => isAnswerKeySheet(sheet.name) && versionOn(valuesOn(sheet)) !== undefined);

/**
 * A student's answers from a file. The problems are made again from the class line on its first sheet, so no answer key is
 * needed, and a changed page is found. `fileName` is used where the student wrote no name.
 */
export const readStudentFile = (book: Pick<Book, "sheets">, fileName: string): Submission => {
  const start = book.sheets.find(({ name }) => name === START_SHEET);
  const version = start && versionOn(valuesOn(start));
  if (!version && isAnswerKey(book))
    throw new InputError(`${fileName} is an answer key: pick the files that students turned in.`);
  if (!version)
    throw new InputError(
      `${fileName} isn't a practice workbook: its sheet "${START_SHEET}" has no line that names the class.`,
    );
  const line = classLine(version);
  const pages = new Map<number | undefined, CellAt>();
  for (const cellAt of book.sheets.map(readerOf)) {
    const ofPage = versionOfPage(cellAt);
    const number = problemNumberOn(cellAt);
    if (ofPage && classLine(ofPage) === line && !pages.has(number)) pages.set(number, cellAt);
  }
  const problems = problemsOf(version);
  const answers = problems.map(({ question }, index) => {
    const cellAt = pages.get(index + 1);
    return cellAt && answersOnPage(cellAt, question)?.map(cellAt);
  });
  const name = String(readerOf(start)(NAME_ADDRESS) ?? "").trim();
  return {
    name: name === "" ? fileName : name,
    version,
    problems,
    answers: answers.map((onPage) => onPage ?? []),
    alteredProblems: answers.flatMap((onPage, index) => (onPage ? [] : [index + 1])),
  };
};
