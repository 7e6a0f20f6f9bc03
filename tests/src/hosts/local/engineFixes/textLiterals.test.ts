import { createHeadlessEngine } from "../../../../../src/hosts/local/workbook/headless";
import { unfixedFormulaEngine } from "../engineWithout";
import { fakeCatalog } from "../fakeCatalog";

const literals = [
  "6:12",
  "6/12",
  "50%",
  "1/2",
  "$5",
  `18' 6 1/2"`,
  "TRUE",
  "#N/A",
  "5",
  " 6:12 ",
  "{1,2}",
  "",
];
const quoted = (text: string): string => `"${text.replaceAll('"', '""')}"`;

const engine = createHeadlessEngine(fakeCatalog);
afterAll(() => engine.dispose());

test.each(literals)("%s reaches a function as that text", async (text) => {
  expect(await engine.evaluate(`=GABLE.SHOW(${quoted(text)})`)).toEqual({
    kind: "value",
    value: `string ${text}`,
  });
});

test.each([
  '=GABLE.SHOW(IF(TRUE,"6:12"))',
  '=LET(pitch,"6:12",GABLE.SHOW(pitch))',
  '=GABLE.SHOW(CHOOSE(1,"6:12"))',
  '=GABLE.SHOW("6:"&"12")',
])("so does the text in %s", async (formula) => {
  expect(await engine.evaluate(formula)).toEqual({ kind: "value", value: "string 6:12" });
});

test("so do the texts of an array literal", async () => {
  expect(await engine.evaluate(`=GABLE.SHOW({"6:12",1;"50%","18' 6 1/2"""})`)).toEqual({
    kind: "value",
    value: `[string 6:12,number 1;string 50%,string 18' 6 1/2"]`,
  });
});

test.each([
  ['="a"&"b"', "ab"],
  ['="5"+1', 6],
  ['="50%"*2', 1],
  ['=IF("x"="x",1,2)', 1],
  ['=SUM("5",1)', 6],
  ['=SUM("50%",1)', 1.5],
  ['=VALUE("50%")', 0.5],
  ['=VALUE("$5")', 5],
  ['=HOUR("6:12")', 6],
  ['=DATEVALUE("6/12/2024")', 45455],
  ['=TEXT(0.5,"0%")', "50%"],
  ['=ROUND("5.55",1)', 5.6],
  ['=LEN("50%")', 3],
  ['=CONCAT("6:12","50%")', "6:1250%"],
  ['=ISNUMBER("50%")', false],
])("the native %s gives the same as Excel", async (formula, value) => {
  expect(await engine.evaluate(formula)).toEqual({ kind: "value", value });
});

describe("without the fix", () => {
  it("a text that looks like a time is a number", () => {
    const { ValueObjectFactory } = unfixedFormulaEngine();
    expect(ValueObjectFactory.create('"6:12"').getValue()).not.toBe("6:12");
  });

  it("an array literal is split inside a text", () => {
    const { ArrayValueObject, ValueObjectFactory } = unfixedFormulaEngine();
    const array = ValueObjectFactory.create('{"1, 1/2",2}');
    expect(array instanceof ArrayValueObject && array.getColumnCount()).toBe(3);
  });
});
