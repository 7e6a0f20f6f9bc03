import Papa from "papaparse";
import { InputError } from "../../../shared/inputError";
import { columnOf } from "../../sheets/address";
import { versionLetters, type ClassOptions } from "../classOptions";
import { problemsOf } from "../practiceClass";
import type { HandedIn } from "./student";

interface Line {
  readonly number: number;
  readonly cells: readonly string[];
}

const isHeading = ([, version = ""]: readonly string[]): boolean =>
  version.trim().toLowerCase() === "version";

/** What was copied from a sheet, without lines that hold nothing, a line of headings, and empty cells at a line's end. */
const linesOf = (pasted: string): Line[] =>
  Papa.parse<string[]>(pasted, { delimiter: "\t" })
    .data.map((cells, index) => ({
      number: index + 1,
      cells: cells.slice(0, cells.findLastIndex((cell) => cell.trim() !== "") + 1),
    }))
    .filter(({ cells }) => cells.length > 0 && !isHeading(cells));

/** A class's answers that were collected on paper: a line a student, with name, version, and then every answer in order. */
export const pastedAnswers = (pasted: string, { versions, ...options }: ClassOptions): HandedIn[] => {
  return linesOf(pasted).map(({ number, cells: [name = "", letters = "", ...answers] }): HandedIn => {
    const version = /^[A-Za-z]{1,2}$/.test(letters.trim()) ? columnOf(letters.trim()) : -1;
    if (version < 0 || version >= versions)
      throw new InputError(
        `Line ${number} takes a version from A to ${versionLetters(versions - 1)} in its second column, got "${letters.slice(0, 20)}".`,
      );
    const problems = problemsOf({ ...options, version });
    const asked = problems.reduce((sum, { solution }) => sum + solution.answers.length, 0);
    if (answers.length > asked)
      throw new InputError(
        `Line ${number} has ${answers.length} answers after name and version; the class asks for ${asked}.`,
      );
    let next = 0;
    return {
      name: name.trim() === "" ? `line ${number}` : name.trim(),
      version: { ...options, version },
      problems,
      typed: problems.map(({ solution }) => solution.answers.map(() => answers[next++] ?? null)),
      altered: [],
    };
  });
};
