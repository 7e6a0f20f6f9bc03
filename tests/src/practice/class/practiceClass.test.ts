import { checkClass } from "../../../../src/practice/class/classOptions";
import { classLine, readClassLine } from "../../../../src/practice/class/classLine";
import { problemsOf } from "../../../../src/practice/class/practiceClass";
import { ALL_TOPICS } from "../../../support/practiceClass";

describe("a class", () => {
  it("is the same for the same options, and different for another seed or version", () => {
    const options = {
      seed: "4711",
      version: 1,
      level: "half day",
      units: "metric",
      set: { ...ALL_TOPICS, problems: 12 },
    } as const;
    const problems = problemsOf(options);
    expect(problems).not.toEqual(problemsOf({ ...options, version: 2 }));
    expect(problems).not.toEqual(problemsOf({ ...options, seed: "4712" }));
    const again = problemsOf(options);
    expect(again).not.toBe(problems);
    expect(again).toEqual(problems);
  });

  it("for seed 2611 is exactly this one, on every machine", () => {
    const [tape, pitch, rafter] = problemsOf({
      seed: "2611",
      version: 0,
      level: "half day",
      units: "feet and inches",
      set: { ...ALL_TOPICS, problems: 3 },
    });
    expect([tape, pitch, rafter].map((problem) => problem?.question.givens.map(({ text }) => text)))
      .toMatchInlineSnapshot(`
      [
        [
          "8' 6 1/2"",
        ],
        [
          "24' 0"",
          "5' 0"",
        ],
        [
          "10' 3 1/4"",
          "5 in 12",
          "16"",
        ],
      ]
    `);
  });

  it("is named by the class line printed on its sheets", () => {
    const options = {
      seed: "monday-7",
      version: 27,
      level: "full roof",
      units: "feet and inches",
      set: { kind: "topics", topics: ["trim", "tape"], problems: 5 },
    } as const;
    expect(classLine(options)).toBe(
      "Seed monday-7 · version AB · full roof · feet and inches · 5 problems · topics 8 1",
    );
    expect(readClassLine(classLine(options))).toEqual(options);
    expect(readClassLine("Seed 1 · version A · expert · metric · 5 problems · topics 1")).toBeUndefined();
    expect(readClassLine("Seed 1 · version A · half day · metric · 5 problems · topics 99")).toBeUndefined();
  });

  it.each([
    [{ seed: "=1+1" }, 'The seed must be 1 to 20 letters, digits and hyphens, got "=1+1".'],
    [{ set: { ...ALL_TOPICS, topics: [] } }, "Pick at least one topic."],
    [
      { set: { ...ALL_TOPICS, problems: 0 } },
      "The number of problems must be a whole number from 1 to 60, got 0.",
    ],
    [{ versions: 1.5 }, "The number of versions must be a whole number from 1 to 60, got 1.5."],
  ])("is refused with %j", (odd, message) => {
    const options = {
      seed: "1",
      level: "half day",
      units: "metric",
      set: { ...ALL_TOPICS, problems: 12 },
      versions: 1,
    } as const;
    expect(() => checkClass({ ...options, ...odd })).toThrow(message);
  });
});
