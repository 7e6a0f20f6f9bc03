import { checkClass, fileTitle, versionLetters, versionsOf, type ClassOptions } from "../classOptions";
import { classLine, problemsOf } from "../class/practiceClass";
import { coursePlanSheet } from "../sheets/coursePlanSheet";
import { keySheet } from "../sheets/keySheet";
import { sheetsOf, studentSheets } from "../sheets/studentSheets";
import type { PrintableSheet } from "../../workbook/printableSheet";
import { planBook } from "../../xlsx/planBook";
import { saveXlsx } from "../../xlsx/xlsxFile";

export interface NamedFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

const fileOf = (name: string, sheets: readonly PrintableSheet[]): NamedFile => ({
  name: `${name}.xlsx`,
  bytes: saveXlsx(undefined, planBook(sheets)),
});

/** How many files a class has: one a version, and the key. */
export const fileCount = ({ versions }: ClassOptions): number => versions + 1;

/** A class's files one after the other, the key last: who asks for them can say how far it is, and stop. */
export function* practiceFiles(options: ClassOptions): Generator<NamedFile, void> {
  checkClass(options);
  const title = fileTitle(options);
  const keys: PrintableSheet[] = [];
  for (const version of versionsOf(options)) {
    const problems = problemsOf(version);
    const questions = problems.map(({ question }) => question);
    keys.push(keySheet(problems, version));
    yield fileOf(`${title}-${versionLetters(version.version)}`, sheetsOf(studentSheets(questions, version)));
    if (version.version === 0 && options.set.kind === "course")
      keys.unshift(coursePlanSheet(classLine(version)));
  }
  yield fileOf(`${title}-key`, keys);
}
