import { LexerTreeBuilder } from "@univerjs/engine-formula";
import { createHeadlessEngine } from "../../../../../src/hosts/local/workbook/headless";
import { engineWithout } from "../engineWithout";
import { fakeCatalog } from "../fakeCatalog";
import { planOf } from "../planOf";

jest.setTimeout(120_000);

/** More formulas than the engine caches without the fix. */
const ROWS = 5_200;

/** How many formulas of a long sheet an edit parses again. */
const parsedAtAnEdit = async (
  create: typeof createHeadlessEngine,
  builder: typeof LexerTreeBuilder,
): Promise<number> => {
  const cells = Array.from({ length: ROWS }, (_, row) => [
    { row, column: 0, content: row },
    { row, column: 1, content: `=A${row + 1}*2` },
  ]).flat();
  const engine = create(fakeCatalog, planOf({ sheets: [{ name: "Long", cells }], names: [] }));
  await engine.calculated();
  const parse = jest.spyOn(builder.prototype, "treeBuilder");
  engine.setCell({ sheet: "Long", row: 0, column: 0 }, 21);
  await engine.calculated();
  expect(engine.getCell({ sheet: "Long", row: 0, column: 1 })).toBe(42);
  const parsed = parse.mock.calls.length;
  parse.mockRestore();
  engine.dispose();
  return parsed;
};

test("an edit doesn't parse a long sheet's formulas again", async () => {
  expect(await parsedAtAnEdit(createHeadlessEngine, LexerTreeBuilder)).toBeLessThan(10);
});

test("without the fix, an edit parses every formula again", async () => {
  const { createHeadlessEngine: create, formulaEngine } = engineWithout("formulaCache", "keepParsedFormulas");
  expect(await parsedAtAnEdit(create, formulaEngine.LexerTreeBuilder)).toBeGreaterThan(ROWS);
});
