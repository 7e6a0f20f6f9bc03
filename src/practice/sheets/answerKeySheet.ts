import { pageBreaks } from "../../workbook/pageBreaks";
import type { PrintableSheet } from "../../workbook/printableSheet";
import { formula, text } from "../../workbook/plan";
import { rowHeightsOf } from "../../workbook/rowHeights";
import { classLine } from "../class/classLine";
import { versionLetters, type VersionOptions } from "../class/classOptions";
import type { Problem } from "../problems/problem";
import type { Answer, ShownMistake } from "../topic";
import { PageRows } from "./pageRows";

/** Label, answer, unit and tolerance; wider than a student's page, and printed smaller. */
const COLUMNS = [230, 150, 60, 360];
const LETTERS = 104;
const HEADING_PX = 24;

const describeMistake = ({ name, shown }: ShownMistake): string => `${name}: ${shown}`;

/** A formula with spaces at which it can wrap. */
const withSpaces = (formulaText: string): string => formulaText.replaceAll(",", ", ");

const formatOf = (result: number | string): string =>
  typeof result === "string" || Number.isInteger(result) ? "General" : "0.000";

const putAnswer = (rows: PageRows, { field, shown, why, mistakes }: Answer): void => {
  rows.put(0, text(field.label), "label");
  rows.put(1, text(shown), "total");
  rows.put(2, text(field.unit), "centered");
  rows.put(3, text(why), "note");
  rows.skip();
  if (mistakes.length > 0)
    rows.paragraph(`Common mistakes: ${mistakes.map(describeMistake).join("; ")}.`, "note", LETTERS);
};

/** A problem's first row, and the row of its headings. */
interface ProblemRows {
  readonly start: number;
  readonly heading: number;
}

const putProblem = (rows: PageRows, { question, solution }: Problem, number: number): ProblemRows => {
  const start = rows.row;
  rows.line(`${number}  ${question.title}`, "section");
  rows.paragraph(
    question.givens.map(({ label, text: given }) => `${label}: ${given}`).join("; "),
    "label",
    LETTERS,
  );
  const heading = rows.row;
  rows.headings("Find", "Answer", "Unit", "Tolerance and reason");
  for (const answer of solution.answers) putAnswer(rows, answer);
  rows.skip();
  solution.steps.forEach((step, index) => {
    rows.paragraph(`Step ${index + 1}.  ${step.text}`, "label", LETTERS);
    rows.put(0, text("by formula"), "note");
    rows.put(1, formula(step.formula, step.result), "result", { numberFormat: formatOf(step.result) });
    rows.skip();
    rows.paragraph(withSpaces(step.formula), "note", LETTERS);
  });
  rows.skip();
  return { start, heading };
};

/** Marking recognizes an answer key by this name, so it never changes. */
const answerKeySheetName = (letters: string): string => `Key ${letters}`;

export const isAnswerKeySheet = (name: string): boolean => /^Key [A-Z]{1,2}$/.test(name);

/** A version's answer key: answers, tolerances with reasons, common mistakes, and worked steps in text and as formulas. */
export const answerKeySheet = (problems: readonly Problem[], version: VersionOptions): PrintableSheet => {
  const rows = new PageRows();
  const letters = versionLetters(version.version);
  rows.line(`Answer key, version ${letters}`, "title");
  rows.line(classLine(version), "note");
  rows.paragraph(
    "For the instructor. Each step's formula works with Gablewright's functions: change a number in it to try another.",
    "note",
    LETTERS,
  );
  rows.paragraph(
    "Where Gablewright isn't loaded, the formulas show #NAME?; the answers aren't formulas and stay right.",
    "note",
    LETTERS,
  );
  rows.skip();
  const placed = problems.map((problem, index) => putProblem(rows, problem, index + 1));
  rows.cautions();
  const sizes = {
    columnWidths: COLUMNS,
    rowHeights: {
      ...rowHeightsOf(rows.cells),
      ...Object.fromEntries(placed.map(({ heading }) => [heading, HEADING_PX])),
    },
  };
  return {
    name: answerKeySheetName(letters),
    cells: rows.cells,
    ...sizes,
    pageBreaksBefore: pageBreaks(
      placed.map(({ start }) => start),
      rows.row,
      sizes,
    ),
    print: "one page wide, portrait",
    frozenRows: 2,
    inputPrompts: [],
  };
};
