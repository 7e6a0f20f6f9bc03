import { readBlock } from "../../../../src/sheets/extend/block";
import { fillBlanksPlan } from "../../../../src/sheets/extend/fillBlanks";
import { a1 } from "../../../../src/workbook/address";
import { surveyOf } from "../../../support/surveyOf";

type Line = Parameters<typeof surveyOf>[0][number];

const courses = (row: number) => ({
  formula: `=IF(LEN(C${row})=0,"",GABLE.COURSES(C${row},$G$1))`,
  shows: 14,
});
const angle = (row: number) => ({ formula: `=GABLE.PITCHANGLE(D${row})`, shows: 26.6 });

const HEADINGS: Line = ["Plane", "Eave (ft)", "Slope (ft)", "Pitch", "Courses", "Angle"];
const filled = (row: number): Line => ["North", 30, 14, 6, courses(row), angle(row)];
const put = (): Line => ["Porch", 12, 8, 4, null, null];

/** Where a plan writes, and its formulas row by row. */
const planned = (lines: readonly Line[]) => {
  const survey = surveyOf(lines, "A1");
  const plan = fillBlanksPlan(survey, readBlock(survey));
  return (
    plan && {
      at: a1(plan.at),
      formulas: plan.cells.map((line) =>
        line.map((cell) => (cell?.content.kind === "formula" ? cell.content.formula : undefined)),
      ),
    }
  );
};

describe("rows of a block without the results that its other rows have", () => {
  it("are filled with their formulas, each for its own row", () => {
    expect(planned([HEADINGS, filled(2), put(), filled(4)])).toEqual({
      at: "E3",
      formulas: [[courses(3).formula, angle(3).formula]],
    });
  });

  it("also several together, at the top and at the end; of gaps that are apart the first", () => {
    expect(planned([HEADINGS, put(), put(), filled(4)])?.formulas).toEqual([
      [courses(2).formula, angle(2).formula],
      [courses(3).formula, angle(3).formula],
    ]);
    expect(planned([HEADINGS, filled(2), put()])?.at).toBe("E3");
    expect(planned([HEADINGS, put(), filled(3), put()])).toMatchObject({
      at: "E2",
      formulas: [[{}, {}].map(() => expect.any(String))],
    });
  });

  it("lack one result only where one was cleared", () => {
    expect(planned([HEADINGS, filled(2), ["South", 30, 14, 6, courses(3), null], filled(4)])).toEqual({
      at: "F3",
      formulas: [[angle(3).formula]],
    });
  });

  it("look like the row above, or like one below that has their results, where there is one", () => {
    const likeOf = (...lines: readonly Line[]) => {
      const survey = surveyOf([HEADINGS, ...lines], "A1");
      return fillBlanksPlan(survey, readBlock(survey))?.copyFormatsFrom;
    };
    const half = (row: number): Line => ["South", 30, 14, 6, courses(row), null];
    expect(likeOf(filled(2), put(), filled(4))).toEqual({ row: 1 });
    expect(likeOf(put(), put(), half(4), filled(5))).toEqual({ row: 4 });
    expect(likeOf(put(), half(3), ["West", 30, 14, 6, null, angle(4)])).toBeUndefined();
  });

  it("are no others: not where all are filled, rows differ, a value was typed, or the formulas are a person's own", () => {
    const typed: Line = ["South", 30, 14, 6, 15, 26.6];
    const other: Line = ["South", 30, 14, 6, courses(9), angle(9)];
    const own = (row: number): Line => ["North", 30, 14, 6, { formula: `=C${row}*2`, shows: 28 }];
    expect(planned([HEADINGS, filled(2), filled(3)])).toBeUndefined();
    expect(planned([HEADINGS, filled(2), other, put()])).toBeUndefined();
    expect(planned([HEADINGS, filled(2), typed, put()])).toBeUndefined();
    expect(planned([HEADINGS.slice(0, 5), own(2), put().slice(0, 5)])).toBeUndefined();
  });
});
