import { LexerTreeBuilder } from "@univerjs/engine-formula";
import { createHeadlessEngine } from "../../../../../src/hosts/local/workbook/headless";
import { engineWithout } from "../engineWithout";
import { fakeCatalog } from "../fakeCatalog";
import { planOf } from "../planOf";

jest.setTimeout(60_000);

/** More formulas than the engine caches without the fix. */
const ROWS = 5_200;

test("an edit doesn't parse a long sheet's formulas again", async () => {
  const cells = Array.from({ length: ROWS }, (_, row) => [
    { row, column: 0, content: row },
    { row, column: 1, content: `=A${row + 1}*2` },
  ]).flat();
  const engine = createHeadlessEngine(fakeCatalog, planOf({ sheets: [{ name: "Long", cells }], names: [] }));
  await engine.calculated();
  const parsed = jest.spyOn(LexerTreeBuilder.prototype, "treeBuilder");
  engine.setCell({ sheet: "Long", row: 0, column: 0 }, 21);
  await engine.calculated();
  expect(engine.getCell({ sheet: "Long", row: 0, column: 1 })).toBe(42);
  expect(parsed.mock.calls.length).toBeLessThan(10);
  parsed.mockRestore();
  engine.dispose();
});

test("without the fix, the formulas of a long sheet are parsed again", () => {
  const { createHeadlessEngine: create, formulaEngine } = engineWithout("formulaCache", "keepParsedFormulas");
  const { AstTreeBuilder, generateAstNode, IFormulaCurrentConfigService, Lexer } = formulaEngine;
  const { injector, dispose } = create(fakeCatalog);
  const parsed = jest.spyOn(formulaEngine.LexerTreeBuilder.prototype, "treeBuilder");
  const parseAll = (): void => {
    for (let row = 1; row <= ROWS; row++)
      generateAstNode(
        "long",
        `=A${row}*2`,
        injector.get(Lexer),
        injector.get(AstTreeBuilder),
        injector.get(IFormulaCurrentConfigService),
      );
  };
  parseAll();
  parsed.mockClear();
  parseAll();
  expect(parsed.mock.calls.length).toBe(ROWS);
  dispose();
});
