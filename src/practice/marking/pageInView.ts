import { valueAt } from "../../workbook/contents";
import type { ActiveSheet } from "../../workbook/activeSheet";
import type { ProblemSheet } from "../sheets/problemSheet";
import { studentSheets } from "../sheets/studentSheets";
import { problemsOf, readClassLine } from "../class/practiceClass";
import type { Problem } from "../problem";

/** Where every page says what it is. */
const TITLE = { row: 0, column: 0 };
const CLASS_LINE = { row: 1, column: 0 };

/** The problem whose page stands in front, made again from the line that is printed there; undefined where it is no such page. */
export const pageInView = (view: ActiveSheet): { problem: Problem; page: ProblemSheet } | undefined => {
  const version = readClassLine(String(valueAt(view, CLASS_LINE) ?? ""));
  const [, number = ""] = /^(\d+) {2}/.exec(String(valueAt(view, TITLE) ?? "")) ?? [];
  if (!version || number === "") return undefined;
  const problems = problemsOf(version);
  const { problems: pages } = studentSheets(
    problems.map(({ question }) => question),
    version,
  );
  const [problem, page] = [problems[Number(number) - 1], pages[Number(number) - 1]];
  return problem && page && { problem, page };
};
