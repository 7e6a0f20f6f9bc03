import { readdirSync } from "node:fs";
import { join } from "node:path";
import { LEVELS } from "../../../../functions/practice/level";
import { UNITS } from "../../../../functions/practice/measuring";
import type { Problem } from "../../../../src/practice/problems/problem";
import { TOPIC_IDS, TOPICS, type ListedTopic } from "../../../../src/practice/topics/index";
import { ALL_TOPICS, classOf } from "../../../support/practiceClass";
import { SECOND_ENGINE } from "../secondEngine";

const FOLDER = "src/practice/topics";
const ROOT = join(__dirname, "../../../..");

/** Topics whose givens say it all. */
const WITHOUT_FIGURE: readonly string[] = ["order", "change order"];
/** The mistake that every count has without being given any. */
const EVERY_COUNTS_MISTAKE = "rounded down";
/** A sheet's name has at most 31 letters, and the topic's number takes three. */
const MAX_TITLE = 28;

const files = readdirSync(join(ROOT, FOLDER)).filter((file) => file !== "index.ts");

const problems: readonly Problem[] = UNITS.flatMap((units) =>
  LEVELS.flatMap((level) => [1, 2, 3].flatMap((seed) => classOf(seed, level, units))),
);

/** The topics that fail a check, each with what to do. */
const faults = (
  isRight: (topic: ListedTopic, ofTopic: readonly Problem[]) => boolean,
  toDo: string,
): string[] =>
  TOPICS.filter(
    (topic) =>
      !isRight(
        topic,
        problems.filter((problem) => problem.topic === topic.id),
      ),
  ).map(({ id }) => `Topic "${id}" ${toDo}.`);

describe("the practice topics", () => {
  it("are all in the list", async () => {
    const listed: readonly unknown[] = TOPICS;
    for (const file of files) {
      const exported = Object.values<unknown>(
        (await import(join(ROOT, FOLDER, file))) as Readonly<Record<string, unknown>>,
      );
      if (!exported.some((each) => listed.includes(each)))
        throw new Error(`${FOLDER}/${file}: add its topic at the end of LIST in ${FOLDER}/index.ts.`);
    }
    expect(files).toHaveLength(TOPICS.length);
  });

  it("keep their numbers, which are printed on sheets, and have formulas in the second engine", () => {
    const inOrder = Object.keys(SECOND_ENGINE);
    TOPIC_IDS.forEach((id, index) => {
      if (!inOrder.includes(id))
        throw new Error(
          `Topic "${id}": add its formulas at the end of SECOND_ENGINE in tests/src/practice/secondEngine.ts.`,
        );
      if (inOrder[index] !== id)
        throw new Error(
          `Topic number ${index + 1} is printed on sheets as "${inOrder[index]}", not "${id}": add new topics at the end of LIST in ${FOLDER}/index.ts, and leave the others where they are.`,
        );
    });
    expect(inOrder).toHaveLength(TOPIC_IDS.length);
  });

  it("have ids and titles of their own", () => {
    expect(new Set(TOPIC_IDS).size).toBe(TOPICS.length);
    expect(new Set(TOPICS.map(({ title }) => title)).size).toBe(TOPICS.length);
  });

  it("have all their parts", () => {
    expect(problems).toHaveLength(UNITS.length * LEVELS.length * 3 * ALL_TOPICS.problems);
    expect([
      ...faults(
        ({ title }) => title !== "" && title.length <= MAX_TITLE,
        `needs a title of at most ${MAX_TITLE} letters`,
      ),
      ...faults(
        ({ reteachTip }) => reteachTip !== "",
        "needs a reteachTip: what to show a class that got it wrong",
      ),
      ...faults(
        (_, ofTopic) => ofTopic.every(({ question }) => question.text !== "" && question.givens.length > 0),
        "needs a text and givens: return them from ask()",
      ),
      ...faults(
        ({ id }, ofTopic) =>
          WITHOUT_FIGURE.includes(id) || ofTopic.every(({ question }) => question.figure !== undefined),
        `needs a figure: return one from ask() (see src/practice/figures), or add its id to WITHOUT_FIGURE in tests/src/practice/topics/index.test.ts`,
      ),
      ...faults(
        (_, ofTopic) => ofTopic.every(({ solution }) => solution.steps.length > 0),
        "needs worked steps: return them from solve()",
      ),
      ...faults(
        (_, ofTopic) =>
          ofTopic.some(({ solution }) =>
            solution.answers.some(({ mistakes }) =>
              mistakes.some(({ name }) => name !== EVERY_COUNTS_MISTAKE),
            ),
          ),
        "needs common mistakes of its own: give them to its answers in solve()",
      ),
    ]).toEqual([]);
  });
});
