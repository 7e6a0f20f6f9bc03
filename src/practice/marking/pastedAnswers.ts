import Papa from "papaparse";
import type { Cell } from "../../../shared/cell";
import { columnOf } from "../../workbook/address";
import { versionLetters, type ClassOptions } from "../class/classOptions";
import { problemsOf } from "../class/practiceClass";
import type { Problem } from "../problems/problem";
import type { Submission } from "./markStudent";

export interface PastedAnswers {
  readonly submissions: readonly Submission[];
  /** A message for each row that can't be marked. */
  readonly rejected: readonly string[];
}

const isEmpty = (cell: string): boolean => cell.trim() === "";

const isHeading = ([, second = ""]: readonly string[]): boolean => /^version$/i.test(second.trim());

/** Rows copied from a wide sheet end in empty cells. */
const withoutTrailingBlanks = (cells: readonly string[]): readonly string[] =>
  cells.slice(0, cells.findLastIndex((cell) => !isEmpty(cell)) + 1);

const readVersion = (letters: string): number => (/^[A-Za-z]{1,2}$/.test(letters) ? columnOf(letters) : -1);

/** Answers in order, grouped by problem; null after the last one. */
export const answersByProblem = (problems: readonly Problem[], answers: readonly Cell[]): Cell[][] => {
  let next = 0;
  return problems.map(({ solution }) => solution.answers.map(() => answers[next++] ?? null));
};

/** What a row says, or the message why it can't be marked. */
const readRow = (
  cells: readonly string[],
  row: string,
  { versions, ...options }: ClassOptions,
): Submission | string => {
  const [name = "", letters = "", ...answers] = withoutTrailingBlanks(cells);
  const version = readVersion(letters.trim());
  if (version < 0 || version >= versions)
    return `${row} isn't marked: its second column must be a version from A to ${versionLetters(versions - 1)}, got "${letters.slice(0, 20)}".`;
  const problems = problemsOf({ ...options, version });
  const asked = problems.reduce((sum, { solution }) => sum + solution.answers.length, 0);
  if (answers.length > asked)
    return `${row} isn't marked: it has ${answers.length} answers after name and version, but the class asks for ${asked}.`;
  return {
    name: isEmpty(name) ? row : name.trim(),
    version: { ...options, version },
    problems,
    answers: answersByProblem(problems, answers),
    alteredProblems: [],
  };
};

/** Spreadsheets copy tabs; commas and semicolons may be part of an answer. */
const hasOtherSeparators = (pasted: string): boolean => !pasted.includes("\t") && /[,;]/.test(pasted);
const NO_TABS =
  "Nothing is marked: there are no tabs between name, version and answers. Open the table in a spreadsheet, copy its rows there, and paste them here.";

/**
 * A class's answers collected on paper: one row per student with name, version, and every answer in order. Empty rows and a
 * heading are skipped, but count in row numbers.
 */
export const pastedAnswers = (pasted: string, options: ClassOptions): PastedAnswers => {
  if (hasOtherSeparators(pasted)) return { submissions: [], rejected: [NO_TABS] };
  const read = Papa.parse<string[]>(pasted, { delimiter: "\t" }).data.flatMap((cells, index) =>
    cells.every(isEmpty) || isHeading(cells) ? [] : readRow(cells, `Row ${index + 1}`, options),
  );
  return {
    submissions: read.filter((each) => typeof each !== "string"),
    rejected: read.filter((each) => typeof each === "string"),
  };
};
