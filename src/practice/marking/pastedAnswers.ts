import Papa from "papaparse";
import type { Cell } from "../../../shared/cell";
import { columnOf } from "../../workbook/address";
import { versionLetters, type ClassOptions } from "../classOptions";
import { problemsOf } from "../class/practiceClass";
import type { Problem } from "../problem";
import type { HandedIn } from "./student";

export interface PastedAnswers {
  readonly handedIn: readonly HandedIn[];
  /** A sentence for each line that can't be marked. */
  readonly unread: readonly string[];
}

const isEmpty = (cell: string): boolean => cell.trim() === "";

/** A table's own heading: no version has a name so long. */
const isHeading = ([, second = ""]: readonly string[]): boolean => /^version$/i.test(second.trim());

/** Rows that are copied off a wide sheet end in empty cells. */
const withoutEmptyEnd = (cells: readonly string[]): readonly string[] =>
  cells.slice(0, cells.findLastIndex((cell) => !isEmpty(cell)) + 1);

const readVersion = (letters: string): number => (/^[A-Za-z]{1,2}$/.test(letters) ? columnOf(letters) : -1);

/** Answers in their order, problem by problem; null where they have ended. */
export const dealt = (problems: readonly Problem[], answers: readonly Cell[]): Cell[][] => {
  let next = 0;
  return problems.map(({ solution }) => solution.answers.map(() => answers[next++] ?? null));
};

/** What a student's line holds, or the sentence that says why it can't be marked. */
const readLine = (
  cells: readonly string[],
  line: string,
  { versions, ...options }: ClassOptions,
): HandedIn | string => {
  const [name = "", letters = "", ...answers] = withoutEmptyEnd(cells);
  const version = readVersion(letters.trim());
  if (version < 0 || version >= versions)
    return `${line} isn't marked: its second column takes a version from A to ${versionLetters(versions - 1)}, got "${letters.slice(0, 20)}".`;
  const problems = problemsOf({ ...options, version });
  const asked = problems.reduce((sum, { solution }) => sum + solution.answers.length, 0);
  if (answers.length > asked)
    return `${line} isn't marked: it has ${answers.length} answers after name and version; the class asks for ${asked}.`;
  return {
    name: isEmpty(name) ? line : name.trim(),
    version: { ...options, version },
    problems,
    typed: dealt(problems, answers),
    altered: [],
  };
};

/** Tabs are what a spreadsheet copies; commas and semicolons stand within answers too. */
const isSeparatedOtherwise = (pasted: string): boolean => !pasted.includes("\t") && /[,;]/.test(pasted);
const NO_TABS =
  "Nothing is marked: there is no tab between name, version and answers. Open the table in a spreadsheet, copy its rows there, and paste them here.";

/**
 * A class's answers that were collected on paper: a line a student, with name, version, and then every answer in order. Empty
 * lines and a heading are passed over, and still count as lines.
 */
export const pastedAnswers = (pasted: string, options: ClassOptions): PastedAnswers => {
  if (isSeparatedOtherwise(pasted)) return { handedIn: [], unread: [NO_TABS] };
  const read = Papa.parse<string[]>(pasted, { delimiter: "\t" }).data.flatMap((cells, index) =>
    cells.every(isEmpty) || isHeading(cells) ? [] : readLine(cells, `Line ${index + 1}`, options),
  );
  return {
    handedIn: read.filter((each) => typeof each !== "string"),
    unread: read.filter((each) => typeof each === "string"),
  };
};
