import { shiftFormula } from "../../../../src/workbook/formulas/shiftFormula";

test.each([
  ["A1+$A1+A$1+$A$1", 2, 1, "B3+$A3+B$1+$A$1"],
  ["SUM(B2:C3)*Bid!D4", -1, -1, "SUM(A1:B2)*Bid!C3"],
  ["SUM(A:A)+SUM(1:1)+SUM($A:B)+SUM($1:2)", 1, 1, "SUM(B:B)+SUM(2:2)+SUM($A:C)+SUM($1:3)"],
  ["\"A1\"&'A1'!A1&LOG10(A1)&A1B&Table1[A1]", 1, 0, "\"A1\"&'A1'!A2&LOG10(A2)&A1B&Table1[A1]"],
  ["AZ9+XFD1048576", 1, 1, "BA10+A1"],
])("%s shared %i down and %i to the right", (formula, rows, columns, shifted) => {
  expect(shiftFormula(formula, rows, columns)).toBe(shifted);
});
