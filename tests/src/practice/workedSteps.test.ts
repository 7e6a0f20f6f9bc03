import { LEVELS } from "../../../functions/practice/level";
import { UNITS } from "../../../functions/practice/measuring";
import { localCatalog } from "../../../src/hosts/local/formulas/catalog";
import { createHeadlessEngine } from "../../../src/hosts/local/workbook/headless";
import { classOf } from "../../support/practiceClass";

jest.setTimeout(120_000);

describe("the worked steps", () => {
  const engine = createHeadlessEngine(localCatalog);
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

  it("show #NAME? where Gablewright's functions aren't loaded", async () => {
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
});
