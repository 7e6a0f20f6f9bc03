import type { Answer, Facts, Question, Setting, ShownMistake, Solution, Topic } from "../topic";
import type { TopicId } from "../topics/index";

/** One problem of a class, with its solution. */
export interface Problem {
  readonly topic: TopicId;
  /** The measurements that the problem was made from. */
  readonly facts: Facts;
  readonly question: Question;
  readonly solution: Solution;
}

/**
 * Mistakes that marking can tell apart: a possible value (only money may be below 0), and not the value of a mistake listed
 * earlier.
 */
const distinctMistakes = ({ field, mistakes, tolerance }: Answer): readonly ShownMistake[] =>
  mistakes.reduce<readonly ShownMistake[]>(
    (kept, mistake) =>
      (mistake.value <= 0 && field.kind !== "money") ||
      kept.some(({ value }) => Math.abs(value - mistake.value) <= tolerance)
        ? kept
        : [...kept, mistake],
    [],
  );

/** The problem that a topic makes of these measurements. */
export const problemOf = <F extends Facts>(
  topic: Topic<F> & { readonly id: TopicId },
  facts: F,
  setting: Setting,
): Problem => {
  const { answers: solved, steps } = topic.solve(facts, setting);
  const answers = solved.map((answer) => ({ ...answer, mistakes: distinctMistakes(answer) }));
  const fields = answers.map(({ field }) => field);
  return {
    topic: topic.id,
    facts,
    question: { title: topic.title, ...topic.ask(facts, setting), fields },
    solution: { answers, steps },
  };
};
