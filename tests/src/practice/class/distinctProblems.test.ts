import { LEVELS } from "../../../../functions/practice/level";
import { UNITS } from "../../../../functions/practice/measuring";
import type { ProblemSet } from "../../../../src/practice/class/classOptions";
import { problemsOf } from "../../../../src/practice/class/practiceClass";
import { TOPIC_IDS } from "../../../../src/practice/topics/index";

jest.setTimeout(60_000);

const VERSIONS = 8;
const SEEDS = 12;

describe("the versions of a class", () => {
  const SETS: [string, ProblemSet][] = [
    ...TOPIC_IDS.map((topic): [string, ProblemSet] => [
      topic,
      { kind: "topics", topics: [topic], problems: 3 },
    ]),
    ["the full-day course", { kind: "course" }],
  ];

  it.each(SETS)("share no problem, even if all are from %s", (_, set) => {
    for (const level of LEVELS)
      for (const units of UNITS)
        for (let seed = 0; seed < SEEDS; seed++) {
          const problems = Array.from({ length: VERSIONS }, (_, version) =>
            problemsOf({ seed: String(seed), version, level, units, set }),
          ).flat();
          const asked = problems.map(({ question: { text, givens }, facts, solution }) =>
            JSON.stringify([
              text,
              // A course's pages name other problems instead of giving their numbers.
              set.kind === "course" ? facts : givens,
              solution.answers.map(({ shown }) => shown),
            ]),
          );
          const again = asked.filter((each, index) => asked.indexOf(each) < index);
          expect([level, units, seed, again]).toEqual([level, units, seed, []]);
        }
  });

  it("are the same in any order of building", () => {
    const options = {
      seed: "7",
      level: "first hour",
      units: "metric",
      set: { kind: "topics", topics: ["starters"], problems: 4 },
    } as const;
    const last = problemsOf({ ...options, version: 9 });
    problemsOf({ ...options, seed: "8", version: 0 });
    const inTurn = Array.from({ length: 10 }, (_, version) => problemsOf({ ...options, version }));
    expect(inTurn[9]).toEqual(last);
  });
});
