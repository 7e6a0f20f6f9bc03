import { counted } from "../../../shared/describe";
import { InputError } from "../../../shared/inputError";
import { checkClass, type ClassOptions } from "../../practice/class/classOptions";
import { fileCount, practiceFiles, type NamedFile } from "../../practice/files/practiceFiles";
import { checkPage } from "../../practice/marking/checkPage";
import { duplicateNames } from "../../practice/marking/duplicateNames";
import { incompleteRows } from "../../practice/marking/incompleteRows";
import { markingSheets } from "../../practice/marking/markingSheets";
import { markingSummary } from "../../practice/marking/markingSummary";
import { markStudent, type Submission } from "../../practice/marking/markStudent";
import { pastedAnswers } from "../../practice/marking/pastedAnswers";
import { readStudentFile } from "../../practice/marking/readStudentFile";
import { isStudentWorkbook } from "../../practice/marking/studentWorkbook";
import { versionMismatches } from "../../practice/marking/versionMismatches";
import { START_SHEET } from "../../practice/sheets/studentSheets";
import { errorMessage } from "../../workbook/errorMessage";
import { uniqueName } from "../../workbook/uniqueName";
import type { Added, Host } from "../../workbook/host";
import type { ActiveSheet } from "../../workbook/activeSheet";
import type { ProgressMonitor } from "../../workbook/progressMonitor";
import { openXlsx } from "../../xlsx/xlsxFile";
import { today } from "../parts/today";

/** Lets the page repaint and react to clicks. */
const breathe = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));

/** A class's files: one per version, and the answer key. */
export const buildClass = async (
  options: ClassOptions,
  { onProgress, signal }: ProgressMonitor,
): Promise<readonly NamedFile[]> => {
  const files: NamedFile[] = [];
  for (const file of practiceFiles(options)) {
    files.push(file);
    onProgress(files.length / fileCount(options));
    await breathe();
    signal.throwIfAborted();
  }
  return files;
};

export interface Marking extends Added {
  readonly messages: readonly string[];
}

/** The marks show everyone's answers and the right ones, which mustn't get into a file that goes back to a student. */
const refuseStudentWorkbook = async (host: Host): Promise<void> => {
  const { sheets } = await host.existing();
  if (sheets.includes(START_SHEET) && isStudentWorkbook(await host.contents()))
    throw new InputError(
      "Nothing is marked: the open workbook is a student's, and the marks would show in it everyone's answers and the right ones. Open the class's own workbook or a new one, and mark there.",
    );
};

const NO_STUDENT = "Nothing is marked: there are no students.";

/** Adds the class's sheets. The notes, on what can't be marked and the like, follow the summary. */
const writeMarks = async (
  host: Host,
  submissions: readonly Submission[],
  notes: readonly string[],
): Promise<Marking> => {
  if (submissions.length === 0) throw new Error(notes.join(" ") || NO_STUDENT);
  const students = submissions.map(markStudent);
  const { sheets } = await host.existing();
  const grid = uniqueName("Class", sheets);
  const answers = uniqueName("Class answers", [...sheets, grid]);
  const undo = await host.addSheets(markingSheets(students, { grid, answers }, today()));
  return {
    sheets: [grid, answers],
    undo,
    messages: [markingSummary(students), ...duplicateNames(submissions), ...notes],
  };
};

/** Marks students' files and adds the class's sheets. Files that can't be read are named; the others are marked. */
export const markFiles = async (
  host: Host,
  files: readonly Pick<File, "name" | "arrayBuffer">[],
  { onProgress, signal }: ProgressMonitor,
): Promise<Marking> => {
  await refuseStudentWorkbook(host);
  const submissions: Submission[] = [];
  const rejected: string[] = [];
  for (const [index, file] of files.entries()) {
    try {
      const { book } = openXlsx(new Uint8Array(await file.arrayBuffer()));
      submissions.push(readStudentFile(book, file.name));
    } catch (failure) {
      rejected.push(`${file.name} isn't marked. ${errorMessage(failure)}`);
    }
    onProgress((index + 1) / files.length);
    await breathe();
    signal.throwIfAborted();
  }
  return writeMarks(host, submissions, rejected);
};

/** Marks pasted rows and adds the class's sheets. Rows that can't be read are named; the others are marked. */
export const markPasted = async (host: Host, pasted: string, options: ClassOptions): Promise<Marking> => {
  await refuseStudentWorkbook(host);
  checkClass(options);
  const { submissions, rejected } = pastedAnswers(pasted, options);
  return writeMarks(host, submissions, [
    ...rejected,
    ...incompleteRows(submissions),
    ...versionMismatches(submissions, options),
  ]);
};

/** The verdict on each answer of the active page, without the right answers. */
export const checkSummary = (view: ActiveSheet): readonly string[] => {
  const checked = checkPage(view);
  const right = checked.filter(({ verdict }) => verdict === "right").length;
  return [
    ...checked.map(({ label, verdict }) => `${label}: ${verdict}.`),
    `${right} of ${counted(checked.length, "answer")} right.`,
  ];
};
