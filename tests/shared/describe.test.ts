import { CellError } from "../../shared/cell";
import { counted, describeCell } from "../../shared/describe";

describe("describes the value received in familiar terms", () => {
  it.each([
    [null, "a blank cell"],
    [new CellError("#DIV/0!", "division by zero"), "#DIV/0!"],
    [true, "TRUE"],
    [false, "FALSE"],
    [1.5, "1.5"],
    ["", '""'],
    ["n".repeat(40), `"${"n".repeat(40)}"`],
    ["n".repeat(41), `"${"n".repeat(40)}…"`],
  ])("%j is described as %s", (cell, words) => {
    expect(describeCell(cell)).toBe(words);
  });

  it("counts one thing and several things", () => {
    expect([0, 1, 2].map((count) => counted(count, "row"))).toEqual(["0 rows", "1 row", "2 rows"]);
  });
});
