import type { Cell } from "../../../shared/cell";
import { InputError } from "../../../shared/inputError";
import type { Book, BookSheet } from "../../xlsx/book/book";
import type { CellAddress } from "../../workbook/address";
import { isKeySheet } from "../sheets/keySheet";
import { isAsPrinted, type ProblemSheet } from "../sheets/problemSheet";
import { START_SHEET, studentSheets } from "../sheets/studentSheets";
import { problemsOf } from "../class/practiceClass";
import { versionOn } from "./startPage";
import type { HandedIn } from "./student";

const cellAt = (sheet: BookSheet | undefined, { row, column }: CellAddress): Cell =>
  sheet?.cells.get(row)?.get(column)?.value ?? null;

function* valuesOn(sheet: BookSheet): Generator<Cell, void> {
  for (const row of sheet.cells.values()) for (const { value } of row.values()) yield value;
}

const isKey = ({ sheets }: Pick<Book, "sheets">): boolean =>
  sheets.some((sheet) => isKeySheet(sheet.name) && versionOn(valuesOn(sheet)) !== undefined);

/**
 * What stands in a student's file. The problems are made again from the line that is printed on its first page, so no key is
 * needed, and a page that was changed is found. `fileName` stands for a name that wasn't written.
 */
export const readStudentFile = (book: Pick<Book, "sheets">, fileName: string): HandedIn => {
  const start = book.sheets.find(({ name }) => name === START_SHEET);
  const version = start && versionOn(valuesOn(start));
  if (!version && isKey(book))
    throw new InputError(`${fileName} is a class's key: give the files that students handed in.`);
  if (!version)
    throw new InputError(
      `${fileName} is no practice workbook: its sheet "${START_SHEET}" has no line that says which class it is.`,
    );
  const problems = problemsOf(version);
  const pages = studentSheets(
    problems.map(({ question }) => question),
    version,
  );
  const name = String(cellAt(start, pages.start.namePlace) ?? "").trim();
  const sheetOf = ({ sheet }: ProblemSheet): BookSheet | undefined =>
    book.sheets.find((each) => each.name === sheet.name);
  return {
    name: name === "" ? fileName : name,
    version,
    problems,
    typed: pages.problems.map((page) => page.answerPlaces.map((place) => cellAt(sheetOf(page), place))),
    altered: pages.problems.flatMap((page, index) =>
      isAsPrinted(page, (place) => cellAt(sheetOf(page), place)) ? [] : [index + 1],
    ),
  };
};
