import { LexerTreeBuilder } from "@univerjs/engine-formula";
import { createHeadlessEngine } from "../../../../../src/hosts/local/workbook/headless";
import { fakeCatalog } from "../fakeCatalog";
import { planOf } from "../planOf";

jest.setTimeout(60_000);

/** More than the engine keeps by itself. */
const ROWS = 5_200;

test("an edit parses none of a long sheet's formulas again", async () => {
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
