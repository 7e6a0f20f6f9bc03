import { InputError } from "../../../shared/inputError";
import { cellInView, type SheetInView } from "../../sheets/inView";
import { isAsPrinted } from "../../sheets/practice/problemSheet";
import { studentSheets } from "../../sheets/practice/studentSheets";
import { problemsOf, readClassLine } from "../practiceClass";
import { markAnswer, type Verdict } from "./markAnswer";

/** Where every page says what it is. */
const TITLE = { row: 0, column: 0 };
const CLASS_LINE = { row: 1, column: 0 };

const NO_PAGE =
  "The sheet in front is no problem of a practice workbook: open one, and go to a problem's page.";

export interface CheckedAnswer {
  readonly label: string;
  readonly verdict: Verdict;
}

/**
 * Checks the page in front, and tells no answer. The file itself holds nothing to check with: the problem is made again
 * from the line that is printed on the page.
 */
export const checkPage = (view: SheetInView): CheckedAnswer[] => {
  const version = readClassLine(String(cellInView(view, CLASS_LINE) ?? ""));
  const [, number = ""] = /^(\d+) {2}/.exec(String(cellInView(view, TITLE) ?? "")) ?? [];
  if (!version || number === "") throw new InputError(NO_PAGE);
  const problems = problemsOf(version);
  const problem = problems[Number(number) - 1];
  const page = studentSheets(
    problems.map(({ question }) => question),
    version,
  ).problems[Number(number) - 1];
  if (!problem || !page) throw new InputError(NO_PAGE);
  if (!isAsPrinted(page, (place) => cellInView(view, place)))
    throw new InputError("This page isn't as it was given out, so it can't be checked.");
  return problem.solution.answers.map((answer, index) => ({
    label: answer.field.label,
    verdict: markAnswer(answer, cellInView(view, page.answerPlaces[index] ?? TITLE)).verdict,
  }));
};
