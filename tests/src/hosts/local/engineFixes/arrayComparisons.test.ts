import { createHeadlessEngine } from "../../../../../src/hosts/local/workbook/headless";
import { engineWithout } from "../engineWithout";
import { fakeCatalog } from "../fakeCatalog";
import { planOf } from "../planOf";

/** The results of formulas in A6, A7 ... below the letters x, y, x, y in A1:A4. */
const resultsBelowLetters = async (
  create: typeof createHeadlessEngine,
  formulas: readonly string[],
): Promise<unknown[]> => {
  const letters = ["x", "y", "x", "y"].map((content, row) => ({ row, column: 0, content }));
  const below = formulas.map((content, index) => ({ row: 5 + index, column: 0, content }));
  const engine = create(
    fakeCatalog,
    planOf({ sheets: [{ name: "Sheet1", cells: [...letters, ...below] }], names: [] }),
  );
  await engine.calculated();
  const shown = below.map(({ row }) => engine.getCell({ sheet: "Sheet1", row, column: 0 }));
  engine.dispose();
  return shown;
};

test("a comparison uses the items of an array, not the cells below the formula", async () => {
  expect(
    await resultsBelowLetters(createHeadlessEngine, [
      '=SUMPRODUCT((A1:A4="x")*1)',
      '=SUMPRODUCT((VSTACK(A1:A2,A3:A4)="x")*1)',
      '=SUMPRODUCT((VSTACK(A3:A4,A1:A2,A1:A4)="x")*1)',
      '=SUMPRODUCT((VSTACK(A1:A4,A3)="x")*1)',
      '=SUMPRODUCT((VSTACK(A1,A1)="x")*1)',
    ]),
  ).toEqual([2, 2, 4, 3, 2]);
});

test("without the fix, the comparison uses the wrong cells", async () => {
  const { createHeadlessEngine: create } = engineWithout("arrayComparisons", "compareArrayItems");
  const formulas = ['=SUMPRODUCT((VSTACK(A3:A4,A1:A2)="x")*1)', '=SUMPRODUCT((VSTACK(A1,A1)="x")*1)'];
  expect(await resultsBelowLetters(create, formulas)).not.toEqual([2, 2]);
});
