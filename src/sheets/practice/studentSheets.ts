import { classLine, type VersionOptions } from "../../practice/practiceClass";
import type { Question } from "../../practice/problem";
import type { Place } from "../address";
import type { PaperSheet } from "../paper";
import { text } from "../plan";
import { rowHeightsOf } from "../rowHeights";
import { PAGE_COLUMNS, PaperRows } from "./paperRows";
import { problemSheet, problemSheetName, type ProblemSheet } from "./problemSheet";

export const START_SHEET = "Start";

const HOW_TO = [
  "Write each answer into the cell beside it, in the unit that is named there. Lengths are taken as a tape shows them, such as 18' 6 1/2\" or 18-6 1/2, and with any unit, such as 222.5 in or 5.65 m; a pitch as 6 in 12 or 6/12.",
  "Work on paper or in the empty rows below. Save the file and hand it in, or hand in the printed pages.",
];

export interface StartSheet {
  readonly sheet: PaperSheet;
  readonly namePlace: Place;
}

const startSheet = (questions: readonly Question[], line: string): StartSheet => {
  const rows = new PaperRows();
  rows.line("Practice", "title");
  rows.line(line, "note");
  rows.skip();
  rows.put(0, text("Name"), "label");
  const namePlace = rows.put(1, null, "input", { numberFormat: "@" });
  rows.skip(2);
  for (const each of HOW_TO) rows.lines(each, "label");
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
      entries: [],
    },
  };
};

/** A student's workbook: a page to start on, and a page for each problem. */
export interface StudentSheets {
  readonly start: StartSheet;
  readonly problems: readonly ProblemSheet[];
}

/** Made of the questions alone: no answer can get in. */
export const studentSheets = (questions: readonly Question[], version: VersionOptions): StudentSheets => {
  const line = classLine(version);
  return {
    start: startSheet(questions, line),
    problems: questions.map((question, index) => problemSheet(index + 1, question, line)),
  };
};

export const sheetsOf = ({ start, problems }: StudentSheets): PaperSheet[] => [
  start.sheet,
  ...problems.map(({ sheet }) => sheet),
];
