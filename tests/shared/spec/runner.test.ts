import { CellError, type Matrix } from "../../../shared/cell";
import { runFunction } from "../../../shared/spec/runner";
import { catalog } from "../../../functions/index";
import { call, callForSentence, specOf } from "../../support/call";

describe("what a spreadsheet user may type", () => {
  it("leaves a row with no input blank", () => {
    expect(call("COURSES", null, null)).toBe("");
    expect(call("COURSES", "", " ")).toBe("");
    expect(call("COURSES", [[null]], undefined)).toBe("");
    expect(call("TRIMFEET", [[null], [""]])).toBe("");
    expect(call("CLIPCOUNT", null, null, 1)).toBe("");
    expect(call("COURSES", [], [[], []])).toBe("");
  });

  it("names the missing argument when others are given", () => {
    expect(callForSentence("COURSES", 20, null)).toMatch(
      /^#VALUE! exposure is missing: it takes a length in inches/,
    );
    expect(callForSentence("COURSES", null, 12)).toMatch(
      /^#VALUE! slopeLength is missing: it takes a length in feet/,
    );
  });

  it("passes an error on unchanged", () => {
    const error = new CellError("#DIV/0!", "");
    expect(call("COURSES", error, 12)).toBe(error);
    expect(call("TRIMFEET", [[40], [error]])).toBe(error);
    expect(call("COURSES", error, null)).toBe(error);
  });

  it("uses the default of an optional parameter that is left out, null or blank", () => {
    for (const omitted of [undefined, null, ""]) expect(call("CLIPCOUNT", 20, 12, omitted)).toBe(21);
    expect(call("CLIPCOUNT", 20, 12, 0)).toBe(19);
  });

  it("returns a column for a column, repeating a single value for each row", () => {
    const answers = call("COURSES", [[20], ["15' 6\""], [null], [-1]], 12) as Matrix;
    expect(answers.map(([cell]) => (cell instanceof CellError ? cell.message : cell))).toEqual([
      20,
      16,
      "slopeLength is missing: it takes " + (specOf("COURSES").parameters[0]?.kind.takes ?? ""),
      "slopeLength must be at least 0 ft, got -1",
    ]);
  });

  it("leaves a row with no input blank within a column", () => {
    expect(call("COURSES", [[20], [null]], [[12], [null]])).toEqual([[20], [""]]);
  });

  it("returns #N/A past the end of the shorter of two columns", () => {
    const answers = call("COURSES", [[20], [10], [5]], [[12], [12]]) as Matrix;
    expect(answers[1]).toEqual([10]);
    expect(answers[2]?.[0]).toMatchObject({ code: "#N/A" });
  });

  it("combines a column with a row into a table, as native functions do", () => {
    expect(call("COURSES", [[20], [10]], [[12, 6]])).toEqual([
      [20, 40],
      [10, 20],
    ]);
  });

  it("names the parameter that takes one value when it gets a column", () => {
    expect(callForSentence("STARTERLIST", [[20], [10]], 12, 24, 1, 2)).toBe(
      "#VALUE! slopeLength takes one value here, got 2 rows by 1 column",
    );
  });

  it("rejects TRUE, FALSE, and text that isn't a number", () => {
    expect(callForSentence("COURSES", true, 12)).toMatch(
      /^#VALUE! slopeLength takes a length in feet .*, got TRUE$/,
    );
    expect(callForSentence("COURSES", "long", 12)).toMatch(/got "long"$/);
  });

  it("rejects more arguments than a function takes", () => {
    expect(callForSentence("PITCHANGLE", 6, 7)).toBe("#VALUE! PITCHANGLE takes at most 1 value, got 2");
  });
});

describe("the runner", () => {
  it("turns an internal error into an error value and never throws", () => {
    const broken = {
      ...specOf("PITCHANGLE"),
      calculate: () => {
        throw new TypeError("boom");
      },
    };
    expect(runFunction(broken, [6])).toMatchObject({
      code: "#VALUE!",
      message: expect.stringContaining("boom") as string,
    });
  });

  it("never returns NaN or infinity", () => {
    const sentence = { code: "#VALUE!", message: "PITCHANGLE has no finite answer for these values" };
    for (const answer of [NaN, [[1, NaN]], [[Infinity], [1]], [[1], [-Infinity]]])
      expect(runFunction({ ...specOf("PITCHANGLE"), calculate: () => answer }, [6])).toMatchObject(sentence);
  });

  it("doesn't change its arguments", () => {
    const column: Matrix = [[20], [10]];
    const copy = structuredClone(column);
    for (const spec of catalog) runFunction(spec, [column, column, column].slice(0, spec.parameters.length));
    expect(column).toEqual(copy);
  });
});
