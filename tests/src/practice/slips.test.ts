import { LEVELS } from "../../../functions/practice/level";
import { measuringOf, UNITS } from "../../../functions/practice/measuring";
import { markAnswer } from "../../../src/practice/marking/markAnswer";
import { problemsOf } from "../../../src/practice/class/practiceClass";
import { problemOf, type Answer } from "../../../src/practice/problem";
import { TOPIC_IDS } from "../../../src/practice/topicTitles";
import { fastenersTopic } from "../../../src/practice/topics/fasteners";
import { startersTopic } from "../../../src/practice/topics/starters";
import { tapeTopic } from "../../../src/practice/topics/tape";

const setting = { level: "half day", measuring: measuringOf("feet and inches", "half day") } as const;

const slipsOf = (answer: Answer | undefined): string[] => answer?.mistakes.map(({ slip }) => slip) ?? [];

describe("the slips of a problem", () => {
  it.each(UNITS.flatMap((units) => LEVELS.map((level) => [level, units] as const)))(
    "lead to something, and each elsewhere: %s, %s",
    (level, units) => {
      const set = { kind: "topics", topics: TOPIC_IDS, problems: 60 } as const;
      for (let seed = 0; seed < 20; seed++)
        for (const { solution } of problemsOf({ seed: String(seed), version: 0, level, units, set }))
          for (const { field, mistakes, tolerance } of solution.answers)
            mistakes.forEach(({ slip, value }, index) => {
              const others = mistakes
                .slice(0, index)
                .filter((each) => Math.abs(each.value - value) <= tolerance);
              if ((value <= 0 && field.kind !== "money") || others.length > 0)
                throw new Error(
                  `${field.label}, ${slip}: ${value}, as ${others.map((each) => each.slip).join()}`,
                );
            });
    },
  );

  it.each([
    [
      "a fold that is more than the starter",
      problemOf(
        startersTopic,
        { course: 4, panelWidthIn: 16, exposureIn: 12, setbackIn: 1, foldIn: 3, gableCourses: 0 },
        setting,
      ).solution.answers[1],
      ["forgot the setback", "forgot the fold", "took the next course's start"],
    ],
    [
      "whole feet",
      problemOf(tapeTopic, { readingIn: 120, otherIn: 99, markIn: 0.25 }, setting).solution.answers[1],
      ["took ten inches for a foot"],
    ],
    [
      "clips of spaces rounded down",
      problemOf(fastenersTopic, { runIn: 246, spacingIn: 12, rows: 2 }, setting).solution.answers[0],
      ["counted spaces for clips", "left out both ends", "took feet for inches"],
    ],
  ])("are those that can be told: %s", (_, answer, slips) => {
    expect(slipsOf(answer)).toEqual(slips);
  });

  it("are named once, by the first that is listed", () => {
    const [, answer] = problemOf(tapeTopic, { readingIn: 126, otherIn: 99, markIn: 0.25 }, setting).solution
      .answers;
    const between = {
      ...(answer as Answer),
      tolerance: 1,
      mistakes: [
        { slip: "first", value: 50, shown: "50" },
        { slip: "second", value: 51.5, shown: "51.5" },
      ],
    };
    expect(markAnswer(between, 50.75)).toEqual({ verdict: "near", slip: "first" });
  });
});
