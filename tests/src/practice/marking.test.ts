import { LEVELS } from "../../../functions/practice/level";
import { UNITS } from "../../../functions/practice/measuring";
import type { Cell } from "../../../shared/cell";
import type { Book, BookCell } from "../../../src/xlsx/book/book";
import { planBook } from "../../../src/xlsx/planBook";
import { openXlsx, saveXlsx } from "../../../src/xlsx/xlsxFile";
import { classGrid } from "../../../src/practice/marking/classGrid";
import { markAnswer } from "../../../src/practice/marking/markAnswer";
import { versionMismatches } from "../../../src/practice/marking/versionMismatches";
import { pastedAnswers } from "../../../src/practice/marking/pastedAnswers";
import { readStudentFile } from "../../../src/practice/marking/readStudentFile";
import { duplicateNames } from "../../../src/practice/marking/duplicateNames";
import { incompleteRows } from "../../../src/practice/marking/incompleteRows";
import { markStudent } from "../../../src/practice/marking/markStudent";
import type { VersionOptions } from "../../../src/practice/class/classOptions";
import { problemsOf } from "../../../src/practice/class/practiceClass";
import type { Problem } from "../../../src/practice/problems/problem";
import type { Answer } from "../../../src/practice/topic";
import { TOPIC_IDS } from "../../../src/practice/topics/index";
import type { CellAddress } from "../../../src/workbook/address";
import { answerKeySheet } from "../../../src/practice/sheets/answerKeySheet";
import { markingSheets } from "../../../src/practice/marking/markingSheets";
import { markingSummary } from "../../../src/practice/marking/markingSummary";
import { NAME_ADDRESS, sheetsOf, studentSheets } from "../../../src/practice/sheets/studentSheets";
import { convert, describeWithLibreOffice } from "../../support/libreOffice";

jest.setTimeout(120_000);

const ALL = TOPIC_IDS;
/** Longer than the part of a cell that messages quote. */
const LONG_NAME = "invented ".repeat(9).trim();
const VERSION: VersionOptions = {
  seed: "4711",
  version: 0,
  level: "half day",
  units: "feet and inches",
  set: { kind: "topics", topics: ALL, problems: ALL.length },
};

const EVERY_ANSWER = UNITS.flatMap((units) =>
  LEVELS.flatMap((level) =>
    ["1", "2", "3", "4", "5"].flatMap((seed) =>
      problemsOf({ ...VERSION, units, level, seed }).flatMap(({ topic, solution }) =>
        solution.answers.map((answer) => ({ units, level, topic, answer })),
      ),
    ),
  ),
);

const answersOf = (topic: string, label: string): Answer[] =>
  EVERY_ANSWER.filter((each) => each.topic === topic && each.answer.field.label.startsWith(label)).map(
    ({ answer }) => answer,
  );

describe("an answer", () => {
  it("is right as the answer key shows it, and as a bare number in its unit", () => {
    for (const { topic, answer } of EVERY_ANSWER) {
      expect([topic, answer.shown, markAnswer(answer, answer.shown).verdict]).toEqual([
        topic,
        answer.shown,
        "right",
      ]);
      const { field, value } = answer;
      if (typeof value !== "number" || !["in", "degrees", "in 12"].includes(field.unit)) continue;
      expect(markAnswer(answer, value).verdict).toBe("right");
    }
  });

  // Every common mistake of every topic, as a student would write it.
  const mistakes = new Map<string, { answer: Answer; shown: string }[]>();
  for (const { topic, answer } of EVERY_ANSWER)
    for (const { name, shown } of answer.mistakes) {
      const title = `${topic}: ${name}`;
      mistakes.set(title, [...(mistakes.get(title) ?? []), { answer, shown }]);
    }

  it("has many common mistakes", () => {
    expect(mistakes.size).toBeGreaterThan(50);
  });

  it.each([...mistakes])("is near, and the common mistake is named: %s", (title, cases) => {
    for (const { answer, shown } of cases) {
      const { verdict, mistake } = markAnswer(answer, shown);
      expect([shown, verdict]).toEqual([shown, "near"]);
      expect(mistake).toBe(title.slice(title.indexOf(": ") + 2));
    }
  });

  it("is near where only the unit is mixed up", () => {
    for (const answer of answersOf("rafter", "Slope length")) {
      const lengthIn = Number(answer.value);
      if (answer.field.unit === "ft") {
        expect(markAnswer(answer, `${(lengthIn / 12).toFixed(3)} in`).mistake).toBe("used feet for inches");
        expect(markAnswer(answer, Number(lengthIn.toFixed(2))).mistake).toBe("used inches for feet");
      } else {
        expect(markAnswer(answer, `${(lengthIn * 2.54).toFixed(1)}`).mistake).toBe(
          "used centimeters for millimeters",
        );
        expect(markAnswer(answer, (lengthIn * 0.0254).toFixed(4)).mistake).toBe(
          "used meters for millimeters",
        );
      }
    }
  });

  it("is near where it was rounded too early, and wrong further off", () => {
    for (const answer of answersOf("rafter", "Slope length")) {
      const off = (tolerances: number): string =>
        `${Number(answer.value) + tolerances * answer.tolerance} in`;
      expect(markAnswer(answer, off(0.9)).verdict).toBe("right");
      expect(markAnswer(answer, off(3))).toEqual({ verdict: "near", mistake: "rounded too early" });
      expect(markAnswer(answer, off(8)).verdict).toBe("wrong");
    }
  });

  it("that is a count is near if it wasn't rounded up, and wrong with other decimals", () => {
    const counts = EVERY_ANSWER.filter(({ answer }) => answer.field.kind === "count");
    expect(counts.length).toBeGreaterThan(100);
    for (const { answer } of counts) {
      const count = Number(answer.value);
      const notRoundedUp = { verdict: "near", mistake: "did not round up to a whole number" };
      for (const short of [0.9, 0.75, 0.344, 0.1])
        expect(markAnswer(answer, count - short)).toEqual(notRoundedUp);
      expect(markAnswer(answer, `${count - 0.5} ${answer.field.unit}`)).toEqual(notRoundedUp);
      for (const off of [-1.5, 0.25]) expect(markAnswer(answer, count + off)).toEqual({ verdict: "wrong" });
    }
  });

  it.each<[Cell, string]>([
    [null, "blank"],
    ["  ", "blank"],
    ["no idea", "wrong"],
    [true, "wrong"],
    ["=1+1", "wrong"],
    [-3, "wrong"],
    ["6:12", "wrong"],
  ])("that reads %p is %s", (typed, verdict) => {
    for (const { answer } of EVERY_ANSWER.filter(
      (each) =>
        each.answer.field.kind !== "pitch" &&
        each.answer.field.kind !== "degrees" &&
        each.answer.field.unit !== "%",
    ))
      expect(markAnswer(answer, typed).verdict).toBe(verdict);
  });

  it.each<[string, string, Cell, string]>([
    ["courses", "Courses", "fifty-three", "can't be read as a count in digits"],
    ["courses", "Courses", true, "can't be read as a count in digits"],
    ["rafter", "Slope length", "no idea", "can't be read as a length"],
    ["rafter", "Slope length", "6:12", "can't be read as a length"],
    ["change order", "Change", "a lot", "can't be read as an amount of money"],
  ])("to %s, %s, that reads %p, is wrong because it %s", (topic, label, typed, mistake) => {
    const answers = answersOf(topic, label);
    expect(answers.length).toBeGreaterThan(0);
    for (const answer of answers) expect(markAnswer(answer, typed)).toEqual({ verdict: "wrong", mistake });
  });

  it("that can be read but matches no mistake is just wrong", () => {
    for (const answer of answersOf("courses", "Courses"))
      expect(markAnswer(answer, Number(answer.value) + 100)).toEqual({ verdict: "wrong" });
  });

  it.each(["6:12", "6/12", "6 in 12", "6", "26.565°", "50%"])("may write a pitch as %s", (typed) => {
    const [answer] = answersOf("pitch", "Pitch");
    expect(markAnswer({ ...(answer as Answer), value: 6, mistakes: [] }, typed).verdict).toBe("right");
  });
});

const withCells = (
  book: Book,
  sheetName: string,
  typed: readonly (readonly [CellAddress, Cell])[],
): Book => ({
  ...book,
  sheets: book.sheets.map((sheet) => {
    if (sheet.name !== sheetName) return sheet;
    const cells = new Map([...sheet.cells].map(([row, inRow]) => [row, new Map<number, BookCell>(inRow)]));
    for (const [{ row, column }, value] of typed) {
      const inRow = cells.get(row) ?? new Map<number, BookCell>();
      cells.set(row, inRow.set(column, { ...inRow.get(column), value }));
    }
    return { ...sheet, cells };
  }),
});

/** A student's file as turned in: with a name, and the answers that `write` gives. */
const handedIn = (
  version: VersionOptions,
  name: string,
  write: (answer: Answer, problem: Problem) => Cell,
): Uint8Array => {
  const problems = problemsOf(version);
  const sheets = studentSheets(
    problems.map(({ question }) => question),
    version,
  );
  const file = openXlsx(saveXlsx(undefined, planBook(sheetsOf(sheets))));
  let book = withCells(file.book, "Start", [[NAME_ADDRESS, name]]);
  sheets.problems.forEach(({ sheet, answerPlaces }, index) => {
    const problem = problems[index] as Problem;
    book = withCells(
      book,
      sheet.name,
      answerPlaces.map((place, at) => [place, write(problem.solution.answers[at] as Answer, problem)]),
    );
  });
  return saveXlsx({ file, calculated: file.book }, book);
};

const marked = (file: Uint8Array) => markStudent(readStudentFile(openXlsx(file).book, "a.xlsx"));

describe("a student's file", () => {
  it("is marked without the answer key, under the student's name", () => {
    const student = marked(handedIn({ ...VERSION, version: 3 }, "Sam", ({ shown }) => shown));
    expect(student.name).toBe("Sam");
    expect(student.versionLetters).toBe("D");
    expect(student.answers.length).toBeGreaterThan(25);
    expect(student.answers.every(({ verdict }) => verdict === "right")).toBe(true);
  });

  it("has the file's name if the student wrote none, and blank answers are blank", () => {
    const student = marked(handedIn(VERSION, "", () => null));
    expect(student.name).toBe("a.xlsx");
    expect(student.answers.every(({ verdict }) => verdict === "blank")).toBe(true);
  });

  it("isn't marked on a page whose problem was changed, and other work on a page doesn't matter", () => {
    const file = openXlsx(handedIn(VERSION, "Kim", ({ shown }) => shown));
    const eased = withCells(file.book, "3 Rafter factor", [[{ row: 7, column: 1 }, `10' 0"`]]);
    const worked = withCells(eased, "4 Courses", [[{ row: 40, column: 2 }, "19 x 12"]]);
    const student = marked(saveXlsx({ file, calculated: file.book }, worked));
    expect(student.alteredProblems).toEqual([3]);
    expect(student.answers.some(({ problem }) => problem === 3)).toBe(false);
    expect(student.answers.every(({ verdict }) => verdict === "right")).toBe(true);
  });

  it("isn't an answer key", () => {
    const key = planBook([answerKeySheet(problemsOf(VERSION), VERSION)]);
    expect(() => readStudentFile(key, "practice-4711-key.xlsx")).toThrow(
      "practice-4711-key.xlsx is an answer key: pick the files that students turned in.",
    );
  });

  it("is refused with a message if it isn't a practice workbook", () => {
    expect(() => readStudentFile({ sheets: [] }, "bid.xlsx")).toThrow(
      'bid.xlsx isn\'t a practice workbook: its sheet "Start" has no line that names the class.',
    );
  });
});

describeWithLibreOffice("a student's file saved by another program", () => {
  it("is marked the same", async () => {
    const file = await convert(
      handedIn(VERSION, "Lee", ({ shown }) => shown),
      "xlsx",
      "xlsx",
    );
    const student = marked(file);
    expect(student.alteredProblems).toEqual([]);
    expect(student.answers.every(({ verdict }) => verdict === "right")).toBe(true);
  });
});

describe("answers collected on paper", () => {
  const options = {
    seed: "7",
    level: "first hour",
    units: "metric",
    set: { kind: "topics", topics: ["courses", "trim"], problems: 2 },
    versions: 2,
  } as const;

  it("are read row by row: name, version, answers in order", () => {
    const shown = problemsOf({ ...options, version: 1 }).flatMap(({ solution }) =>
      solution.answers.map((answer) => answer.shown),
    );
    const { submissions } = pastedAnswers(`Ann\tB\t${shown.join("\t")}\nBob\tb\t${shown[0]}\n`, options);
    const [full, started] = submissions.map(markStudent);
    expect(full?.answers.map(({ verdict }) => verdict)).toEqual(["right", "right", "right", "right"]);
    expect(started?.answers.map(({ verdict }) => verdict)).toEqual(["right", "blank", "blank", "blank"]);
  });

  it.each([
    ["an empty row", "Ann\tA\t1\n\n \t\t\nBob\tB\t2\n\n", ["Ann", "Bob"]],
    ["a heading", "Name\tVersion\tAnswer\nAnn\tA\t1", ["Ann"]],
    ["empty cells at the end of a row", "Ann\tA\t1\t2\t3\t4\t\t \t", ["Ann"]],
    ["a missing name", "\tA\t1", ["Row 1"]],
  ])("are read despite %s", (_, pasted, names) => {
    const { submissions, rejected } = pastedAnswers(pasted, options);
    expect(submissions.map(({ name }) => name)).toEqual(names);
    expect(submissions[0]?.answers[0]?.[0]).toBe("1");
    expect(rejected).toEqual([]);
  });

  it.each(["Ann,A,1,2,3,4", "Ann;A;1;2\nBob;B;2"])("need tabs between them: %j", (pasted) => {
    const { submissions, rejected } = pastedAnswers(pasted, options);
    expect(submissions).toEqual([]);
    expect(rejected).toEqual([
      expect.stringContaining("there are no tabs between name, version and answers"),
    ]);
  });

  it("are reported where a row ends early, but not where a cell in between is blank", () => {
    const full = "1\t\t3\t4";
    const { submissions } = pastedAnswers(`Ann\tA\t1\nBob\tB\nCleo\tA\t${full}`, options);
    expect(incompleteRows(submissions)).toEqual([
      "Some rows end before the last answer; missing answers count as blank: Ann (1 of 4) and Bob (0 of 4).",
    ]);
    expect(incompleteRows(submissions.slice(2))).toEqual([]);
    const many = pastedAnswers("Ann\tA\t1\n".repeat(20), options);
    expect(incompleteRows(many.submissions)).toEqual([expect.stringMatching(/\(1 of 4\), and 12 more\.$/)]);
  });

  describe("that are mostly wrong", () => {
    const asked = { ...VERSION, versions: 3 };
    const rightOf = (version: VersionOptions): string =>
      problemsOf(version)
        .flatMap(({ solution }) => solution.answers.map(({ shown }) => shown))
        .join("\t");
    const notesOn = (pasted: string) => versionMismatches(pastedAnswers(pasted, asked).submissions, asked);

    it("are matched to another version, which is named", () => {
      const [a, c] = [0, 2].map((version) => rightOf({ ...VERSION, version }));
      expect(notesOn(`Ann\tA\t${c}\nBob\tA\t${a}`)).toEqual([
        "Some answers match another version than the one in their row: Ann (C, not A).",
      ]);
    });

    it("are reported as another class's if they match no version", () => {
      expect(notesOn(`Ann\tA\t${rightOf({ ...VERSION, seed: "4712" })}`)).toEqual([
        "Hardly any answers of Ann are right: check that the class's seed and choices match those printed on the sheets.",
      ]);
    });

    it("are tried with other versions until five students match none: then the class is another one", () => {
      const other = rightOf({ ...VERSION, seed: "4712" });
      const c = rightOf({ ...VERSION, version: 2 });
      const strangers = (count: number) => "Ann\tA\t".concat(other, "\n").repeat(count);
      expect(notesOn(`${strangers(4)}Cleo\tA\t${c}`)).toContainEqual(
        expect.stringContaining("Cleo (C, not A)"),
      );
      expect(notesOn(`${strangers(5)}Cleo\tA\t${c}`)).toEqual([
        expect.stringMatching(/^Hardly any answers of .*and Cleo are right/),
      ]);
    });

    it("are not reported if there are too few to tell", () => {
      expect(notesOn("Ann\tA\t1\t2\t3")).toEqual([]);
    });
  });

  it.each([
    ["Ann\tC\t5", [], 'Row 1 isn\'t marked: its second column must be a version from A to B, got "C".'],
    [
      "Ann\tA\t1\n\nBob\nCleo\tB\t2",
      ["Ann", "Cleo"],
      'Row 3 isn\'t marked: its second column must be a version from A to B, got "".',
    ],
    [
      "Ann\tA\t1\t2\t3\t4\t5\nBob\tA",
      ["Bob"],
      "Row 1 isn't marked: it has 5 answers after name and version, but the class asks for 4.",
    ],
  ])("are rejected where a row of %j doesn't fit, and the others are marked", (pasted, names, message) => {
    const { submissions, rejected } = pastedAnswers(pasted, options);
    expect(submissions.map(({ name }) => name)).toEqual(names);
    expect(rejected).toEqual([message]);
  });
});

describe("the class", () => {
  /** Both leave out the setback; one of the two rounds courses down. */
  const students = ["Ann", "=HYPERLINK(1)"].map((name, index) =>
    marked(
      handedIn({ ...VERSION, version: index }, name, ({ shown, mistakes }, { topic }) => {
        const name =
          topic === "starters"
            ? "left out the setback"
            : topic === "courses" && index === 0
              ? "rounded down"
              : "";
        return mistakes.find((mistake) => mistake.name === name)?.shown ?? shown;
      }),
    ),
  );

  it("is a grid by topic, with the most common mistakes and what to teach again", () => {
    const grid = classGrid(students);
    expect(grid.topics.map(({ topic }) => topic.id)).toEqual(ALL);
    expect(grid.toReteach.map(({ topic }) => topic.id)).toEqual(["starters"]);
    expect(grid.toReteach[0]?.mistakes[0]).toEqual({ mistake: "left out the setback", students: 2 });
    const courses = grid.topics.find(({ topic }) => topic.id === "courses");
    expect(courses?.counts).toEqual({ right: 5, near: 1, wrong: 0, blank: 0 });
    expect(grid.rows[1]?.fractionsRight[3]).toBe(1);
    const [ann] = students;
    const rightOfAnn = ann?.answers.filter(({ verdict }) => verdict === "right").length ?? 0;
    expect(grid.rows[0]?.fractionRight).toBe(rightOfAnn / (ann?.answers.length ?? 0));
    expect(grid.counts.right).toBe(grid.topics.reduce((sum, { counts }) => sum + counts.right, 0));
    expect(markingSummary(students)).toMatch(
      /^2 students, \d+ answers, 9\d % right\. Teach again: Stagger and starters\.$/,
    );
  });

  it.each([
    [[], /right\. Teach again/],
    [
      [3],
      /right\. 1 page isn't marked because it was changed after being handed out: Ann \(problem 3\)\. Teach again/,
    ],
    [
      [3, 5],
      /right\. 2 pages aren't marked because they were changed after being handed out: Ann \(problems 3, 5\)\. Teach again/,
    ],
  ])("is summed up, with the pages that were changed: %j", (alteredProblems, summary) => {
    expect(
      markingSummary(
        students.map((student, index) => (index === 0 ? { ...student, alteredProblems } : student)),
      ),
    ).toMatch(summary);
  });

  it("is written to two sheets, with students' answers as text", () => {
    const { sheets } = markingSheets(students, { grid: "Class", answers: "Answers" }, "2026-06-01");
    expect(sheets.map(({ name }) => name)).toEqual(["Class", "Answers"]);
    for (const { cells } of sheets)
      for (const { content } of cells) expect(content?.kind).not.toBe("formula");
    const names = sheets[0]?.cells.map(({ content }) => (content?.kind === "text" ? content.text : ""));
    expect(names).toContain("=HYPERLINK(1)");
  });

  it("starts with the class line and the date, and names topics, students and mistakes", () => {
    const { sheets } = markingSheets(students, { grid: "Class", answers: "Answers" }, "2026-06-01");
    const [grid, answers] = sheets.map(({ cells }) =>
      cells.map(({ content }) => (content?.kind === "text" ? content.text : "")),
    );
    expect(grid?.slice(0, 3)).toEqual([
      "Class",
      `Seed 4711 · half day · feet and inches · ${ALL.length} problems · topics ${ALL.map((_, index) => index + 1).join(" ")}`,
      "Marked on 2026-06-01.",
    ]);
    expect(grid).toContain("All topics");
    expect(grid).toContain("Common mistakes: left out the setback (2 students).");
    expect(answers).toContain("Reading a tape");
    expect(answers).not.toContain("tape");
  });

  it("has room for a long name", () => {
    const named = (name: string) => students.map((student) => ({ ...student, name }));
    const widthOf = (name: string) =>
      markingSheets(named(name), { grid: "Class", answers: "Answers" }, "2026-06-01").sheets.map(
        ({ columnWidths }) => columnWidths[0],
      );
    const usual = Math.max(...widthOf("Ann").map(Number));
    for (const width of widthOf(LONG_NAME)) expect(width).toBeGreaterThan(3 * usual);
  });

  it.each([
    [["Ann", "Bob"], []],
    [[LONG_NAME, LONG_NAME], [`2 students are named "${LONG_NAME}": check whether one turned in twice.`]],
    [["Ann", "Bob", "ann", "Ann"], ['3 students are named "Ann": check whether one turned in twice.']],
  ])("reports shared names among %j", (names, messages) => {
    expect(duplicateNames(names.map((name) => ({ name })))).toEqual(messages);
  });
});
