import type { Problem } from "../problems/problem";

/** A topic with few possible problems may run out of new ones; then one repeats. */
const MAX_REDRAWS = 200;

/** Problems that are drawn together, such as a course's; each number of redraws gives other ones. */
export type Draw = (redraws: number) => readonly Problem[];

/** What makes two problems the same to a student: what is given and what is to be found. */
const identityOf = ({ topic, question, solution }: Problem): string =>
  JSON.stringify([topic, question.text, question.givens, solution.answers.map(({ shown }) => shown)]);

const drawUnused = (draw: Draw, used: ReadonlySet<string>): readonly Problem[] => {
  let problems = draw(0);
  const isUsed = (): boolean => problems.some((problem) => used.has(identityOf(problem)));
  for (let redraws = 1; redraws <= MAX_REDRAWS && isUsed(); redraws++) problems = draw(redraws);
  return problems;
};

/** A class's versions in order, with no problem repeated. */
export function* distinctVersions(
  drawsOf: (version: number) => readonly Draw[],
): Generator<Problem[], never> {
  const used = new Set<string>();
  for (let version = 0; ; version++)
    yield drawsOf(version).flatMap((draw) => {
      const problems = drawUnused(draw, used);
      for (const problem of problems) used.add(identityOf(problem));
      return problems;
    });
}
