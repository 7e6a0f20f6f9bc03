import { METALS } from "../../shared/metals";
import { callForNumber } from "../support/call";

describe("metals against published figures", () => {
  it("6 m of aluminum at 20 °C are 5.993 m at -30 °C and 6.004 m at 50 °C (an engineering reference on the web)", () => {
    const lengthM = (changeK: number): number =>
      6 + (callForNumber("THERMALMOVE", "6 m", changeK * 1.8, "aluminum") * 25.4) / 1000;
    expect(lengthM(-50)).toBeCloseTo(5.993, 3);
    expect(lengthM(30)).toBeCloseTo(6.004, 3);
  });

  it("16 oz copper, 0.0216 in thick, weighs 1 lb per sq ft (trade fact, from memory)", () => {
    expect(callForNumber("SHEETWEIGHT", "copper", 0.0216)).toBeCloseTo(1, 2);
  });

  it("alloy 3003 at 0.099 lb/cu in is 2730 kg per cubic meter, as the same source publishes, to three digits", () => {
    const kgPerSqM = callForNumber("SHEETWEIGHT", "aluminium", "1 mm") * (0.453_592_37 / 0.3048 ** 2);
    expect(Math.abs(kgPerSqM / 2.73 - 1)).toBeLessThan(0.005);
  });

  it("steel at 490 lb/cu ft is 7850 kg per cubic meter, stainless 8000, zinc 7200", () => {
    const kgPerSqM = (name: string): number =>
      callForNumber("SHEETWEIGHT", name, "1 mm") * (0.453_592_37 / 0.3048 ** 2);
    expect(kgPerSqM("galvanised steel")).toBeCloseTo(7.85, 2);
    expect(kgPerSqM("stainless")).toBeCloseTo(8, 9);
    expect(kgPerSqM("zinc")).toBeCloseTo(7.2, 9);
  });

  it("every metal names its source, and expands when heated as much as it shrinks when cooled", () => {
    for (const { names, source } of METALS) {
      expect(source).not.toBe("");
      for (const name of names)
        expect(callForNumber("THERMALMOVE", 10, 100, name)).toBe(
          -callForNumber("THERMALMOVE", 10, -100, name),
        );
    }
  });
});
