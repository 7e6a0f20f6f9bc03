import type { Facts, Mistake, ShownMistake } from "./topic";

/** Common mistakes by name, each with the answer it gives for the same measurements; undefined where it can't happen. */
export type CommonMistakes<F extends Facts> = Readonly<Record<string, (facts: F) => number | undefined>>;

export const mistakesOf = <F extends Facts>(mistakes: CommonMistakes<F>, facts: F): Mistake[] =>
  Object.entries(mistakes).flatMap(([name, answerOf]) => {
    const value = answerOf(facts);
    return value === undefined ? [] : [{ name, value }];
  });

/** Mistakes as a student would write them. */
export const withShown = (mistakes: readonly Mistake[], write: (value: number) => string): ShownMistake[] =>
  mistakes.map((mistake) => ({ ...mistake, shown: write(mistake.value) }));
