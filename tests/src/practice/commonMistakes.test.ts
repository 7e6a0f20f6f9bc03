import { LEVELS } from "../../../functions/practice/level";
import { measuringOf, UNITS } from "../../../functions/practice/measuring";
import { markAnswer } from "../../../src/practice/marking/markAnswer";
import { problemsOf } from "../../../src/practice/class/practiceClass";
import { problemOf } from "../../../src/practice/problems/problem";
import type { Answer } from "../../../src/practice/topic";
import { TOPIC_IDS } from "../../../src/practice/topics/index";
import { fastenersTopic } from "../../../src/practice/topics/fasteners";
import { startersTopic } from "../../../src/practice/topics/starters";
import { tapeTopic } from "../../../src/practice/topics/tape";

const setting = { level: "half day", measuring: measuringOf("feet and inches", "half day") } as const;

const namesOf = (answer: Answer | undefined): string[] => answer?.mistakes.map(({ name }) => name) ?? [];

describe("the common mistakes of a problem", () => {
  it.each(UNITS.flatMap((units) => LEVELS.map((level) => [level, units] as const)))(
    "have possible values, each a different one: %s, %s",
    (level, units) => {
      const set = { kind: "topics", topics: TOPIC_IDS, problems: 60 } as const;
      for (let seed = 0; seed < 20; seed++)
        for (const { solution } of problemsOf({ seed: String(seed), version: 0, level, units, set }))
          for (const { field, mistakes, tolerance } of solution.answers)
            mistakes.forEach(({ name, value }, index) => {
              const others = mistakes
                .slice(0, index)
                .filter((each) => Math.abs(each.value - value) <= tolerance);
              if ((value <= 0 && field.kind !== "money") || others.length > 0)
                throw new Error(
                  `${field.label}, ${name}: ${value}, as ${others.map((each) => each.name).join()}`,
                );
            });
    },
  );

  it.each([
    [
      "a fold wider than the starter",
      problemOf(
        startersTopic,
        { course: 4, panelWidthIn: 16, exposureIn: 12, setbackIn: 1, foldIn: 3, gableCourses: 0 },
        setting,
      ).solution.answers[1],
      ["left out the setback", "left out the fold", "used the next course's starter"],
    ],
    [
      "whole feet",
      problemOf(tapeTopic, { readingIn: 120, otherIn: 99, markIn: 0.25 }, setting).solution.answers[1],
      ["counted ten inches to the foot"],
    ],
    [
      "spaces between clips rounded down",
      problemOf(fastenersTopic, { runIn: 246, spacingIn: 12, rows: 2 }, setting).solution.answers[0],
      ["counted spaces, not clips", "left out both ends", "used feet for inches"],
    ],
  ])("are those that marking can tell apart: %s", (_, answer, names) => {
    expect(namesOf(answer)).toEqual(names);
  });

  it("are named once, by the first in the list", () => {
    const [, answer] = problemOf(tapeTopic, { readingIn: 126, otherIn: 99, markIn: 0.25 }, setting).solution
      .answers;
    const between = {
      ...(answer as Answer),
      tolerance: 1,
      mistakes: [
        { name: "first", value: 50, shown: "50" },
        { name: "second", value: 51.5, shown: "51.5" },
      ],
    };
    expect(markAnswer(between, 50.75)).toEqual({ verdict: "near", mistake: "first" });
  });
});
