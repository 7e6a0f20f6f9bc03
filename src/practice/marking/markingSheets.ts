import { counted } from "../../../shared/describe";
import { highest } from "../../../shared/highest";
import { number, text, type SheetPlan, type WorkbookPlan } from "../../workbook/plan";
import { rowHeightsOf } from "../../workbook/rowHeights";
import { PageRows } from "../sheets/pageRows";
import { topicOf } from "../topics/index";
import { classGrid, type ClassGrid, type TopicResult } from "./classGrid";
import type { MarkedStudent } from "./markStudent";

const NAME_PX = 170;
const LETTER_PX = 8;
/** File names, used where a student wrote no name, may be very long. */
const MAX_NAME_PX = 720;
const TOPIC_PX = 104;
const PERCENT = "0%";
const VERDICTS = ["right", "near", "wrong", "blank"] as const;
/** Mistakes listed per topic. */
const MAX_MISTAKES = 4;

/** Wide enough for the longest name, since the next column's cells would cut it off. */
const nameColumnPx = (students: readonly Pick<MarkedStudent, "name">[]): number =>
  Math.min(
    MAX_NAME_PX,
    highest(
      students.map(({ name }) => name.length * LETTER_PX),
      NAME_PX,
    ),
  );

const putReteach = (rows: PageRows, { topic, fractionRight, mistakes }: TopicResult): void => {
  rows.put(0, text(topic.title), "total");
  rows.put(1, number(fractionRight), "result", { numberFormat: PERCENT });
  rows.put(2, text(topic.reteachTip), "label");
  rows.skip();
  if (mistakes.length === 0) return;
  const listed = mistakes
    .slice(0, MAX_MISTAKES)
    .map(({ mistake, students }) => `${mistake} (${counted(students, "student")})`);
  rows.put(2, text(`Common mistakes: ${listed.join("; ")}.`), "note");
  rows.skip();
};

const gridSheet = (
  name: string,
  { classes, topics, rows: students, counts: allCounts, toReteach }: ClassGrid,
  markedOn: string,
): SheetPlan => {
  const columns = [
    ...topics.map(({ topic, counts }) => ({ title: topic.title, counts })),
    { title: "All topics", counts: allCounts },
  ];
  const rows = new PageRows();
  rows.line("Class", "title");
  for (const each of classes) rows.line(each, "note");
  rows.line(`Marked on ${markedOn}.`, "note");
  rows.line("Percent right by student and topic. Every answer is on the next sheet.", "note");
  rows.skip();
  const headingRow = rows.row;
  rows.headings("Student", "Version", ...columns.map(({ title }) => title));
  for (const { student, fractionsRight, fractionRight } of students) {
    rows.put(0, text(student.name), "label");
    rows.put(1, text(student.versionLetters), "result");
    [...fractionsRight, fractionRight].forEach((fraction, index) => {
      rows.put(index + 2, fraction === undefined ? null : number(fraction), "result", {
        numberFormat: PERCENT,
      });
    });
    if (student.alteredProblems.length > 0)
      rows.put(
        columns.length + 2,
        text(
          `Not marked because the page was changed after it was handed out: problem ${student.alteredProblems.join(", ")}`,
        ),
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
  rows.line("Teach again", "section");
  if (toReteach.length === 0)
    rows.line("In every topic, at least two thirds of the answers are right.", "label");
  for (const topic of toReteach) putReteach(rows, topic);
  rows.skip();
  rows.cautions();
  return {
    name,
    cells: rows.cells,
    columnWidths: [nameColumnPx(students.map(({ student }) => student)), 60, ...columns.map(() => TOPIC_PX)],
    rowHeights: rowHeightsOf(rows.cells),
    print: "one page, landscape",
    frozenRows: headingRow + 1,
  };
};

const answersSheet = (name: string, students: readonly MarkedStudent[]): SheetPlan => {
  const rows = new PageRows();
  rows.headings(
    "Student",
    "Version",
    "Problem",
    "Topic",
    "Find",
    "Student's answer",
    "Right answer",
    "Mark",
    "Common mistake",
  );
  for (const { name: student, versionLetters, answers } of students)
    for (const { problem, topic, label, studentAnswer, shown, verdict, mistake = "" } of answers) {
      [
        student,
        versionLetters,
        problem,
        topicOf(topic).title,
        label,
        studentAnswer,
        shown,
        verdict,
        mistake,
      ].forEach((content, column) =>
        rows.put(column, typeof content === "number" ? number(content) : text(content), "result"),
      );
      rows.skip();
    }
  return {
    name,
    cells: rows.cells,
    columnWidths: [nameColumnPx(students), 60, 66, 140, 260, 130, 130, 60, 330],
    rowHeights: { 0: 26 },
    print: "one page wide, portrait",
    frozenRows: 1,
  };
};

/** The class grid with what to teach again, and a sheet of every answer. `markedOn` is a date such as `2026-06-01`. */
export const markingSheets = (
  students: readonly MarkedStudent[],
  names: { readonly grid: string; readonly answers: string },
  markedOn: string,
): WorkbookPlan => ({
  sheets: [gridSheet(names.grid, classGrid(students), markedOn), answersSheet(names.answers, students)],
  names: [],
});
