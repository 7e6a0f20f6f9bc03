import { parseAnswer } from "../../../../src/practice/marking/parseAnswer";
import type { Field } from "../../../../src/practice/topic";

const field = (kind: Field["kind"], unit: string): Field => ({ label: "", format: "", kind, unit });
const FEET = field("length", "ft");
const INCHES = field("length", "in");
const MM = field("length", "mm");
const SQ_FT = field("area", "sq ft");
const SQ_M = field("area", "m²");
const SQUARES = field("number", "squares");
const PANELS = field("count", "panels");
const PITCH = field("pitch", "in 12");
const DEGREES = field("degrees", "degrees");
const MONEY = field("money", "money");
const FACTOR = field("number", "");
const WORD = field("word", "");

const LENGTH_IN = 15 * 12 + 7 + 13 / 16;
const M2_IN_SQ_FT = 114.7 / 0.092_903_04;

describe("a typed answer", () => {
  it.each<[string, Field, number | string]>([
    ["15 7 13/16", FEET, LENGTH_IN],
    ["15 ft, 7 13/16 in", FEET, LENGTH_IN],
    [`15', 7 13/16"`, FEET, LENGTH_IN],
    ["15´ 7 13/16´´", FEET, LENGTH_IN],
    ["15` 7 13/16``", FEET, LENGTH_IN],
    [`15' 7 13⁄16"`, FEET, LENGTH_IN],
    [`15' 7 13/16"`, FEET, LENGTH_IN],
    ["15 yards", FEET, 15 * 36],
    ["22-1/2", INCHES, 22.5],
    ["22 1/2 ins", INCHES, 22.5],
    ["22 1/2 ins.", INCHES, 22.5],
    ["4.77 meters", MM, 4770 / 25.4],
    ["4.77 meters", MM, 4770 / 25.4],
    ["4.77m.", MM, 4770 / 25.4],
    ["4 770 mm", MM, 4770 / 25.4],
    ["4 770", MM, 4770 / 25.4],
    ["4,770", MM, 4770 / 25.4],
    ["4,770 mm", MM, 4770 / 25.4],
    ["4,77 m", MM, 4770 / 25.4],
    ["4770 millimeters", MM, 4770 / 25.4],
    ["114,7", SQ_M, M2_IN_SQ_FT],
    ["114.7", SQ_M, M2_IN_SQ_FT],
    ["114.7 m2", SQ_M, M2_IN_SQ_FT],
    ["114.7 m^2", SQ_M, M2_IN_SQ_FT],
    ["114.7 m²", SQ_M, M2_IN_SQ_FT],
    ["114.7 sq m", SQ_FT, M2_IN_SQ_FT],
    ["114.7 square meters", SQ_M, M2_IN_SQ_FT],
    ["1,234.5 ft2", SQ_FT, 1234.5],
    ["1234.5 sq. ft.", SQ_FT, 1234.5],
    ["12.345 squares", SQ_FT, 1234.5],
    ["1234.5 sq ft", SQUARES, 12.345],
    ["12.345", SQUARES, 12.345],
    ["12 panels", PANELS, 12],
    ["12 panel", PANELS, 12],
    ["1,118", FACTOR, 1.118],
    ["1,118", PANELS, 1118],
    ["6.5 over 12", PITCH, 6.5],
    [`6.5" in 12"`, PITCH, 6.5],
    ["6.5in12", PITCH, 6.5],
    ["6 1/2 in 12", PITCH, 6.5],
    ["26.6 º", DEGREES, 26.6],
    ["26.6 degrees", DEGREES, 26.6],
    ["26.6 percent", DEGREES, (Math.atan(0.266) * 180) / Math.PI],
    ["(84.30)", MONEY, -84.3],
    ["$-84.30", MONEY, -84.3],
    ["-$84.30", MONEY, -84.3],
    ["84.30-", MONEY, -84.3],
    ["($1,284.30)", MONEY, -1284.3],
    ["USD 1284.30", MONEY, 1284.3],
    ["1284.30 USD", MONEY, 1284.3],
    ["+$1,284.30", MONEY, 1284.3],
    ["low-slope", WORD, "low slope"],
    ["Low slope.", WORD, "low slope"],
  ])("reads %p in a field of %j as %p", (typed, asked, amount) => {
    const readings = parseAnswer(typed, asked) ?? [];
    const isThere = readings.some((reading) =>
      typeof reading === "number" && typeof amount === "number"
        ? Math.abs(reading - amount) < 1e-9 * Math.max(1, Math.abs(amount))
        : reading === amount,
    );
    expect([readings, isThere]).toEqual([readings, true]);
  });

  it.each<[string, Field]>([
    ["12 packs", PANELS],
    ["12 sq ft", PANELS],
    ["12 bananas", FACTOR],
    ["15.65 furlongs", FEET],
    ["1234.5 yards", SQ_FT],
    ["1234.5 acres", SQ_FT],
    ["84.30 panels", MONEY],
    ["26.6 panels", DEGREES],
    ["12 and a bit", PANELS],
    ["no idea", FEET],
  ])("can't read %p in a field of %j", (typed, asked) => {
    expect(parseAnswer(typed, asked)).toEqual([]);
  });

  it("has one reading where it isn't ambiguous", () => {
    expect(parseAnswer("1,234.5", SQ_FT)).toEqual([1234.5]);
    expect(parseAnswer("15.65 yards", FEET)).toHaveLength(1);
    expect(parseAnswer("1234.5 sq m", SQ_FT)).not.toContain(1234.5);
  });
});
