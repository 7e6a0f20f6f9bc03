import type { Level } from "../../functions/practice/level";
import type { Measuring } from "../../functions/practice/measuring";
import type { Random } from "../../functions/practice/random";
import type { Figure } from "../pictures/figure";
import { TOPIC_TITLES, type TopicId } from "./topicTitles";

/** What every problem of a class has in common. */
export interface Setting {
  readonly level: Level;
  readonly measuring: Measuring;
}

/** A measure that the student is told. */
export interface Given {
  readonly label: string;
  readonly text: string;
}

/** How an answer is read: lengths in inches, a pitch as its rise on 12, areas in sq ft. */
export type AnswerKind = "length" | "pitch" | "degrees" | "number" | "count" | "area" | "money" | "word";

/** What the student is asked, with nothing of the answer in it. */
export interface Field {
  readonly label: string;
  readonly kind: AnswerKind;
  /** Of a bare number. */
  readonly unit: string;
  /** How the answer is to be written. */
  readonly form: string;
  /** The words to choose from. */
  readonly choices?: readonly string[];
}

/** A wrong way with what it leads to. */
export interface Mistake {
  readonly slip: string;
  readonly value: number;
}

export interface ShownMistake extends Mistake {
  /** What the student would write. */
  readonly shown: string;
}

export interface Answer {
  readonly field: Field;
  readonly value: number | string;
  /** As the key shows it. */
  readonly shown: string;
  /** What an answer may be off by, in the unit of its kind. */
  readonly tolerance: number;
  readonly why: string;
  readonly mistakes: readonly ShownMistake[];
  /** How far what is rounded stands from where rounding turns, as a share of one; undefined: nothing hinges on it. */
  readonly leeway?: number;
}

/** One step of the way: in words with this problem's numbers, and as a formula that gives the same. */
export interface Step {
  readonly words: string;
  readonly formula: string;
  readonly result: number | string;
}

/** Everything that goes onto a student's sheet. Answers aren't among it, so that none can get there. */
export interface Question {
  readonly title: string;
  /** What is asked, in sentences. */
  readonly words: string;
  readonly givens: readonly Given[];
  readonly fields: readonly Field[];
  readonly figure?: Figure;
}

export interface Solution {
  readonly answers: readonly Answer[];
  readonly steps: readonly Step[];
}

/** Measures by name: lengths in inches, pitches as rise on 12. */
export type Facts = Readonly<Record<string, number>>;

export interface Problem {
  readonly topic: TopicId;
  /** What the problem was made of, for those who want to work it out another way. */
  readonly facts: Facts;
  readonly question: Question;
  readonly solution: Solution;
}

/** A kind of problem: how its measures are drawn, and what is made of them. */
export interface Topic<F extends Facts = Facts> {
  readonly id: TopicId;
  /** What to say in class where many got it wrong. */
  readonly teachAgain: string;
  draw(random: Random, setting: Setting): F;
  ask(facts: F, setting: Setting): Omit<Question, "title" | "fields">;
  solve(facts: F, setting: Setting): Solution;
}

/**
 * Slips that can be told by what they lead to: something that can be (only money is ever below 0), and nothing that an earlier
 * slip leads to as well.
 */
const tellable = ({ field, mistakes, tolerance }: Answer): readonly ShownMistake[] =>
  mistakes.reduce<readonly ShownMistake[]>(
    (kept, mistake) =>
      (mistake.value <= 0 && field.kind !== "money") ||
      kept.some(({ value }) => Math.abs(value - mistake.value) <= tolerance)
        ? kept
        : [...kept, mistake],
    [],
  );

export const problemOf = <F extends Facts>(topic: Topic<F>, facts: F, setting: Setting): Problem => {
  const { answers: solved, steps } = topic.solve(facts, setting);
  const answers = solved.map((answer) => ({ ...answer, mistakes: tellable(answer) }));
  const fields = answers.map(({ field }) => field);
  return {
    topic: topic.id,
    facts,
    question: { title: TOPIC_TITLES[topic.id], ...topic.ask(facts, setting), fields },
    solution: { answers, steps },
  };
};
