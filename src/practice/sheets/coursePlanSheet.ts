import { counted } from "../../../shared/describe";
import type { PrintableSheet } from "../../workbook/printableSheet";
import { number, text } from "../../workbook/plan";
import { rowHeightsOf } from "../../workbook/rowHeights";
import { COURSE_SESSIONS } from "../course/courseSessions";
import { PageRows } from "./pageRows";
import { wrapText } from "./wrapText";

const COLUMNS = [60, 60, 190, 90, 330];
const HEADING_PX = 24;
/** Letters that fit into the last column. */
const LETTERS = 46;

const OVERVIEW =
  "Eight sessions on one roof that grows through the day. A page that builds on an earlier answer names that problem, but never gives its answer. End each session by comparing answers and writing each version's right answers on the board, so a morning error doesn't follow anyone into the afternoon. Breaks: 15 minutes before the third and the seventh session, 45 minutes at noon. Start each session with the hands-on exercise; then come the problems, one per page.";
const BRING =
  "Bring: tapes, framing squares, a level, a board, card stock and paper strips, chalk, four starters, a folding tool; printed pages or a computer for each pair.";

/** The instructor's plan of the full-day course. */
export const coursePlanSheet = (line: string): PrintableSheet => {
  const rows = new PageRows();
  rows.line("Full-day course", "title");
  rows.line(line, "note");
  rows.skip();
  rows.paragraph(OVERVIEW, "label");
  rows.paragraph(BRING, "label");
  rows.skip();
  const headingRow = rows.row;
  rows.headings("Start", "Minutes", "Session", "Problems", "Hands-on first");
  let next = 1;
  COURSE_SESSIONS.forEach(({ starts, minutes, title, handsOn, problemCount }) => {
    rows.put(0, text(starts), "label");
    rows.put(1, number(minutes), "centered");
    rows.put(2, text(title), "label");
    rows.put(3, text(Array.from({ length: problemCount }, (_, at) => next + at).join(", ")), "label");
    next += problemCount;
    for (const line of wrapText(handsOn, LETTERS)) {
      rows.put(4, text(line), "label");
      rows.skip();
    }
  });
  rows.skip();
  rows.line(
    `${counted(COURSE_SESSIONS.length, "session")}, ${COURSE_SESSIONS.reduce((sum, { minutes }) => sum + minutes, 0)} minutes, ${counted(next - 1, "problem")}.`,
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
