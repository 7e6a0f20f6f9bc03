import { typedCell } from "../../../src/workbook/typedCell";

test.each([
  ["", null],
  ["  ", null],
  ["12", 12],
  ["-1.5", -1.5],
  [".5", 0.5],
  ["true", true],
  ["FALSE", false],
  ["6:12", "6:12"],
  ["18' 6 1/2\"", "18' 6 1/2\""],
  ["1e3", "1e3"],
  ["=1+1", "=1+1"],
])("%j typed is %j", (typed, cell) => {
  expect(typedCell(typed)).toBe(cell);
});
