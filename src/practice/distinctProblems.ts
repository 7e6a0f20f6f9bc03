import { drawProblem } from "./drawProblem";
import type { Problem, Setting } from "./problem";
import type { TopicId } from "./topicTitles";
import { TOPICS } from "./topics/index";

/** A topic with few problems may run out of new ones; then one comes again. */
const MOST_REDRAWS = 200;

/** What a student would know a problem by: what is told, and what is to be found. */
const identityOf = ({ topic, question, solution }: Problem): string =>
  JSON.stringify([topic, question.words, question.givens, solution.answers.map(({ shown }) => shown)]);

const drawUntaken = (topic: TopicId, seed: string, setting: Setting, taken: ReadonlySet<string>): Problem => {
  let problem = drawProblem(TOPICS[topic], seed, setting);
  for (let redraw = 1; redraw <= MOST_REDRAWS && taken.has(identityOf(problem)); redraw++)
    problem = drawProblem(TOPICS[topic], `${seed}/${redraw}`, setting);
  return problem;
};

export interface Draw {
  readonly topic: TopicId;
  readonly seed: string;
}

/** A class's versions one after the other, none with a problem that came before. */
export function* distinctVersions(
  drawsOf: (version: number) => readonly Draw[],
  setting: Setting,
): Generator<Problem[], never> {
  const taken = new Set<string>();
  for (let version = 0; ; version++)
    yield drawsOf(version).map(({ topic, seed }) => {
      const problem = drawUntaken(topic, seed, setting, taken);
      taken.add(identityOf(problem));
      return problem;
    });
}
