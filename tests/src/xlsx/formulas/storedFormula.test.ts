import { needsArrayFormula } from "../../../../src/xlsx/formulas/needsArrayFormula";
import { storedFormula, shownFormula, unwritablePart } from "../../../../src/xlsx/formulas/storedFormula";
import { formulaOf, tokensOf } from "../../../../src/workbook/formulas/tokens";

const FORMS = [
  ["=GABLE.COURSES(J6,ExposedHeight)", "_xldudf_GABLE_COURSES(J6,ExposedHeight)"],
  ["=SUM(A1:A3)+1", "SUM(A1:A3)+1"],
  ["=XLOOKUP(A1,B:B,C:C)", "_xlfn.XLOOKUP(A1,B:B,C:C)"],
  ["=SORT(FILTER(A1:A9,B1:B9>0))", "_xlfn._xlws.SORT(_xlfn._xlws.FILTER(A1:A9,B1:B9>0))"],
  ["=LET(x,A1,y,x*2,x+y)", "_xlfn.LET(_xlpm.x,A1,_xlpm.y,_xlpm.x*2,_xlpm.x+_xlpm.y)"],
  ["=MAP(A1:A3,LAMBDA(v,v+1))+v", "_xlfn.MAP(A1:A3,_xlfn.LAMBDA(_xlpm.v,_xlpm.v+1))+v"],
  ["=\"GABLE.COURSES(1)\"&'XLOOKUP(a)'!A1", "\"GABLE.COURSES(1)\"&'XLOOKUP(a)'!A1"],
  ["=SUM(Table1[XLOOKUP(])", "SUM(Table1[XLOOKUP(])"],
  ["=NETWORKDAYS.INTL(A1,B1)", "NETWORKDAYS.INTL(A1,B1)"],
] as const;

test.each(FORMS)("%s is %s in a file", (shown, inFile) => {
  expect(storedFormula(shown)).toBe(inFile);
  expect(shownFormula(inFile)).toBe(shown);
});

test("a prefixed function that isn't on our list keeps its prefix", () => {
  expect(shownFormula("_xlfn.SINGLE(A1:A3)+_xlfn.NEWTHING(1)")).toBe(
    "=_xlfn.SINGLE(A1:A3)+_xlfn.NEWTHING(1)",
  );
});

test.each([
  ["=@A1:A3", "@"],
  ["=A1#", "#"],
  ["=SUM(Bid[@Price])", "[@Price]"],
  ["=A1&\"@\"&'#'!B2&#REF!", undefined],
])("%s: %s has no form in a file yet", (formula, part) => {
  expect(unwritablePart(formula)).toBe(part);
});

test.each([
  ["=A1+B1", false],
  ["=SUM(A1:A3)", false],
  ["=SUM(A1:A3*B1:B3)", true],
  ["=IF(A1:A3>1,2,3)", true],
  ["=INDEX(GABLE.LAYOUT(A1:B4,Panel),2,3)", false],
  ["=GABLE.LAYOUT(A1:B4,Panel)", true],
  ["=GABLE.COURSES(A1:A3,12)", false],
  ["=SEQUENCE(3)", true],
  ["=SUM({1,2}*A1)", false],
])("%s kept as an array formula: %s", (formula, isArray) => {
  expect(needsArrayFormula(formula)).toBe(isArray);
});

test("tokens joined are the formula again", () => {
  for (const [shown] of FORMS) expect(formulaOf(tokensOf(shown))).toBe(shown);
});
