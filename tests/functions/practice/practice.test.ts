import fc from "fast-check";
import { randomOf } from "../../../functions/practice/random";
import { LEVELS } from "../../../functions/practice/level";
import { UNITS } from "../../../functions/practice/measuring";
import { call, callForNumber, callForSentence } from "../../support/call";

describe("chance from a seed", () => {
  it("is the same for the same seed, and different for another", () => {
    const draws = (seed: string): number[] => {
      const random = randomOf(seed);
      return Array.from({ length: 50 }, () => random.whole(0, 1_000_000));
    };
    expect(draws("4711")).toEqual(draws("4711"));
    expect(draws("4711")).not.toEqual(draws("4712"));
  });

  it("gives every whole number within its bounds about equally often", () => {
    const random = randomOf("spread");
    const draws = Array.from({ length: 60_000 }, () => random.whole(1, 6));
    // 10,000 each; the standard deviation is 91.
    for (const face of [1, 2, 3, 4, 5, 6])
      expect(Math.abs(draws.filter((each) => each === face).length - 10_000)).toBeLessThan(500);
  });
});

describe("PRACTICEROOF", () => {
  it("gives the same roof for a number and for its digits, another for another seed, and never an unreadable measure", () => {
    expect(call("PRACTICEROOF", 12)).toEqual(call("PRACTICEROOF", "12"));
    expect(call("PRACTICEROOF", 12)).not.toEqual(call("PRACTICEROOF", 13));
    fc.assert(
      fc.property(fc.nat(), fc.constantFrom(...LEVELS), fc.constantFrom(...UNITS), (seed, level, units) => {
        const rows = call("PRACTICEROOF", seed, level, units, false) as string[][];
        const of = (label: string): string => rows.find(([each]) => each === label)?.[1] ?? "";
        expect(callForNumber("FEET", of("building length"))).toBeGreaterThanOrEqual(22);
        expect(callForNumber("PITCHANGLE", of("pitch"))).toBeGreaterThan(14);
        // Other functions accept the block as a panel.
        expect(callForNumber("PANELVALUE", rows, "exposed width")).toBeGreaterThan(15);
      }),
      { numRuns: 200 },
    );
  });

  it("writes every measurement as the class's tape shows it", () => {
    const forms = { "feet and inches": /^(?:\d+' )?[\d /]+"$/, metric: /^\d+ mm$/ };
    const pitchForms = { "feet and inches": /^\d+(?:\.5)? in 12$/, metric: /^\d+°$/ };
    fc.assert(
      fc.property(fc.nat(), fc.constantFrom(...LEVELS), fc.constantFrom(...UNITS), (seed, level, units) => {
        const rows = call("PRACTICEROOF", seed, level, units, false) as string[][];
        for (const [label, value] of rows)
          expect(value).toMatch(label === "pitch" ? pitchForms[units] : forms[units]);
        for (const label of ["overhang", "exposed height", "gable fold", "trim lap", "trim clip spacing"])
          expect(callForNumber("INCHES", rows.find(([each]) => each === label)?.[1])).toBeGreaterThan(1);
      }),
    );
  });

  it("accepts a seed of up to 64 characters, ignoring leading and trailing spaces", () => {
    expect(call("PRACTICEROOF", " north side ")).toEqual(call("PRACTICEROOF", "north side"));
    expect(call("PRACTICEROOF", "n".repeat(64))).toHaveLength(12);
    expect(callForSentence("PRACTICEROOF", "n".repeat(65))).toBe(
      `#VALUE! seed takes at most 64 characters, got "${"n".repeat(40)}…"`,
    );
  });

  it("rejects an unknown level", () => {
    expect(callForSentence("PRACTICEROOF", 1, "hard")).toBe(
      '#VALUE! level takes one of first hour, half day, full roof, got "hard"',
    );
  });
});

describe("ANSWERCHECK", () => {
  it.each([
    ["187.8 in", `15' 7 13/16"`, undefined, "right"],
    ["4771 mm", `15' 7 13/16"`, undefined, "right"],
    [15.65, "15.65 ft", undefined, "near"],
    [187.8, "15.65 ft", undefined, "near"],
    [20, 20, undefined, "right"],
    [19, 20, undefined, "wrong"],
    [240, 20, undefined, "near"],
    ["1.118", 1.118034, undefined, "right"],
    ["$1,234.50", 1234.5, 0, "right"],
    ["1234.5 sq m", "1234.5 sq ft", 1, "wrong"],
    ["114.7 m2", "1234.6 sq ft", 1, "right"],
    ["12 packs", "12 panels", 0, "wrong"],
    ["12 panels", 12, 0, "right"],
    ["15.65 yards", "15.65 ft", undefined, "wrong"],
    ["26.6 percent", "26.6°", undefined, "wrong"],
    ["26.6°", "26.57°", "0.1", "right"],
    ["Steep ", "steep", undefined, "right"],
    ["steep", "low", undefined, "wrong"],
    ["about twenty", 20, undefined, "wrong"],
    [`15' 7"`, `15' 7 13/16"`, "1 in", "right"],
    [0, 0, undefined, "right"],
    // At the tolerance, at four times it, and past that.
    [10.5, 10, 0.5, "right"],
    [12, 10, 0.5, "near"],
    [12.5, 10, 0.5, "wrong"],
    [0.3, 0, 0.1, "wrong"],
    // 0.5 % of a number with decimals, an eighth of an inch of a length only.
    [1004, 1000.5, undefined, "right"],
    [0.55, 0.5, undefined, "wrong"],
    // A unit that only one of the two names, and one that is another's.
    ["20 in", 20, undefined, "near"],
    [500, "15.65 ft", undefined, "wrong"],
    ["187.8 panels", `15' 7 13/16"`, undefined, "wrong"],
    ["6 panels", "6 in 12", undefined, "wrong"],
    [6, "6 in 12", undefined, "right"],
    ["1 pack", "1 packs", 0, "right"],
    ["12 packs of shingle", "12 packs of shingles", 0, "right"],
    ["1234.5 sq ft", "12.345 squares", 0.001, "right"],
    ["steep", 6, undefined, "wrong"],
    [6, "steep", undefined, "wrong"],
  ])("marks %p where %p is right (tolerance %p): %s", (answer, expected, tolerance, mark) => {
    expect(call("ANSWERCHECK", answer, expected, tolerance)).toBe(mark);
  });

  it("marks a column", () => {
    expect(call("ANSWERCHECK", [[20], [21]], [[20], [20]])).toEqual([["right"], ["wrong"]]);
  });

  it("rejects TRUE and FALSE as answers", () => {
    expect(callForSentence("ANSWERCHECK", true, 1)).toBe(
      "#VALUE! answer takes a number, a length or pitch as it is typed, or words, got TRUE",
    );
  });

  it("names what a tolerance accepts", () => {
    expect(callForSentence("ANSWERCHECK", 1, 1, "close")).toBe(
      '#VALUE! tolerance takes a number, or a length with its unit such as 1/8 in, got "close"',
    );
    expect(callForSentence("ANSWERCHECK", 1, 1, -1)).toBe("#VALUE! tolerance must be at least 0, got -1");
  });
});
