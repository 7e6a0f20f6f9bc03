import { LEVELS } from "../../../functions/practice/level";
import { UNITS } from "../../../functions/practice/measuring";
import { localCatalogue } from "../../../src/hosts/local/catalogue";
import { createHeadlessEngine } from "../../../src/hosts/local/headless";
import { problemsOf } from "../../../src/practice/practiceClass";
import { classOf } from "../../support/practiceClass";

jest.setTimeout(120_000);

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
