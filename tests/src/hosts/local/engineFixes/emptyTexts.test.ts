import { coursesSpec } from "../../../../../functions/courses/courses";
import { createHeadlessEngine, type HeadlessEngine } from "../../../../../src/hosts/local/workbook/headless";
import { customFunction } from "../../../../../src/hosts/local/formulas/customFunction";
import { engineWithout, unfixedFormulaEngine } from "../engineWithout";
import { fakeCatalog } from "../fakeCatalog";
import { planOf } from "../planOf";

/** A1 is an empty text, B1 and A3 are blank, A2 is 5, C1:C2 are 0 and 7; D1 spills empty texts into D1:D2. */
const given = [
  { row: 0, column: 0, content: '=""' },
  { row: 1, column: 0, content: 5 },
  { row: 0, column: 2, content: 0 },
  { row: 1, column: 2, content: 7 },
  { row: 0, column: 3, content: '=IF({1;2}>0,"","")' },
];

const engineWith = (
  create: typeof createHeadlessEngine,
  formulas: readonly string[],
): { engine: HeadlessEngine; shown: () => unknown[]; calculateAgain: () => Promise<void> } => {
  const asked = formulas.map((content, index) => ({ row: 5 + index, column: 6, content }));
  const engine = create(
    fakeCatalog,
    planOf({ sheets: [{ name: "Sheet1", cells: [...given, ...asked] }], names: [] }),
  );
  const at = (row: number) => ({ sheet: "Sheet1", row, column: 6 });
  return {
    engine,
    shown: () =>
      asked.map(({ row }) => {
        const value = engine.getCell(at(row));
        return typeof value === "object" && value !== null ? value.code : value;
      }),
    // The cells that the formulas read aren't calculated again.
    calculateAgain: async () => {
      for (const { row, content } of asked) engine.setCell(at(row), content);
      await engine.calculated();
    },
  };
};

/** The results in other spreadsheets. */
const EXPECTED: readonly (readonly [formula: string, answer: string | number | boolean])[] = [
  ["=A1*2", "#VALUE!"],
  ["=2*A1", "#VALUE!"],
  ["=A1+1", "#VALUE!"],
  ["=1-A1", "#VALUE!"],
  ["=1/A1", "#VALUE!"],
  ["=-A1", "#VALUE!"],
  ["=ROUND(A1,1)", "#VALUE!"],
  ["=D2*2", "#VALUE!"],
  ["=LET(x,A1,x*2)", "#VALUE!"],
  ['=IFERROR(A1*2,"none")', "none"],
  ["=ISBLANK(A1)", false],
  ["=ISBLANK(D2)", false],
  ["=ISBLANK(B1)", true],
  ["=ISTEXT(A1)", true],
  ["=COUNTA(A1:A3)", 2],
  ["=COUNTBLANK(A1:A3)", 2],
  ["=SUM(A1:A3)", 5],
  ["=MAX(A1:A3)", 5],
  ["=AVERAGE(A1:A3)", 5],
  ["=SUMPRODUCT(A1:A2,C1:C2)", 35],
  ['=A1&"x"', "x"],
  ["=LEN(A1)", 0],
  ['=A1=""', true],
  ["=A1=0", false],
  ["=A1>0", true],
  ["=A1=B1", true],
  ["=B1=A1", true],
  ["=A1>B1", false],
  ["=A1<=B1", true],
  ['=SUMPRODUCT((A1:A3="")*1)', 2],
  ["=B1*2", 0],
  ["=B1=0", true],
  ['=MATCH("",A1:A2,0)', 1],
];

test("an empty text is a text, both when it was just calculated and when it was calculated before", async () => {
  const { engine, shown, calculateAgain } = engineWith(
    createHeadlessEngine,
    EXPECTED.map(([formula]) => formula),
  );
  await engine.calculated();
  const named = (answers: readonly unknown[]) => answers.map((answer, at) => [EXPECTED[at]?.[0], answer]);
  expect(named(shown())).toEqual(EXPECTED);
  await calculateAgain();
  expect(named(shown())).toEqual(EXPECTED);
  engine.dispose();
});

test("our functions treat an empty text as blank: a row with no input stays blank", async () => {
  const create: typeof createHeadlessEngine = (_, plan) =>
    createHeadlessEngine([customFunction(coursesSpec)], plan);
  const { engine, shown, calculateAgain } = engineWith(create, ["=GABLE.COURSES(A1,A1)"]);
  await engine.calculated();
  expect(shown()).toEqual([""]);
  await calculateAgain();
  expect(shown()).toEqual([""]);
  engine.dispose();
});

test("a cell that someone has cleared is blank", async () => {
  const { engine, shown } = engineWith(createHeadlessEngine, ["=ISBLANK(A2)", "=A2*2"]);
  engine.setCell({ sheet: "Sheet1", row: 1, column: 0 }, "");
  await engine.calculated();
  expect(shown()).toEqual([true, 0]);
  engine.dispose();
});

describe("without the fix", () => {
  it("a result that is an empty text counts as blank", async () => {
    const { createHeadlessEngine: create } = engineWithout("emptyTexts", "keepEmptyTexts");
    const { engine, shown } = engineWith(create, ["=A1*2"]);
    await engine.calculated();
    expect(shown()).toEqual([0]);
    engine.dispose();
  });

  it("a blank compared with a text is 0", () => {
    const { NullValueObject, StringValueObject } = unfixedFormulaEngine();
    expect(StringValueObject.create("").isEqual(NullValueObject.create()).getValue()).toBe(false);
  });
});
