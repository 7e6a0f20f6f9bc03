import {
  countInWords,
  headingInWords,
  lengthsInWords,
  valueInWords,
} from "../../../../src/sheets/changeOrder/measureWords";
import type { Measure } from "../../../../src/sheets/trace/measureLabels";

const measure = (heading: string, unit: string, value: Measure["value"]): Measure => ({
  sheet: "Takeoff",
  row: "Plane B",
  heading,
  unit,
  value,
  kind: "input",
});

describe("measures in words", () => {
  it.each([
    [measure("Slope, if taped", "ft", 19.5), `19' 6"`],
    [measure("Slope, if taped", "ft", "5.64 m"), `18' 6 1/16"`],
    [measure("Eave", "ft", "long"), "long"],
    [measure("and pitch", "", 6), "6 in 12"],
    [measure("and pitch", "", "6:12"), "6:12"],
    [measure("Stock", "in", 120), "120 in"],
    [measure("Waste", "", 0.1), "10%"],
    [measure("Price of a pack", "", 19.8), "19.80"],
    [{ ...measure("Value", "clips", 2), row: "clips per panel" }, "2"],
    [undefined, "blank"],
  ])("%j is %s", (given, words) => {
    expect(valueInWords(given)).toBe(words);
  });

  it.each([
    ["Slope, if taped", "slope length"],
    ["and pitch", "pitch"],
    ["or run", "run"],
    ["and tail, sloped", "sloped tail"],
    ["Chimney or pipe", ""],
    ["Value", ""],
    ["Panels, laid", "panels laid"],
  ])("%s is %j in a sentence", (heading, words) => {
    expect(headingInWords({ heading })).toBe(words);
  });

  it("counts in the plural, and one in the singular", () => {
    expect(countInWords(2, "courses")).toBe("2 more courses");
    expect(countInWords(-1, "panels laid")).toBe("1 fewer panel laid");
  });

  it("says lengths as a tape has them, and none where a tape shows none", () => {
    expect(lengthsInWords(80 + 1 / 3, "underlayment")).toEqual([`80' 4" more underlayment`]);
    expect(lengthsInWords(-10, "eave")).toEqual([`10' 0" less eave`]);
    expect(lengthsInWords(0.001, "eave")).toEqual([]);
  });
});
