import { commaReadings } from "../../../functions/practice/answerText";
import { inUnit } from "../../../functions/practice/answerUnits";
import { answerReadings, MONEY, type AnswerReading } from "../../../functions/practice/readAnswer";

const length = (inches: number): AnswerReading => ({ kind: "length", inches });
const number = (amount: number, unit = ""): AnswerReading => ({ kind: "number", number: amount, unit });
const words = (text: string): AnswerReading => ({ kind: "words", words: text });

describe("how an answer is read", () => {
  it.each<[string | number, AnswerReading[]]>([
    [1e-7, [number(1e-7)]],
    ["6 1/2", [number(6.5)]],
    ["12", [number(12)]],
    ["2 yards", [length(72)]],
    ["1.5 yd.", [length(54)]],
    ["+5 panels", [number(5, "panels")]],
    ["-5 panels", [number(-5, "panels")]],
    // Spaces as thousands separators.
    ["5 080 mm", [length(200)]],
    ["25 400 mm", [length(1000)]],
    ["$4 770", [number(4770, MONEY)]],
    ["1 234 567 panels", [number(1_234_567, "panels")]],
    ["5 125/128 in", [length(5 + 125 / 128)]],
    ["4 7701", [words("4 7701")]],
    ["12.345 678 mm", [words("12.345 678 mm")]],
    // Commas as thousands or decimal separators.
    ["1,118", [number(1118), number(1.118)]],
    ["1,234.5 sq ft", [number(1234.5, "sq ft")]],
    ["5,08 m", [length(200)]],
    ["low, or steep", [words("low, or steep")]],
    // Money, and a credit in any form.
    ["$84.30", [number(84.3, MONEY)]],
    ["$-84.30", [number(-84.3, MONEY)]],
    ["-$84.30", [number(-84.3, MONEY)]],
    ["+$84.30", [number(84.3, MONEY)]],
    ["US$ 84.30", [number(84.3, MONEY)]],
    ["84.30 USD", [number(84.3, MONEY)]],
    ["1 dollar", [number(1, MONEY)]],
    ["2 dollars", [number(2, MONEY)]],
    ["2 dollars more", [number(2, "dollars more")]],
    ["2 us dollars", [number(2, "us dollars")]],
    ["(84.30)", [number(-84.3, MONEY)]],
    ["84.30-", [number(-84.3, MONEY)]],
    ["(0)", [words("(0)")]],
    ["(-5)", [words("(-5)")]],
    ["(low)", [words("(low)")]],
    ["Long ".repeat(20), [words("Long ".repeat(20))]],
  ])("%j is read as %j", (typed, readings) => {
    const near = (reading: AnswerReading): unknown =>
      reading.kind === "length"
        ? { ...reading, inches: expect.closeTo(reading.inches, 9) as number }
        : reading;
    expect(answerReadings(typed)).toEqual(readings.map(near));
  });

  it.each([
    ["12", ["12"]],
    ["1,118", ["1118", "1.118"]],
    ["1,234.5", ["1234.5"]],
    ["5,5 m", ["5.5 m"]],
    ["low, or steep", []],
  ])("the commas of %j are read as %j", (text, readings) => {
    expect(commaReadings(text)).toEqual(readings);
  });
});

describe("a number in another unit", () => {
  it("is converted between areas, but not between units of different kinds", () => {
    expect(inUnit(250, "sq ft", "squares")).toBe(2.5);
    expect(inUnit(2.5, "squares", "square feet")).toBe(250);
    expect(inUnit(12, "packs", "sq ft")).toBeUndefined();
    expect(inUnit(12, "sq ft", "packs")).toBeUndefined();
  });

  it("is unchanged if either has no unit or both have the same one, singular or plural", () => {
    expect(inUnit(12, "", "panels")).toBe(12);
    expect(inUnit(12, "panels", "")).toBe(12);
    expect(inUnit(1, "panel", "panels")).toBe(1);
  });
});
