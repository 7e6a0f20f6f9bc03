import { isBlank, type Cell } from "../../../shared/cell";
import { versionLetters, type VersionOptions } from "../classOptions";
import { sharedClassLine } from "../class/practiceClass";
import type { Problem } from "../problem";
import type { TopicId } from "../topicTitles";
import { markAnswer, type Marked } from "./markAnswer";

/** What one student handed in: a cell for each answer, problem by problem. */
export interface HandedIn {
  readonly name: string;
  readonly version: VersionOptions;
  readonly problems: readonly Problem[];
  readonly typed: readonly (readonly Cell[])[];
  /** Numbers of the problems, from 1, whose page isn't as it was given out: they can't be marked. */
  readonly altered: readonly number[];
}

export interface MarkedAnswer extends Marked {
  readonly problem: number;
  readonly topic: TopicId;
  readonly label: string;
  /** As the student wrote it. */
  readonly wrote: string;
  readonly shown: string;
}

export interface MarkedStudent {
  readonly name: string;
  /** Which class's problems they are, in words. */
  readonly ofClass: string;
  readonly versionLetters: string;
  readonly answers: readonly MarkedAnswer[];
  readonly altered: readonly number[];
}

const inWords = (typed: Cell): string => (isBlank(typed) ? "" : String(typed));

export const markStudent = ({ name, version, problems, typed, altered }: HandedIn): MarkedStudent => ({
  name,
  ofClass: sharedClassLine(version),
  versionLetters: versionLetters(version.version),
  altered,
  answers: problems.flatMap(({ topic, solution }, index) =>
    altered.includes(index + 1)
      ? []
      : solution.answers.map((answer, at): MarkedAnswer => {
          const cell = typed[index]?.[at] ?? null;
          return {
            problem: index + 1,
            topic,
            label: answer.field.label,
            wrote: inWords(cell),
            shown: answer.shown,
            ...markAnswer(answer, cell),
          };
        }),
  ),
});
