import fc from "fast-check";
import { readLengthText, writeTape } from "../../shared/lengthText";

describe("length text", () => {
  it.each([
    [`18' 6 1/2"`, 222.5],
    ["18'6-1/2\"", 222.5],
    ["18-6 1/2", 222.5],
    ["18 ft 6.5 in", 222.5],
    ["18 feet 6 1/2 inches", 222.5],
    ["18 ft. 6.5 in.", 222.5],
    ["18'-6 1/2\"", 222.5],
    ["18′ 6½″", 222.5],
    ["18’ 6 ½”", 222.5],
    ["18' 6 1/2''", 222.5],
    ["18'", 216],
    ["18.5'", 222],
    [`222.5"`, 222.5],
    [`6-1/2"`, 6.5],
    [`1/2"`, 0.5],
    ["12 in", 12],
    ["5.64 m", 5640 / 25.4],
    ["610 mm", 610 / 25.4],
    ["61cm", 610 / 25.4],
    ["12-6", 150],
    [`18-6 1/2"`, 222.5],
    [`18-6"`, 222],
    ["18-6 1/2 in", 222.5],
    [`18 - 6"`, 222],
    ["-5 ft", -60],
    [`-18' 6 1/2"`, -222.5],
    [`−18-6"`, -222],
    [`-6-1/2"`, -6.5],
    ["- 610 mm", -610 / 25.4],
    ["+5 ft", 60],
    ["6″", 6],
    [".25 in", 0.25],
    ["18 inch", 18],
  ])("reads %s as %d in", (text, inches) => {
    expect(readLengthText(text)).toEqual({ inches: expect.closeTo(inches, 9) as number });
  });

  it.each([
    ["18.5", 18.5],
    ["6 1/2", 6.5],
    ["-3", -3],
    ["-6 1/2", -6.5],
    ["-0", 0],
    [" 7 ", 7],
    ["12".padStart(64, "0"), 12],
  ])("reads %j in the parameter's unit", (text, bare) => {
    expect(readLengthText(text)).toEqual({ bare });
  });

  it.each([
    "",
    "eave",
    "18' 14\"",
    "18.5' 6\"",
    "1-1/2",
    "-1-1/2",
    "--5 ft",
    "-",
    `18-14"`,
    `18-1/2 1/4"`,
    "1/0",
    "6 1/2 1/4",
    "5,64 m",
    "'",
    '"',
    "12 13",
    "5 min",
    "9".repeat(100),
    "12".padStart(65, "0"),
    // Words or numbers before or after a valid length.
    "about 5 mm",
    "12 in 5",
    `5" 6`,
    "x5 ft",
    "x5-6",
    `5' 12"`,
    "1-11/16",
  ])("doesn't guess at %j", (text) => {
    expect(readLengthText(text)).toBeUndefined();
  });

  it("reads back a length written to the nearest tape mark, within half a mark", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 30_000, noNaN: true }),
        fc.constantFrom(1, 2, 4, 8, 16, 32, 64),
        (feet, marks) => {
          const reading = readLengthText(writeTape(feet, marks));
          expect(reading && "inches" in reading).toBe(true);
          const inches = reading && "inches" in reading ? reading.inches : NaN;
          expect(Math.abs(inches - feet * 12)).toBeLessThanOrEqual(0.5 / marks + 1e-9);
        },
      ),
    );
  });

  it("writes feet and inches with reduced fractions, and carries 12 in into the feet", () => {
    expect(writeTape(0, 16)).toBe(`0' 0"`);
    expect(writeTape(1 + 4 / 192, 16)).toBe(`1' 0 1/4"`);
    expect(writeTape(11.9999, 16)).toBe(`12' 0"`);
  });
});
