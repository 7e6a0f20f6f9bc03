import { isBlank, type Cell } from "../../../shared/cell";
import { sharedClassLine } from "../class/classLine";
import { versionLetters, type VersionOptions } from "../class/classOptions";
import type { Problem } from "../problems/problem";
import type { TopicId } from "../topics/index";
import { markAnswer, type Marked } from "./markAnswer";

/** What one student turned in: a cell for each answer, problem by problem. */
export interface Submission {
  readonly name: string;
  readonly version: VersionOptions;
  readonly problems: readonly Problem[];
  readonly answers: readonly (readonly Cell[])[];
  /** Problems, numbered from 1, whose page was changed after it was handed out: they can't be marked. */
  readonly alteredProblems: readonly number[];
}

export interface MarkedAnswer extends Marked {
  readonly problem: number;
  readonly topic: TopicId;
  readonly label: string;
  /** As the student wrote it. */
  readonly studentAnswer: string;
  /** The right answer, as the answer key shows it. */
  readonly shown: string;
}

export interface MarkedStudent {
  readonly name: string;
  /** The class line that all versions share. */
  readonly classLine: string;
  readonly versionLetters: string;
  readonly answers: readonly MarkedAnswer[];
  readonly alteredProblems: readonly number[];
}

const textOf = (typed: Cell): string => (isBlank(typed) ? "" : String(typed));

export const markStudent = ({
  name,
  version,
  problems,
  answers,
  alteredProblems,
}: Submission): MarkedStudent => ({
  name,
  classLine: sharedClassLine(version),
  versionLetters: versionLetters(version.version),
  alteredProblems,
  answers: problems.flatMap(({ topic, solution }, index) =>
    alteredProblems.includes(index + 1)
      ? []
      : solution.answers.map((answer, at): MarkedAnswer => {
          const cell = answers[index]?.[at] ?? null;
          return {
            problem: index + 1,
            topic,
            label: answer.field.label,
            studentAnswer: textOf(cell),
            shown: answer.shown,
            ...markAnswer(answer, cell),
          };
        }),
  ),
});
