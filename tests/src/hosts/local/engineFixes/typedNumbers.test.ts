import { parseTypedNumber, typedPercent } from "../../../../../src/hosts/local/engineFixes/typedNumbers";

describe("what a person types is the number that a spreadsheet makes of it", () => {
  it.each([
    ["10%", 0.1, "0%"],
    ["7.25 %", 0.0725, "0.00%"],
    ["2026-06-01", 46_174, "yyyy-mm-dd"],
    ["24,500", 24_500, "#,##0"],
    ["24,500.00", 24_500, "#,##0.00"],
    ["-1,234,567.8", -1_234_567.8, "#,##0.00"],
    ["$24,500", 24_500, "$#,##0"],
    ["-$9.50", -9.5, "$#,##0.00"],
    [" $ 12 ", 12, "$#,##0"],
  ])("%s", (typed, value, format) => {
    expect(parseTypedNumber(typed)).toEqual({ value, format });
  });

  it.each([
    "12",
    "12.5",
    "1,2",
    "12,34",
    "1,2345",
    "1, 1/2, 3/4",
    "6/12",
    "18' 6\"",
    "$",
    "12,500 lb",
    "1.234,50",
  ])("%s is left as it is", (typed) => {
    expect(parseTypedNumber(typed)).toBeUndefined();
  });
});

describe("a number typed into a cell that shows percent", () => {
  it.each([
    ["8", 0.08],
    [8, 0.08],
    ["-7.25", -0.0725],
    ["100", 1],
  ])("%p is that many hundredths", (typed, share) => {
    expect(typedPercent(typed, "0.00%")).toBe(share);
  });

  it.each(["0.08", "8%", "eight", "", null, true])("%p is left as it is", (typed) => {
    expect(typedPercent(typed, "0%")).toBeUndefined();
  });

  it("is left as it is in any other cell", () => {
    expect(typedPercent("8", "0.00")).toBeUndefined();
    expect(typedPercent("8", undefined)).toBeUndefined();
  });
});
