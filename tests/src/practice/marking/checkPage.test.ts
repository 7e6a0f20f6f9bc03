import type { Cell } from "../../../../shared/cell";
import type { VersionOptions } from "../../../../src/practice/class/classOptions";
import { problemsOf } from "../../../../src/practice/class/practiceClass";
import { checkPage } from "../../../../src/practice/marking/checkPage";
import { markStudent } from "../../../../src/practice/marking/markStudent";
import { readStudentFile } from "../../../../src/practice/marking/readStudentFile";
import { studentSheets } from "../../../../src/practice/sheets/studentSheets";
import type { ActiveSheet } from "../../../../src/workbook/activeSheet";
import type { PrintableSheet } from "../../../../src/workbook/printableSheet";
import { text } from "../../../../src/workbook/plan";
import { planBook } from "../../../../src/xlsx/planBook";
import { cellsOf, EARLIER_COURSE_PAGE, EARLIER_TOPIC_PAGE, type PrintedCell } from "./earlierPages";

const VERSION: VersionOptions = {
  seed: "9",
  version: 0,
  level: "half day",
  units: "feet and inches",
  set: { kind: "topics", topics: ["courses", "starters"], problems: 2 },
};

const problems = problemsOf(VERSION);
const page = studentSheets(
  problems.map(({ question }) => question),
  VERSION,
).problems[1];

const inView = (cells: Cell[][]): ActiveSheet => ({ sheet: "Any", selected: { row: 0, column: 0 }, cells });

/** The second page as a host reads it, with answers typed in. */
const pageWith = (...answers: readonly Cell[]): Cell[][] => {
  const printed = (page?.sheet.cells ?? []).flatMap(({ row, column, content }) =>
    content?.kind === "text" ? [[row, column, content.text] as const] : [],
  );
  const typed = (page?.answerPlaces ?? []).map(
    ({ row, column }, index) => [row, column, answers[index] ?? null] as const,
  );
  return cellsOf(...printed, ...typed);
};

/** Changes the cell in a column of the row whose label begins like this. */
const change = (cells: Cell[][], label: string, column: number, value: Cell, rowsBelow = 0): void => {
  const row = cells[cells.findIndex(([first]) => String(first).startsWith(label)) + rowsBelow];
  if (row) row[column] = value;
};

describe("the active page", () => {
  const [cover, blank] = problems[1]?.solution.answers ?? [];

  it("is checked without showing the answers", () => {
    const checked = checkPage(inView(pageWith(cover?.shown ?? "", blank?.mistakes[0]?.shown ?? "")));
    expect(checked.map(({ verdict }) => verdict)).toEqual(["right", "near", "blank"]);
    for (const { label } of checked) expect(label).not.toContain(cover?.shown ?? "?");
  });

  it("is checked with notes beside the problem", () => {
    const cells = pageWith(cover?.shown ?? "");
    change(cells, "Exposed panel width", 0, "course 9 = 1", -1);
    change(cells, "Exposed panel width", 0, "24 - 1", 6);
    change(cells, "Exposed panel width", 3, "2 x 12");
    expect(checkPage(inView(cells))[0]?.verdict).toBe("right");
  });

  it.each<[string, (cells: Cell[][]) => void]>([
    [
      "a measurement",
      (cells) => {
        change(cells, "Exposed panel width", 1, '25"');
      },
    ],
    [
      "a number in the text",
      (cells) => {
        change(cells, "At the gable", 0, "Find the starter of course 8.");
      },
    ],
    [
      "a number in a label",
      (cells) => {
        change(cells, "Starter of", 0, "Starter of course 8 covers");
      },
    ],
    [
      "a missing label",
      (cells) => {
        change(cells, "Sets of", 0, null);
      },
    ],
    [
      "a missing heading",
      (cells) => {
        change(cells, "Find", 1, null);
      },
    ],
    [
      "an inserted row",
      (cells) => {
        cells.splice(3, 0, ["4 panels", null, null, null]);
      },
    ],
  ])("isn't checked if it was changed after it was handed out: %s", (_, changePage) => {
    const cells = pageWith(cover?.shown ?? "");
    changePage(cells);
    expect(() => checkPage(inView(cells))).toThrow(
      "This page was changed after it was handed out, so it can't be checked.",
    );
  });

  it("isn't checked if it isn't a problem's page", () => {
    const noSuchProblem = pageWith();
    change(noSuchProblem, "2  Stagger", 0, "20  Gables");
    for (const cells of [[["Bid"]], [["3  Rafter factor"], ["Bid"]], noSuchProblem])
      expect(() => checkPage(inView(cells))).toThrow(
        "The active sheet isn't a page of a practice workbook: open one, and go to a problem's page.",
      );
  });
});

describe("a page printed with earlier wording", () => {
  it("is checked as a page of a class", () => {
    const cells = cellsOf(...EARLIER_TOPIC_PAGE.printed, ...EARLIER_TOPIC_PAGE.answers);
    expect(checkPage(inView(cells)).map(({ verdict }) => verdict)).toEqual(["right", "near", "right"]);
  });

  it("is checked as a page of the full-day course", () => {
    const cells = cellsOf(...EARLIER_COURSE_PAGE.printed, ...EARLIER_COURSE_PAGE.answers);
    expect(checkPage(inView(cells)).map(({ verdict }) => verdict)).toEqual(["right", "right"]);
  });

  it("isn't checked if its measurements were changed", () => {
    const cells = cellsOf(...EARLIER_TOPIC_PAGE.printed, [9, 1, '20"'], ...EARLIER_TOPIC_PAGE.answers);
    expect(() => checkPage(inView(cells))).toThrow("This page was changed after it was handed out");
  });

  it("is marked in a student's file, and a page that is missing there isn't", () => {
    const sheetOf = (name: string, ...cells: readonly PrintedCell[]): PrintableSheet => ({
      name,
      cells: cells.map(([row, column, printed]) => ({ row, column, content: text(printed) })),
      columnWidths: [],
      rowHeights: {},
      frozenRows: 0,
      inputPrompts: [],
    });
    const { printed, answers } = EARLIER_TOPIC_PAGE;
    const [, classLine] = printed;
    const book = planBook([
      sheetOf("Start", ...(classLine ? [classLine] : []), [3, 1, "Sam"]),
      sheetOf("2 Stagger and starters", ...printed, ...answers),
    ]);
    const student = markStudent(readStudentFile(book, "a.xlsx"));
    expect([student.name, student.alteredProblems]).toEqual(["Sam", [1]]);
    expect(student.answers.map(({ verdict, mistake }) => [verdict, mistake])).toEqual([
      ["right", undefined],
      ["near", "left out the fold"],
      ["right", undefined],
    ]);
  });
});
