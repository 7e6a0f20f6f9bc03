import { planBook } from "../../xlsx/planBook";
import { saveXlsx } from "../../xlsx/xlsxFile";
import type { PrintableSheet } from "../../workbook/printableSheet";
import { classLine } from "../class/classLine";
import { checkClass, fileTitle, versionLetters, versionsOf, type ClassOptions } from "../class/classOptions";
import { problemsOf } from "../class/practiceClass";
import { answerKeySheet } from "../sheets/answerKeySheet";
import { coursePlanSheet } from "../sheets/coursePlanSheet";
import { sheetsOf, studentSheets } from "../sheets/studentSheets";

export interface NamedFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

const fileOf = (name: string, sheets: readonly PrintableSheet[]): NamedFile => ({
  name: `${name}.xlsx`,
  bytes: saveXlsx(undefined, planBook(sheets)),
});

/** How many files a class has: one per version, and the answer key. */
export const fileCount = ({ versions }: ClassOptions): number => versions + 1;

/** A class's files one by one, the answer key last: the caller can show progress and stop. */
export function* practiceFiles(options: ClassOptions): Generator<NamedFile, void> {
  checkClass(options);
  const title = fileTitle(options);
  const keys: PrintableSheet[] = [];
  for (const version of versionsOf(options)) {
    const problems = problemsOf(version);
    const questions = problems.map(({ question }) => question);
    keys.push(answerKeySheet(problems, version));
    yield fileOf(`${title}-${versionLetters(version.version)}`, sheetsOf(studentSheets(questions, version)));
    if (version.version === 0 && options.set.kind === "course")
      keys.unshift(coursePlanSheet(classLine(version)));
  }
  yield fileOf(`${title}-key`, keys);
}
