import type { Problem } from "../problem";

/** What has few problems to draw from may run out of new ones; then one comes again. */
const MOST_REDRAWS = 200;

/** Problems that belong together, such as a day's; each number of draws before gives others. */
export type Draw = (drawsBefore: number) => readonly Problem[];

/** What a student would know a problem by: what is told, and what is to be found. */
const identityOf = ({ topic, question, solution }: Problem): string =>
  JSON.stringify([topic, question.words, question.givens, solution.answers.map(({ shown }) => shown)]);

const drawNew = (draw: Draw, taken: ReadonlySet<string>): readonly Problem[] => {
  let problems = draw(0);
  const isTaken = (): boolean => problems.some((problem) => taken.has(identityOf(problem)));
  for (let draws = 1; draws <= MOST_REDRAWS && isTaken(); draws++) problems = draw(draws);
  return problems;
};

/** A class's versions one after the other, none with a problem that came before. */
export function* distinctVersions(
  drawsOf: (version: number) => readonly Draw[],
): Generator<Problem[], never> {
  const taken = new Set<string>();
  for (let version = 0; ; version++)
    yield drawsOf(version).flatMap((draw) => {
      const problems = drawNew(draw, taken);
      for (const problem of problems) taken.add(identityOf(problem));
      return problems;
    });
}
