import { catalog } from "../../../functions/index";
import { isMatrix, type Answer } from "../../../shared/cell";
import { formulaText } from "../../../src/help/formulaText";
import { localCatalog } from "../../../src/hosts/local/formulas/catalog";
import { createHeadlessEngine } from "../../../src/hosts/local/workbook/headless";

const engine = createHeadlessEngine(localCatalog);
afterAll(() => engine.dispose());

/** Blank cells of an array can't be written into a formula, so those examples stay with ranges. */
const canBeWritten = (args: readonly unknown[]): boolean =>
  !args.some((argument) => Array.isArray(argument) && argument.flat().includes(null));

const examples = catalog.flatMap((spec) =>
  spec.examples
    .filter(({ args }) => canBeWritten(args))
    .map(({ args, result }) => [formulaText(spec, args), result] as const),
);

const rounded = (answer: Answer): unknown =>
  isMatrix(answer)
    ? answer.map((row) => row.map((cell) => rounded(cell)))
    : typeof answer === "number"
      ? expect.closeTo(answer, 6)
      : answer;

test.each(examples)("%s, typed as help writes it, gives the example's result", async (formula, result) => {
  const evaluation = await engine.evaluate(formula);
  expect(evaluation).toEqual(
    isMatrix(result) ? { kind: "table", table: rounded(result) } : { kind: "value", value: rounded(result) },
  );
});
