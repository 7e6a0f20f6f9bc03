import type { Units } from "../../../functions/practice/measuring";
import type { PrintableSheet } from "../../workbook/printableSheet";
import { text } from "../../workbook/plan";
import { rowHeightsOf } from "../../workbook/rowHeights";
import { classLine } from "../class/classLine";
import type { VersionOptions } from "../class/classOptions";
import type { Question } from "../topic";
import { PAGE_COLUMNS, PageRows } from "./pageRows";
import { problemSheet, problemSheetName, type ProblemSheet } from "./problemSheet";

/** The first sheet's name, and the cell for the student's name on it. Marking reads both, so they never change. */
export const START_SHEET = "Start";
export const NAME_ADDRESS = { row: 3, column: 1 };

/** How to write measurements, the class's own units first. */
const MEASUREMENTS: Readonly<Record<Units, string>> = {
  "feet and inches":
    "Write lengths as a tape shows them, such as 18' 6 1/2\" or 18-6 1/2, or with any unit, such as 222.5 in or 5.65 m; a pitch as 6 in 12 or 6/12.",
  metric:
    "Write lengths in millimeters, such as 5650, or with any unit, such as 5.65 m or 222.5 in; an angle as 26.6 or 26.6°.",
};

const instructions = (units: Units): readonly string[] => [
  `Type each answer into the cell beside its label, in the unit named there. ${MEASUREMENTS[units]}`,
  "Show your work on paper or in the empty rows below the answers. Save the file and turn it in, or turn in the printed pages.",
];

const startSheet = (questions: readonly Question[], version: VersionOptions): PrintableSheet => {
  const rows = new PageRows();
  rows.line("Practice", "title");
  rows.line(classLine(version), "note");
  rows.skip(NAME_ADDRESS.row - rows.row);
  rows.put(0, text("Name"), "label");
  rows.put(NAME_ADDRESS.column, null, "input", { numberFormat: "@" });
  rows.skip(2);
  for (const each of instructions(version.units)) rows.paragraph(each, "label");
  rows.skip();
  rows.line("Problems", "section");
  questions.forEach((question, index) => {
    rows.line(problemSheetName(index + 1, question), "label");
  });
  rows.skip();
  rows.cautions();
  return {
    name: START_SHEET,
    cells: rows.cells,
    columnWidths: PAGE_COLUMNS,
    rowHeights: rowHeightsOf(rows.cells),
    print: "one page, portrait",
    frozenRows: 0,
    inputPrompts: [],
  };
};

/** A student's workbook: a start page, and one page per problem. */
export interface StudentSheets {
  readonly start: PrintableSheet;
  readonly problems: readonly ProblemSheet[];
}

/** Made from the questions alone, so no answer can get in. */
export const studentSheets = (questions: readonly Question[], version: VersionOptions): StudentSheets => ({
  start: startSheet(questions, version),
  problems: questions.map((question, index) => problemSheet(index + 1, question, classLine(version))),
});

export const sheetsOf = ({ start, problems }: StudentSheets): PrintableSheet[] => [
  start,
  ...problems.map(({ sheet }) => sheet),
];
