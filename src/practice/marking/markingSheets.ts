import { counted } from "../../../shared/describe";
import { highest } from "../../../shared/highest";
import { classGrid, type ClassGrid, type TopicResult } from "./classGrid";
import { shortList } from "./shortList";
import type { MarkedStudent } from "./student";
import { TOPIC_TITLES } from "../topicTitles";
import { number, text, type SheetPlan, type WorkbookPlan } from "../../workbook/plan";
import { rowHeightsOf } from "../../workbook/rowHeights";
import { PaperRows } from "../sheets/paperRows";

const NAME_PX = 170;
const LETTER_PX = 8;
/** Files' names, which stand where no name was written, may be very long. */
const MOST_NAME_PX = 720;
const TOPIC_PX = 104;
const PERCENT = "0%";
const VERDICTS = ["right", "near", "wrong", "blank"] as const;
/** Slips that are named of a topic. */
const MOST_SLIPS = 4;

/** The column beside it is filled, so that a name is cut where its own is narrower. */
const widthOfNames = (students: readonly Pick<MarkedStudent, "name">[]): number =>
  Math.min(
    MOST_NAME_PX,
    highest(
      students.map(({ name }) => name.length * LETTER_PX),
      NAME_PX,
    ),
  );

const percent = (share: number): string => `${Math.round(share * 100)} %`;

const putTeachAgain = (rows: PaperRows, { title, shareRight, slips, teachAgain }: TopicResult): void => {
  rows.put(0, text(title), "total");
  rows.put(1, number(shareRight), "result", { numberFormat: PERCENT });
  rows.put(2, text(teachAgain), "label");
  rows.skip();
  if (slips.length === 0) return;
  const named = slips
    .slice(0, MOST_SLIPS)
    .map(({ slip, students }) => `${slip} (${counted(students, "student")})`);
  rows.put(2, text(`Slips: ${named.join("; ")}.`), "note");
  rows.skip();
};

const gridSheet = (
  name: string,
  { classes, topics, rows: students, counts: allCounts, toTeachAgain }: ClassGrid,
  markedOn: string,
): SheetPlan => {
  const columns = [...topics, { title: "All topics", counts: allCounts }];
  const rows = new PaperRows();
  rows.line("Class", "title");
  for (const each of classes) rows.line(each, "note");
  rows.line(`Marked on ${markedOn}.`, "note");
  rows.line(
    "The share of each student's answers that is right, by topic. Every answer is on the next sheet.",
    "note",
  );
  rows.skip();
  const headingRow = rows.row;
  rows.headings("Student", "Version", ...columns.map(({ title }) => title));
  for (const { student, shares, shareRight } of students) {
    rows.put(0, text(student.name), "label");
    rows.put(1, text(student.versionLetters), "result");
    [...shares, shareRight].forEach((share, index) => {
      rows.put(index + 2, share === undefined ? null : number(share), "result", { numberFormat: PERCENT });
    });
    if (student.altered.length > 0)
      rows.put(
        columns.length + 2,
        text(`Not marked, for the page isn't as it was given out: problem ${student.altered.join(", ")}`),
        "note",
      );
    rows.skip();
  }
  for (const verdict of VERDICTS) {
    rows.put(0, text(`Answers ${verdict}`), "total");
    columns.forEach(({ counts }, index) => rows.put(index + 2, number(counts[verdict]), "total"));
    rows.skip();
  }
  rows.skip();
  rows.line("To teach again", "section");
  if (toTeachAgain.length === 0) rows.line("Two thirds or more of every topic's answers are right.", "label");
  for (const topic of toTeachAgain) putTeachAgain(rows, topic);
  rows.skip();
  rows.cautions();
  return {
    name,
    cells: rows.cells,
    columnWidths: [widthOfNames(students.map(({ student }) => student)), 60, ...columns.map(() => TOPIC_PX)],
    rowHeights: rowHeightsOf(rows.cells),
    print: "one page, landscape",
    frozenRows: headingRow + 1,
  };
};

const answersSheet = (name: string, students: readonly MarkedStudent[]): SheetPlan => {
  const rows = new PaperRows();
  rows.headings("Student", "Version", "Problem", "Topic", "Asked", "Wrote", "Right is", "Mark", "Slip");
  for (const { name: student, versionLetters, answers } of students)
    for (const { problem, topic, label, wrote, shown, verdict, slip = "" } of answers) {
      [student, versionLetters, problem, TOPIC_TITLES[topic], label, wrote, shown, verdict, slip].forEach(
        (content, column) =>
          rows.put(column, typeof content === "number" ? number(content) : text(content), "result"),
      );
      rows.skip();
    }
  return {
    name,
    cells: rows.cells,
    columnWidths: [widthOfNames(students), 60, 66, 140, 260, 130, 130, 60, 330],
    rowHeights: { 0: 26 },
    print: "one page wide, portrait",
    frozenRows: 1,
  };
};

/** `markedOn` as `2026-06-01`. The class's grid with what to teach again, and every answer behind it. */
export const markingSheets = (
  students: readonly MarkedStudent[],
  names: { readonly grid: string; readonly answers: string },
  markedOn: string,
): WorkbookPlan => ({
  sheets: [gridSheet(names.grid, classGrid(students), markedOn), answersSheet(names.answers, students)],
  names: [],
});

/** Pages are called by their problems' numbers, with which their names begin. */
const notMarked = (students: readonly MarkedStudent[]): string => {
  const altered = students.filter((student) => student.altered.length > 0);
  const pages = altered.reduce((sum, student) => sum + student.altered.length, 0);
  if (pages === 0) return "";
  const whose = altered.map(
    (student) =>
      `${student.name} (problem${student.altered.length === 1 ? "" : "s"} ${student.altered.join(", ")})`,
  );
  return ` ${counted(pages, "page")} ${pages === 1 ? "isn't" : "aren't"} marked, for what was given out was changed there: ${shortList(whose)}.`;
};

/** In a sentence, for the pane. */
export const markingInWords = (students: readonly MarkedStudent[]): string => {
  const { toTeachAgain } = classGrid(students);
  const answers = students.flatMap((student) => student.answers);
  const right = answers.filter(({ verdict }) => verdict === "right").length;
  const share = answers.length === 0 ? "none was asked" : `${percent(right / answers.length)} right`;
  const again =
    toTeachAgain.length === 0 ? "" : ` To teach again: ${toTeachAgain.map(({ title }) => title).join(", ")}.`;
  return `${counted(students.length, "student")}, ${counted(answers.length, "answer")}, ${share}.${notMarked(students)}${again}`;
};
