import Papa from "papaparse";
import { InputError } from "../../../shared/inputError";
import { columnOf } from "../../sheets/address";
import { problemsOf, versionLetters, type ClassOptions } from "../practiceClass";
import type { HandedIn } from "./student";

/** A class's answers that were collected on paper: a line a student, with name, version, and then every answer in order. */
export const pastedAnswers = (pasted: string, { versions, ...options }: ClassOptions): HandedIn[] => {
  const lines = Papa.parse<string[]>(pasted.trim(), { delimiter: "\t" }).data;
  return lines.map(([name = "", letters = "", ...answers], index): HandedIn => {
    const version = /^[A-Za-z]{1,2}$/.test(letters.trim()) ? columnOf(letters.trim()) : -1;
    if (version < 0 || version >= versions)
      throw new InputError(
        `Line ${index + 1} takes a version from A to ${versionLetters(versions - 1)} in its second column, got "${letters.slice(0, 20)}".`,
      );
    const problems = problemsOf({ ...options, version });
    const asked = problems.reduce((sum, { solution }) => sum + solution.answers.length, 0);
    if (answers.length > asked)
      throw new InputError(
        `Line ${index + 1} has ${answers.length} answers after name and version; the class asks for ${asked}.`,
      );
    let next = 0;
    return {
      name: name.trim() === "" ? `line ${index + 1}` : name.trim(),
      version: { ...options, version },
      problems,
      typed: problems.map(({ solution }) => solution.answers.map(() => answers[next++] ?? null)),
      altered: [],
    };
  });
};
