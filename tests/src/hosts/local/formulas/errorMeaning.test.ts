import { errorMeaning } from "../../../../../src/hosts/local/formulas/errorMeaning";

const KNOWN = ["SUM", "SUMIF", "MID", "SYD", "GABLE.COURSES", "GABLE.COURSELINE", "GABLE.FEET"];
const meaning = (code: string, formula = ""): string => errorMeaning(code, formula, KNOWN);

describe("the spreadsheet's own error", () => {
  it.each([
    ["=GABLE.COURSE(D10,12)", "There is no function GABLE.COURSE: did you mean GABLE.COURSES?"],
    ["=courses(D10,12)", "There is no function COURSES: did you mean GABLE.COURSES?"],
    ["=SUM(1)+SUMM(2)", "There is no function SUMM: did you mean SUM?"],
    ["=SHEEP(A1)", "There is no function SHEEP."],
    ["=XYZ(A1)", "There is no function XYZ."],
    ["=GABLE.SHEEP(A1)", "There is no function GABLE.SHEEP."],
  ])("names the unknown function in %s", (formula, message) => {
    expect(meaning("#NAME?", formula)).toBe(message);
  });

  it.each(['=SUM("GABLE.COURSE(1)";2)', "='Bid(2)'!A1+Waste", "=SUM(Table1[In (ft)])"])(
    "looks for no function in a text, or in the name of a sheet or a column: %s",
    (formula) => {
      expect(meaning("#NAME?", formula)).toBe(
        "The formula has an unknown name, text without quotes, or a missing comma.",
      );
    },
  );

  it("says why a result can't spill", () => {
    expect(meaning("#SPILL!")).toBe(
      "The result needs more blank cells: clear the cells below this one or to its right.",
    );
  });

  it("for text instead of a number suggests GABLE.FEET for lengths", () => {
    expect(meaning("#VALUE!")).toBe(
      `The formula needs another type of value, usually a number instead of text such as "5 each". GABLE.FEET converts a length such as 12' 6" to a number.`,
    );
  });

  it("has no message if its code is unknown", () => {
    expect(meaning("#CALC!")).toBe("");
  });
});
