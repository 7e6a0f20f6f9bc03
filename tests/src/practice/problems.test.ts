import { LEVELS } from "../../../functions/practice/level";
import { UNITS } from "../../../functions/practice/measuring";
import { readLengthText } from "../../../shared/lengthText";
import { localCatalogue } from "../../../src/hosts/local/catalogue";
import { createHeadlessEngine } from "../../../src/hosts/local/headless";
import { checkClass } from "../../../src/practice/classOptions";
import { classLine, problemsOf, readClassLine } from "../../../src/practice/practiceClass";
import type { Problem } from "../../../src/practice/problem";
import { TOPIC_IDS } from "../../../src/practice/topicTitles";
import { straightAnswer } from "./straightFormulas";

jest.setTimeout(120_000);

const ALL = TOPIC_IDS;
const ALL_TOPICS = { kind: "topics", topics: ALL, problems: ALL.length } as const;
const SEEDS = 1000;

const classOf = (seed: number, level: (typeof LEVELS)[number], units: (typeof UNITS)[number]): Problem[] =>
  problemsOf({ seed: String(seed), version: 0, level, units, set: ALL_TOPICS });

/** What an answer may be, written here once more and not taken from the generator. */
const RANGES: Readonly<Record<string, readonly [number, number]>> = {
  length: [1, 300 * 12],
  pitch: [2, 12],
  degrees: [9, 60],
  number: [0.3, 105],
  count: [2, 4000],
  area: [40, 10_000],
  money: [1, 50_000],
};

describe.each(UNITS.flatMap((units) => LEVELS.map((level) => [level, units] as const)))(
  "a thousand classes of the level %s, %s",
  (level, units) => {
    let problems: readonly Problem[] = [];
    beforeAll(() => {
      problems = Array.from({ length: SEEDS }, (_, seed) => classOf(seed, level, units)).flat();
    });

    it("have each answer as straight formulas give it", () => {
      for (const { topic, facts, solution } of problems)
        for (const { field, value } of solution.answers) {
          const straight = straightAnswer(topic, facts, field.label);
          const isSame =
            typeof straight === "string" || typeof value === "string"
              ? value === straight
              : Math.abs(value - straight) <= 1e-7 * Math.max(1, Math.abs(straight));
          if (!isSame)
            throw new Error(
              `${topic}, ${field.label}: ${value} against ${straight}, ${JSON.stringify(facts)}`,
            );
        }
    });

    it("have answers in range, and none that a sixteenth more or less would change", () => {
      for (const { topic, solution } of problems)
        for (const { field, value, leeway = 1 } of solution.answers) {
          const [least, most] = RANGES[field.kind] ?? [-Infinity, Infinity];
          if (typeof value === "number" && !(value >= least && value <= most))
            throw new Error(`${topic}, ${field.label}: ${value}`);
          if (!(leeway >= 0.1)) throw new Error(`${topic}, ${field.label}: hinges on a rounding edge`);
        }
    });

    it("tell measures that a tape shows", () => {
      for (const { question } of problems)
        for (const { text } of question.givens)
          for (const part of text.split(" × ")) {
            const reading = readLengthText(part);
            if (!reading || !("inches" in reading)) continue;
            const marks = units === "metric" ? reading.inches * 25.4 : reading.inches * 16;
            if (!(Math.abs(marks - Math.round(marks)) < 1e-6)) throw new Error(`${part} is on no mark`);
          }
    });

    it("know slips that lead elsewhere than to the right answer", () => {
      for (const { solution } of problems)
        for (const { value, tolerance, mistakes } of solution.answers)
          for (const mistake of mistakes)
            if (!(Math.abs(mistake.value - Number(value)) > tolerance))
              throw new Error(`${mistake.slip} comes to the right answer`);
    });
  },
);

describe("a class", () => {
  it("comes out the same from the same options, and otherwise from another seed or version", () => {
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

  it("is this very one for seed 2611, on every machine", () => {
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

  it("can be told by the line that is printed on its sheets", () => {
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
    expect(readClassLine("Seed 1 · version A · half day · metric · 5 problems · topics 13")).toBeUndefined();
  });

  it.each([
    [{ seed: "=1+1" }, 'The seed takes 1 to 20 letters, digits and hyphens, got "=1+1".'],
    [{ set: { ...ALL_TOPICS, topics: [] } }, "Pick at least one topic."],
    [
      { set: { ...ALL_TOPICS, problems: 0 } },
      "The number of problems is a whole number from 1 to 60, got 0.",
    ],
    [{ versions: 1.5 }, "The number of versions is a whole number from 1 to 60, got 1.5."],
  ])("refuses %j", (odd, sentence) => {
    const options = {
      seed: "1",
      level: "half day",
      units: "metric",
      set: { ...ALL_TOPICS, problems: 12 },
      versions: 1,
    } as const;
    expect(() => checkClass({ ...options, ...odd })).toThrow(sentence);
  });
});

describe("the worked steps", () => {
  const engine = createHeadlessEngine(localCatalogue);
  afterAll(() => engine.dispose());

  it.each(UNITS.flatMap((units) => LEVELS.map((level) => [level, units] as const)))(
    "have formulas that give their results: %s, %s",
    async (level, units) => {
      for (const { topic, solution } of [1, 2, 3].flatMap((seed) => classOf(seed, level, units)))
        for (const { formula, result } of solution.steps) {
          const evaluation = await engine.evaluate(formula);
          const value = "value" in evaluation ? evaluation.value : evaluation;
          if (typeof result === "string") expect([topic, formula, value]).toEqual([topic, formula, result]);
          else expect([formula, Math.abs(Number(value) - result) < 1e-6]).toEqual([formula, true]);
        }
    },
  );

  it("swallow no error: where a function isn't there, nothing else stands in its place", async () => {
    const bare = createHeadlessEngine([]);
    for (const level of LEVELS)
      for (const units of UNITS)
        for (const { solution } of classOf(1, level, units))
          for (const { formula } of solution.steps) {
            expect(formula).toContain("GABLE.");
            expect([formula, await bare.evaluate(formula)]).toMatchObject([formula, { code: "#NAME?" }]);
          }
    bare.dispose();
  });

  it("lead to every answer, and show it in words", () => {
    for (const level of LEVELS)
      for (const units of UNITS)
        for (let seed = 0; seed < 50; seed++)
          for (const { topic, solution } of classOf(seed, level, units)) {
            const words = solution.steps.map((step) => step.words).join(" ");
            for (const { shown, field } of solution.answers) {
              const said = field.kind === "word" ? (shown === "steep" ? "is over" : "is not over") : shown;
              if (!words.replaceAll("−", "-").includes(said))
                throw new Error(`${topic}: ${said} isn't in ${words}`);
            }
          }
  });

  it.each(UNITS)("come to the key's panels with the numbers that are printed: %s", (units) => {
    for (const level of LEVELS)
      for (let seed = 0; seed < 300; seed++) {
        const version = { seed: String(seed), version: 0, level, units } as const;
        const [order] = problemsOf({ ...version, set: { kind: "topics", topics: ["order"], problems: 1 } });
        const [area, panels] = order?.solution.answers ?? [];
        const words = order?.solution.steps[1]?.words ?? "";
        const [, ofOrder, panelArea] = /([\d.]+)(?: × 144)? ÷ ([\d.]+) = /.exec(words) ?? [];
        const [, panelShown] = /([\d.]+) (?:sq ft|m²);/.exec(words) ?? [];
        const [perUnit, ofSquares] = units === "metric" ? [1, 1] : [144, 100];
        expect([words, Math.ceil((Number(ofOrder) * perUnit) / Number(panelArea))]).toEqual([
          words,
          panels?.value,
        ]);
        // Someone goes on with the area as it was answered, and the panel's as it was written down.
        const areaShown = parseFloat(area?.shown ?? "") * ofSquares;
        expect([words, Math.ceil(areaShown / Number(panelShown) - 1e-9)]).toEqual([words, panels?.value]);
      }
  });
});
