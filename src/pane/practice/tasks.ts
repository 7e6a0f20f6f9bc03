import { counted } from "../../../shared/describe";
import { InputError } from "../../../shared/inputError";
import { errorMessage } from "../../workbook/errorMessage";
import type { Added, Host } from "../../workbook/host";
import type { ProgressMonitor } from "../../workbook/progressMonitor";
import { practiceFiles, type NamedFile } from "../../practice/files/practiceFiles";
import { openXlsx } from "../../xlsx/xlsxFile";
import { checkPage } from "../../practice/marking/checkPage";
import { misfits } from "../../practice/marking/versionMismatches";
import { pastedAnswers } from "../../practice/marking/pastedAnswers";
import { readStudentFile } from "../../practice/marking/readStudentFile";
import { sameNames } from "../../practice/marking/repeatedNames";
import { shortRows } from "../../practice/marking/shortRows";
import { isStudentsWorkbook } from "../../practice/marking/startPage";
import { markStudent, type HandedIn } from "../../practice/marking/student";
import { checkClass, type ClassOptions } from "../../practice/classOptions";
import { uniqueName } from "../../workbook/uniqueName";
import type { ActiveSheet } from "../../workbook/activeSheet";
import { START_SHEET } from "../../practice/sheets/studentSheets";
import { markingInWords, markingSheets } from "../../practice/marking/markingSheets";
import { today } from "../parts/today";

/** Lets the page paint and take a click. */
const breathe = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));

/** A class's files: one for each version, and the key. */
export const buildClass = async (
  options: ClassOptions,
  { onProgress, signal }: ProgressMonitor,
): Promise<readonly NamedFile[]> => {
  const files: NamedFile[] = [];
  for (const file of practiceFiles(options)) {
    files.push(file);
    onProgress(files.length / (options.versions + 1));
    await breathe();
    signal.throwIfAborted();
  }
  return files;
};

export interface Marking extends Added {
  readonly sentences: readonly string[];
}

/** The marks tell everybody's answers and the right ones: they don't belong into a file that goes back to one student. */
const refuseStudentsWorkbook = async (host: Host): Promise<void> => {
  const { sheets } = await host.existing();
  if (sheets.includes(START_SHEET) && isStudentsWorkbook(await host.contents()))
    throw new InputError(
      "Nothing is marked: the workbook that is open is a student's, and the marks would tell in it what everybody wrote and what is right. Open the class's own workbook or a new one, and mark there.",
    );
};

const NO_STUDENT = "Nothing is marked: there is no student's line.";

/** Adds the class's sheets; the notes, which may be on what can't be marked, are said after the marks. */
const writeMarks = async (
  host: Host,
  handedIn: readonly HandedIn[],
  notes: readonly string[],
): Promise<Marking> => {
  if (handedIn.length === 0) throw new Error(notes.join(" ") || NO_STUDENT);
  const students = handedIn.map(markStudent);
  const { sheets } = await host.existing();
  const grid = uniqueName("Class", sheets);
  const answers = uniqueName("Class answers", [...sheets, grid]);
  const undo = await host.addSheets(markingSheets(students, { grid, answers }, today()));
  return {
    sheets: [grid, answers],
    undo,
    sentences: [markingInWords(students), ...sameNames(handedIn), ...notes],
  };
};

/** Marks students' files, and adds the class's sheets; a file that can't be read is named, and the others are marked. */
export const markFiles = async (
  host: Host,
  files: readonly Pick<File, "name" | "arrayBuffer">[],
  { onProgress, signal }: ProgressMonitor,
): Promise<Marking> => {
  await refuseStudentsWorkbook(host);
  const handedIn: HandedIn[] = [];
  const unread: string[] = [];
  for (const [index, file] of files.entries()) {
    try {
      const { book } = openXlsx(new Uint8Array(await file.arrayBuffer()));
      handedIn.push(readStudentFile(book, file.name));
    } catch (failure) {
      unread.push(`${file.name} isn't marked. ${errorMessage(failure)}`);
    }
    onProgress((index + 1) / files.length);
    await breathe();
    signal.throwIfAborted();
  }
  return writeMarks(host, handedIn, unread);
};

/** Marks pasted lines; a line that can't be read is named, and the others are marked. */
export const markPasted = async (host: Host, pasted: string, options: ClassOptions): Promise<Marking> => {
  await refuseStudentsWorkbook(host);
  checkClass(options);
  const { handedIn, unread } = pastedAnswers(pasted, options);
  return writeMarks(host, handedIn, [...unread, ...shortRows(handedIn), ...misfits(handedIn, options)]);
};

/** How the page in front stands, an answer a sentence, and none told. */
export const checkInWords = (view: ActiveSheet): readonly string[] => {
  const checked = checkPage(view);
  const right = checked.filter(({ verdict }) => verdict === "right").length;
  return [
    ...checked.map(({ label, verdict }) => `${label}: ${verdict}.`),
    `${right} of ${counted(checked.length, "answer")} right.`,
  ];
};
