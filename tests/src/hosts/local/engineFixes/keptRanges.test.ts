import { FormulaDependencyGenerator } from "@univerjs/engine-formula";
import fc from "fast-check";
import { createHeadlessEngine, type HeadlessEngine } from "../../../../../src/hosts/local/workbook/headless";
import { engineWithout } from "../engineWithout";
import { fakeCatalog } from "../fakeCatalog";
import { planOf } from "../planOf";

jest.setTimeout(120_000);

const ROWS = 30;

const opened = async (create = createHeadlessEngine): Promise<HeadlessEngine> => {
  const cells = Array.from({ length: ROWS }, (_, row) => [
    { row, column: 0, content: row },
    { row, column: 1, content: `=A${row + 1}*2` },
  ]).flat();
  const engine = create(fakeCatalog, planOf({ sheets: [{ name: "Bid", cells }], names: [] }));
  await engine.calculated();
  return engine;
};

/** How many formulas' ranges the engine looks for when one cell is edited. */
const looksAtEdit = async (engine: HeadlessEngine, generator: object): Promise<number> => {
  const looks = jest.spyOn(generator as { _getRangeListByNode: () => unknown }, "_getRangeListByNode");
  engine.setCell({ sheet: "Bid", row: 0, column: 0 }, 21);
  await engine.calculated();
  expect(engine.getCell({ sheet: "Bid", row: 0, column: 1 })).toBe(42);
  const { length } = looks.mock.calls;
  looks.mockRestore();
  engine.dispose();
  return length;
};

test("an edit looks for the ranges of no formula that it leaves as it is", async () => {
  expect(await looksAtEdit(await opened(), FormulaDependencyGenerator.prototype)).toBe(0);
});

test("without the fix, an edit looks for the ranges of every formula", async () => {
  const { createHeadlessEngine: create, formulaEngine } = engineWithout("keptRanges", "keepRanges");
  expect(await looksAtEdit(await opened(create), formulaEngine.FormulaDependencyGenerator.prototype)).toBe(
    ROWS,
  );
});

const SIZE = 5;
const NAMES = [{ name: "Waste", sheet: "Bid", range: "$A$1" }];

/** Numbers and formulas of cells that come earlier, so that none refers to itself. */
const contentAt = (index: number): fc.Arbitrary<string | number> => {
  if (index === 0) return fc.integer({ min: -9, max: 9 });
  const earlier = fc.integer({ min: 0, max: index - 1 }).map((each) => {
    const sheet = each < SIZE ? "Bid" : "Other";
    return `${sheet}!${"$".repeat(each % 2)}A${(each % SIZE) + 1}`;
  });
  return fc.oneof(
    fc.integer({ min: -9, max: 9 }),
    fc
      .tuple(
        fc.constantFrom(
          "=X+Y",
          "=-X*50%",
          "=SUM(X,Y)",
          "=IF(X>Y,X,Y)",
          "=Waste+X",
          '=LEN("A1 Waste")+Y',
          "=OFFSET(X,0,0)+Y",
          '=INDIRECT("Bid!A1")+X',
          "=SUM(Bid!A1:A1)+Y",
          "=GABLE.DOUBLE(ABS(X))",
          "=MAX(Bid!$A$1,X)",
        ),
        earlier,
        earlier,
      )
      .map(([shape, x, y]) => shape.replaceAll(/\bX\b/g, () => x).replaceAll(/\bY\b/g, () => y)),
  );
};

const addressOf = (index: number) => ({
  sheet: index < SIZE ? "Bid" : "Other",
  row: index % SIZE,
  column: 0,
});

const planWith = (contents: readonly (string | number)[]) =>
  planOf({
    sheets: ["Bid", "Other"].map((name) => ({
      name,
      cells: contents.flatMap((content, index) => {
        const { sheet, row, column } = addressOf(index);
        return sheet === name ? [{ row, column, content }] : [];
      }),
    })),
    names: NAMES,
  });

const shown = (engine: HeadlessEngine) =>
  Array.from({ length: 2 * SIZE }, (_, index) => engine.getCell(addressOf(index)));

test("after any edits, cells show what a full calculation gives", async () => {
  const contents = fc.tuple(...Array.from({ length: 2 * SIZE }, (_, index) => contentAt(index)));
  const edit = fc
    .integer({ min: 0, max: 2 * SIZE - 1 })
    .chain((index) => contentAt(index).map((content) => ({ index, content })));
  await fc.assert(
    fc.asyncProperty(contents, fc.array(edit, { minLength: 1, maxLength: 6 }), async (first, edits) => {
      const engine = createHeadlessEngine(fakeCatalog, planWith(first));
      await engine.calculated();
      const now: (string | number)[] = [...first];
      for (const { index, content } of edits) {
        now[index] = content;
        engine.setCell(addressOf(index), content);
        await engine.calculated();
        const fresh = createHeadlessEngine(fakeCatalog, planWith(now));
        await fresh.calculated();
        expect(shown(engine)).toEqual(shown(fresh));
        fresh.dispose();
      }
      engine.dispose();
    }),
    { numRuns: 20 },
  );
});
