import {
  countChangeText,
  headingText,
  lengthChangeText,
  valueText,
} from "../../../../src/sheets/changeOrder/measurementText";
import type { Measurement } from "../../../../src/sheets/trace/measurements";

const measurement = (heading: string, unit: string, value: Measurement["value"]): Measurement => ({
  sheet: "Takeoff",
  row: "Plane B",
  heading,
  unit,
  value,
  kind: "input",
});

describe("measurements in words", () => {
  it.each([
    [measurement("Slope, if taped", "ft", 19.5), `19' 6"`],
    [measurement("Slope, if taped", "ft", "5.64 m"), `18' 6 1/16"`],
    [measurement("Eave", "ft", "long"), "long"],
    [measurement("and pitch", "", 6), "6 in 12"],
    [measurement("and pitch", "", "6:12"), "6:12"],
    [measurement("Stock", "in", 120), "120 in"],
    [measurement("Waste", "", 0.1), "10%"],
    [measurement("Price of a pack", "", 19.8), "19.80"],
    [{ ...measurement("Value", "clips", 2), row: "clips per panel" }, "2"],
    [undefined, "blank"],
  ])("%j is %s", (given, words) => {
    expect(valueText(given)).toBe(words);
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
    expect(headingText({ heading })).toBe(words);
  });

  it("counts in the plural, and one in the singular", () => {
    expect(countChangeText(2, "courses")).toBe("2 more courses");
    expect(countChangeText(-1, "panels laid")).toBe("1 fewer panel laid");
  });

  it("says lengths as a tape has them, and none where a tape shows none", () => {
    expect(lengthChangeText(80 + 1 / 3, "underlayment")).toEqual([`80' 4" more underlayment`]);
    expect(lengthChangeText(-10, "eave")).toEqual([`10' 0" less eave`]);
    expect(lengthChangeText(0.001, "eave")).toEqual([]);
  });
});
