import type { Units } from "../../../functions/practice/measuring";
import type { VersionOptions } from "../classOptions";
import { classLine } from "../class/practiceClass";
import type { Question } from "../problem";
import type { CellAddress } from "../../workbook/address";
import type { PrintableSheet } from "../../workbook/printableSheet";
import { text } from "../../workbook/plan";
import { rowHeightsOf } from "../../workbook/rowHeights";
import { PAGE_COLUMNS, PaperRows } from "./paperRows";
import { problemSheet, problemSheetName, type ProblemSheet } from "./problemSheet";

export const START_SHEET = "Start";

/** How measures may be written, in the class's own units first. */
const MEASURES: Readonly<Record<Units, string>> = {
  "feet and inches":
    "Lengths are taken as a tape shows them, such as 18' 6 1/2\" or 18-6 1/2, and with any unit, such as 222.5 in or 5.65 m; a pitch as 6 in 12 or 6/12.",
  metric:
    "Lengths are taken in millimeters, such as 5650, and with any unit, such as 5.65 m or 222.5 in; an angle as 26.6 or 26.6°.",
};

const howTo = (units: Units): readonly string[] => [
  `Write each answer into the cell beside it, in the unit that is named there. ${MEASURES[units]}`,
  "Work on paper or in the empty rows below. Save the file and hand it in, or hand in the printed pages.",
];

export interface StartSheet {
  readonly sheet: PrintableSheet;
  readonly namePlace: CellAddress;
}

const startSheet = (questions: readonly Question[], version: VersionOptions): StartSheet => {
  const rows = new PaperRows();
  rows.line("Practice", "title");
  rows.line(classLine(version), "note");
  rows.skip();
  rows.put(0, text("Name"), "label");
  const namePlace = rows.put(1, null, "input", { numberFormat: "@" });
  rows.skip(2);
  for (const each of howTo(version.units)) rows.lines(each, "label");
  rows.skip();
  rows.line("Problems", "section");
  questions.forEach((question, index) => {
    rows.line(problemSheetName(index + 1, question), "label");
  });
  rows.skip();
  rows.cautions();
  return {
    namePlace,
    sheet: {
      name: START_SHEET,
      cells: rows.cells,
      columnWidths: PAGE_COLUMNS,
      rowHeights: rowHeightsOf(rows.cells),
      print: "one page, portrait",
      frozenRows: 0,
      inputPrompts: [],
    },
  };
};

/** A student's workbook: a page to start on, and a page for each problem. */
export interface StudentSheets {
  readonly start: StartSheet;
  readonly problems: readonly ProblemSheet[];
}

/** Made of the questions alone: no answer can get in. */
export const studentSheets = (questions: readonly Question[], version: VersionOptions): StudentSheets => ({
  start: startSheet(questions, version),
  problems: questions.map((question, index) => problemSheet(index + 1, question, classLine(version))),
});

export const sheetsOf = ({ start, problems }: StudentSheets): PrintableSheet[] => [
  start.sheet,
  ...problems.map(({ sheet }) => sheet),
];
