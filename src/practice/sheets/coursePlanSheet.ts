import { counted } from "../../../shared/describe";
import { SESSIONS } from "../course/sessions";
import type { PrintableSheet } from "../../workbook/printableSheet";
import { number, text } from "../../workbook/plan";
import { rowHeightsOf } from "../../workbook/rowHeights";
import { PaperRows } from "./paperRows";
import { wrapWords } from "./wrapWords";

const COLUMNS = [60, 60, 190, 90, 330];
const HEADING_PX = 24;
/** Letters of the last column. */
const LETTERS = 46;

const WHAT_FOR =
  "Eight sessions, one roof that grows through the day: a page names the problem whose answer it goes on with, and tells none. At the end of each session the answers are compared and the right ones of each version written on the board, so nobody stays behind for an error of the morning. Breaks: a quarter of an hour before the third session and before the seventh, three quarters at noon. Each session begins with something done by hand together; the problems follow, each on its own page.";
const BRING =
  "Bring: tapes, framing squares, a level, a board, card and paper strips, chalk, four starters, a folding tool; printed pages or a computer for each pair.";

/** The teacher's plan of the day. */
export const coursePlanSheet = (line: string): PrintableSheet => {
  const rows = new PaperRows();
  rows.line("A day's course", "title");
  rows.line(line, "note");
  rows.skip();
  rows.lines(WHAT_FOR, "label");
  rows.lines(BRING, "label");
  rows.skip();
  const headingRow = rows.row;
  rows.headings("Starts", "Minutes", "Session", "Problems", "Together first");
  let next = 1;
  SESSIONS.forEach(({ starts, minutes, title, together, pages }) => {
    rows.put(0, text(starts), "label");
    rows.put(1, number(minutes), "centered");
    rows.put(2, text(title), "label");
    rows.put(3, text(Array.from({ length: pages }, (_, at) => next + at).join(", ")), "label");
    next += pages;
    for (const each of wrapWords(together, LETTERS)) {
      rows.put(4, text(each), "label");
      rows.skip();
    }
  });
  rows.skip();
  rows.line(
    `${counted(SESSIONS.length, "session")}, ${SESSIONS.reduce((sum, { minutes }) => sum + minutes, 0)} minutes, ${counted(next - 1, "problem")}.`,
    "note",
  );
  rows.skip();
  rows.cautions();
  return {
    name: "Plan",
    cells: rows.cells,
    columnWidths: COLUMNS,
    rowHeights: { ...rowHeightsOf(rows.cells), [headingRow]: HEADING_PX },
    print: "one page, portrait",
    frozenRows: 0,
    inputPrompts: [],
  };
};
