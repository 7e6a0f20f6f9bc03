import { errorMeaning } from "../../../../../src/hosts/local/formulas/errorMeaning";

const KNOWN = ["SUM", "SUMIF", "MID", "SYD", "GABLE.COURSES", "GABLE.COURSELINE", "GABLE.FEET"];
const meaning = (code: string, formula = ""): string => errorMeaning(code, formula, KNOWN);

describe("an error that the spreadsheet itself gives", () => {
  it.each([
    ["=GABLE.COURSE(D10,12)", "There is no function GABLE.COURSE: did you mean GABLE.COURSES?"],
    ["=courses(D10,12)", "There is no function COURSES: did you mean GABLE.COURSES?"],
    ["=SUM(1)+SUMM(2)", "There is no function SUMM: did you mean SUM?"],
    ["=SHEEP(A1)", "There is no function SHEEP."],
    ["=XYZ(A1)", "There is no function XYZ."],
    ["=GABLE.SHEEP(A1)", "There is no function GABLE.SHEEP."],
  ])("names the function that %s calls in vain", (formula, sentence) => {
    expect(meaning("#NAME?", formula)).toBe(sentence);
  });

  it.each(['=SUM("GABLE.COURSE(1)";2)', "='Bid(2)'!A1+Waste", "=SUM(Table1[In (ft)])"])(
    "looks for no function in a text, or in the name of a sheet or a column: %s",
    (formula) => {
      expect(meaning("#NAME?", formula)).toBe(
        "A name in the formula isn't known, a text stands in it without quotes, or a comma is missing.",
      );
    },
  );

  it("says what is in the way of an answer of several cells", () => {
    expect(meaning("#SPILL!")).toBe(
      "The answer needs more cells than are blank: clear what stands below or beside this one.",
    );
  });

  it("of a text where a number is needed speaks of any number, and of lengths as one case", () => {
    expect(meaning("#VALUE!")).toBe(
      `The formula needs another kind of value, mostly a number where a text such as "5 each" stands. Of a length such as 12' 6" GABLE.FEET makes a number.`,
    );
  });

  it("says nothing of what it doesn't know", () => {
    expect(meaning("#CALC!")).toBe("");
  });
});
