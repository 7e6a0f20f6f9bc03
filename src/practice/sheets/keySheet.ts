import { versionLetters, type VersionOptions } from "../classOptions";
import { classLine } from "../class/practiceClass";
import type { Answer, Problem, ShownMistake } from "../problem";
import { pageBreaks } from "../../workbook/pageBreaks";
import type { PrintableSheet } from "../../workbook/printableSheet";
import { formula, text } from "../../workbook/plan";
import { rowHeightsOf } from "../../workbook/rowHeights";
import { PaperRows } from "./paperRows";

/** Label, answer, tolerance and why: the last goes on over the page's edge of the student's sheet. */
const COLUMNS = [230, 150, 60, 360];
const LETTERS = 104;
const HEADING_PX = 24;

const slipInWords = ({ slip, shown }: ShownMistake): string => `${slip}: ${shown}`;

/** A formula that may be broken into lines. */
const spaced = (ofStep: string): string => ofStep.replaceAll(",", ", ");

const formatOf = (result: number | string): string =>
  typeof result === "string" || Number.isInteger(result) ? "General" : "0.000";

const putAnswer = (rows: PaperRows, { field, shown, why, mistakes }: Answer): void => {
  rows.put(0, text(field.label), "label");
  rows.put(1, text(shown), "total");
  rows.put(2, text(field.unit), "centered");
  rows.put(3, text(`Off by: ${why}`), "note");
  rows.skip();
  if (mistakes.length > 0) rows.lines(`Slips: ${mistakes.map(slipInWords).join("; ")}.`, "note", LETTERS);
};

/** The rows of a problem's first line and of its heading. */
interface ProblemRows {
  readonly start: number;
  readonly heading: number;
}

const putProblem = (rows: PaperRows, { question, solution }: Problem, number: number): ProblemRows => {
  const start = rows.row;
  rows.line(`${number}  ${question.title}`, "section");
  rows.lines(
    question.givens.map(({ label, text: told }) => `${label}: ${told}`).join("; "),
    "label",
    LETTERS,
  );
  const heading = rows.row;
  rows.headings("Find", "Answer", "Unit", "Tolerance, and why");
  for (const answer of solution.answers) putAnswer(rows, answer);
  rows.skip();
  solution.steps.forEach((step, index) => {
    rows.lines(`Step ${index + 1}.  ${step.words}`, "label", LETTERS);
    rows.put(0, text("the same by formula"), "note");
    rows.put(1, formula(step.formula, step.result), "result", { numberFormat: formatOf(step.result) });
    rows.skip();
    rows.lines(spaced(step.formula), "note", LETTERS);
  });
  rows.skip();
  return { start, heading };
};

const keySheetName = (letters: string): string => `Key ${letters}`;

export const isKeySheet = (name: string): boolean => /^Key [A-Z]{1,2}$/.test(name);

/** A version's key: answers, what they may be off by and why, and the worked steps in words and as formulas. */
export const keySheet = (problems: readonly Problem[], version: VersionOptions): PrintableSheet => {
  const rows = new PaperRows();
  rows.line(`Key, version ${versionLetters(version.version)}`, "title");
  rows.line(classLine(version), "note");
  rows.lines(
    "For the teacher. Each step's formula works with Gablewright's functions: change a number in it to try another.",
    "note",
    LETTERS,
  );
  rows.lines(
    "Where Gablewright isn't loaded, the formulas show #NAME?; the answers, which are no formulas, are right there too.",
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
    name: keySheetName(versionLetters(version.version)),
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
