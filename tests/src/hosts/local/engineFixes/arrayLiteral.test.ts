import { splitArrayLiteral } from "../../../../../src/hosts/local/engineFixes/arrayLiteral";

describe("array literals", () => {
  it.each([
    [
      "{1,2;3,4}",
      [
        ["1", "2"],
        ["3", "4"],
      ],
    ],
    ["{ 1 , 2 }", [["1", "2"]]],
    ['{"a, b";"c; d"}', [['"a, b"'], ['"c; d"']]],
    [`{"18' 6 1/2""",TRUE}`, [[`"18' 6 1/2"""`, "TRUE"]]],
    ['{"{1}"}', [['"{1}"']]],
    ["{-1.5,#N/A}", [["-1.5", "#N/A"]]],
  ])("splits %s, but not inside its texts", (raw, rows) => {
    expect(splitArrayLiteral(raw)).toEqual(rows);
  });

  it.each(["1", '"{1,2}"', "{1,2;3}", '{"a}', "{{1}}"])("leaves %s to the engine", (raw) => {
    expect(splitArrayLiteral(raw)).toBeUndefined();
  });
});
