import { LEVELS } from "../../../functions/practice/level";
import { UNITS } from "../../../functions/practice/measuring";
import type { Cell } from "../../../shared/cell";
import type { Book, BookCell } from "../../../src/xlsx/book/book";
import { planBook } from "../../../src/xlsx/planBook";
import { openXlsx, saveXlsx } from "../../../src/xlsx/xlsxFile";
import { classGrid } from "../../../src/practice/marking/classGrid";
import { markAnswer } from "../../../src/practice/marking/markAnswer";
import { misfits } from "../../../src/practice/marking/versionMismatches";
import { pastedAnswers } from "../../../src/practice/marking/pastedAnswers";
import { readStudentFile } from "../../../src/practice/marking/readStudentFile";
import { sameNames } from "../../../src/practice/marking/repeatedNames";
import { shortRows } from "../../../src/practice/marking/shortRows";
import { markStudent } from "../../../src/practice/marking/student";
import type { VersionOptions } from "../../../src/practice/classOptions";
import { problemsOf } from "../../../src/practice/class/practiceClass";
import type { Answer, Problem } from "../../../src/practice/problem";
import { TOPIC_IDS } from "../../../src/practice/topicTitles";
import type { CellAddress } from "../../../src/workbook/address";
import { keySheet } from "../../../src/practice/sheets/keySheet";
import { markingInWords, markingSheets } from "../../../src/practice/marking/markingSheets";
import { sheetsOf, studentSheets } from "../../../src/practice/sheets/studentSheets";
import { convert, describeWithLibreOffice } from "../../support/libreOffice";

jest.setTimeout(120_000);

const ALL = TOPIC_IDS;
/** Longer than what is quoted of a cell. */
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
  it("is right as the key writes it, and as a bare number of its unit", () => {
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

  // Every slip of every topic, as a student would write it.
  const slips = new Map<string, { answer: Answer; shown: string }[]>();
  for (const { topic, answer } of EVERY_ANSWER)
    for (const { slip, shown } of answer.mistakes) {
      const title = `${topic}: ${slip}`;
      slips.set(title, [...(slips.get(title) ?? []), { answer, shown }]);
    }

  it("has many slips to be told by", () => {
    expect(slips.size).toBeGreaterThan(50);
  });

  it.each([...slips])("is near, and the slip is named: %s", (title, cases) => {
    for (const { answer, shown } of cases) {
      const { verdict, slip } = markAnswer(answer, shown);
      expect([shown, verdict]).toEqual([shown, "near"]);
      expect(slip).toBe(title.slice(title.indexOf(": ") + 2));
    }
  });

  it("is near where only its unit slipped", () => {
    for (const answer of answersOf("rafter", "Length")) {
      const lengthIn = Number(answer.value);
      if (answer.field.unit === "ft") {
        expect(markAnswer(answer, `${(lengthIn / 12).toFixed(3)} in`).slip).toBe("took feet for inches");
        expect(markAnswer(answer, Number(lengthIn.toFixed(2))).slip).toBe("took inches for feet");
      } else {
        expect(markAnswer(answer, `${(lengthIn * 2.54).toFixed(1)}`).slip).toBe(
          "took centimeters for millimeters",
        );
        expect(markAnswer(answer, (lengthIn * 0.0254).toFixed(4)).slip).toBe("took meters for millimeters");
      }
    }
  });

  it("is near where it was rounded too early, and wrong further off", () => {
    for (const answer of answersOf("rafter", "Length")) {
      const off = (tolerances: number): string =>
        `${Number(answer.value) + tolerances * answer.tolerance} in`;
      expect(markAnswer(answer, off(0.9)).verdict).toBe("right");
      expect(markAnswer(answer, off(3))).toEqual({ verdict: "near", slip: "rounded too early" });
      expect(markAnswer(answer, off(8)).verdict).toBe("wrong");
    }
  });

  it("that counts is near with decimals that were to be rounded up, and wrong with others", () => {
    const counts = EVERY_ANSWER.filter(({ answer }) => answer.field.kind === "count");
    expect(counts.length).toBeGreaterThan(100);
    for (const { answer } of counts) {
      const count = Number(answer.value);
      const notRoundedUp = { verdict: "near", slip: "did not round up to whole ones" };
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
  ])("that says %p is %s", (typed, verdict) => {
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
    ["rafter", "Length", "no idea", "can't be read as a length"],
    ["rafter", "Length", "6:12", "can't be read as a length"],
    ["change order", "Change", "a lot", "can't be read as an amount of money"],
  ])("of %s, %s, that says %p, is wrong because it %s", (topic, label, typed, slip) => {
    const answers = answersOf(topic, label);
    expect(answers.length).toBeGreaterThan(0);
    for (const answer of answers) expect(markAnswer(answer, typed)).toEqual({ verdict: "wrong", slip });
  });

  it("that can be read, and is none of them, has no slip", () => {
    for (const answer of answersOf("courses", "Courses"))
      expect(markAnswer(answer, Number(answer.value) + 100)).toEqual({ verdict: "wrong" });
  });

  it.each(["6:12", "6/12", "6 in 12", "6", "26.565°", "50%"])("takes a pitch as %s", (typed) => {
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

/** A student's file as it comes back, with a name and answers written in by whatever `write` makes of each answer. */
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
  let book = withCells(file.book, "Start", [[sheets.start.namePlace, name]]);
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
  it("is marked without its key, and known by its name", () => {
    const student = marked(handedIn({ ...VERSION, version: 3 }, "Sam", ({ shown }) => shown));
    expect(student.name).toBe("Sam");
    expect(student.versionLetters).toBe("D");
    expect(student.answers.length).toBeGreaterThan(25);
    expect(student.answers.every(({ verdict }) => verdict === "right")).toBe(true);
  });

  it("goes by the file's name where none was written, and blanks are blanks", () => {
    const student = marked(handedIn(VERSION, "", () => null));
    expect(student.name).toBe("a.xlsx");
    expect(student.answers.every(({ verdict }) => verdict === "blank")).toBe(true);
  });

  it("has no page marked whose problem was changed, and working beside it doesn't matter", () => {
    const file = openXlsx(handedIn(VERSION, "Kim", ({ shown }) => shown));
    const eased = withCells(file.book, "3 Rafter factor", [[{ row: 7, column: 1 }, `10' 0"`]]);
    const worked = withCells(eased, "4 Courses", [[{ row: 40, column: 2 }, "19 x 12"]]);
    const student = marked(saveXlsx({ file, calculated: file.book }, worked));
    expect(student.altered).toEqual([3]);
    expect(student.answers.some(({ problem }) => problem === 3)).toBe(false);
    expect(student.answers.every(({ verdict }) => verdict === "right")).toBe(true);
  });

  it("is told from a key", () => {
    const key = planBook([keySheet(problemsOf(VERSION), VERSION)]);
    expect(() => readStudentFile(key, "practice-4711-key.xlsx")).toThrow(
      "practice-4711-key.xlsx is a class's key: give the files that students handed in.",
    );
  });

  it("is refused by a sentence where it is none", () => {
    expect(() => readStudentFile({ sheets: [] }, "bid.xlsx")).toThrow(
      'bid.xlsx is no practice workbook: its sheet "Start" has no line that says which class it is.',
    );
  });
});

describeWithLibreOffice("a student's file that another program saved", () => {
  it("is marked all the same", async () => {
    const file = await convert(
      handedIn(VERSION, "Lee", ({ shown }) => shown),
      "xlsx",
      "xlsx",
    );
    const student = marked(file);
    expect(student.altered).toEqual([]);
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

  it("are taken line by line: name, version, answers in order", () => {
    const shown = problemsOf({ ...options, version: 1 }).flatMap(({ solution }) =>
      solution.answers.map((answer) => answer.shown),
    );
    const { handedIn } = pastedAnswers(`Ann\tB\t${shown.join("\t")}\nBob\tb\t${shown[0]}\n`, options);
    const [full, begun] = handedIn.map(markStudent);
    expect(full?.answers.map(({ verdict }) => verdict)).toEqual(["right", "right", "right", "right"]);
    expect(begun?.answers.map(({ verdict }) => verdict)).toEqual(["right", "blank", "blank", "blank"]);
  });

  it.each([
    ["an empty line", "Ann\tA\t1\n\n \t\t\nBob\tB\t2\n\n", ["Ann", "Bob"]],
    ["a heading", "Name\tVersion\tAnswer\nAnn\tA\t1", ["Ann"]],
    ["empty cells at a line's end", "Ann\tA\t1\t2\t3\t4\t\t \t", ["Ann"]],
    ["a name left out", "\tA\t1", ["Line 1"]],
  ])("are read past %s", (_, pasted, names) => {
    const { handedIn, unread } = pastedAnswers(pasted, options);
    expect(handedIn.map(({ name }) => name)).toEqual(names);
    expect(handedIn[0]?.typed[0]?.[0]).toBe("1");
    expect(unread).toEqual([]);
  });

  it.each(["Ann,A,1,2,3,4", "Ann;A;1;2\nBob;B;2"])("must have tabs between them: %j", (pasted) => {
    const { handedIn, unread } = pastedAnswers(pasted, options);
    expect(handedIn).toEqual([]);
    expect(unread).toEqual([expect.stringContaining("there is no tab between name, version and answers")]);
  });

  it("say which rows end early, but not which have a blank within", () => {
    const full = "1\t\t3\t4";
    const { handedIn } = pastedAnswers(`Ann\tA\t1\nBob\tB\nCleo\tA\t${full}`, options);
    expect(shortRows(handedIn)).toEqual([
      "Some rows end before the last answer, and what is missing counts as blank: Ann (1 of 4) and Bob (0 of 4).",
    ]);
    expect(shortRows(handedIn.slice(2))).toEqual([]);
    const many = pastedAnswers("Ann\tA\t1\n".repeat(20), options);
    expect(shortRows(many.handedIn)).toEqual([expect.stringMatching(/\(1 of 4\), and 12 more\.$/)]);
  });

  describe("that are mostly wrong", () => {
    const asked = { ...VERSION, versions: 3 };
    const rightOf = (version: VersionOptions): string =>
      problemsOf(version)
        .flatMap(({ solution }) => solution.answers.map(({ shown }) => shown))
        .join("\t");
    const told = (pasted: string) => misfits(pastedAnswers(pasted, asked).handedIn, asked);

    it("are those of another version, which is named", () => {
      const [a, c] = [0, 2].map((version) => rightOf({ ...VERSION, version }));
      expect(told(`Ann\tA\t${c}\nBob\tA\t${a}`)).toEqual([
        "Some answers fit another version than the one that is given for them: Ann (C, not A).",
      ]);
    });

    it("are those of another class, which isn't known", () => {
      expect(told(`Ann\tA\t${rightOf({ ...VERSION, seed: "4712" })}`)).toEqual([
        "Hardly anything is right of what Ann wrote: see that the seed and the choices of the class are those printed on the sheets.",
      ]);
    });

    it("are looked up until five have fitted no version: then the class is another one", () => {
      const other = rightOf({ ...VERSION, seed: "4712" });
      const c = rightOf({ ...VERSION, version: 2 });
      const strangers = (count: number) => "Ann\tA\t".concat(other, "\n").repeat(count);
      expect(told(`${strangers(4)}Cleo\tA\t${c}`)).toContainEqual(expect.stringContaining("Cleo (C, not A)"));
      expect(told(`${strangers(5)}Cleo\tA\t${c}`)).toEqual([
        expect.stringMatching(/^Hardly .*and Cleo wrote/),
      ]);
    });

    it("or too few to tell by, are nothing to speak of", () => {
      expect(told("Ann\tA\t1\t2\t3")).toEqual([]);
    });
  });

  it.each([
    ["Ann\tC\t5", [], 'Line 1 isn\'t marked: its second column takes a version from A to B, got "C".'],
    [
      "Ann\tA\t1\n\nBob\nCleo\tB\t2",
      ["Ann", "Cleo"],
      'Line 3 isn\'t marked: its second column takes a version from A to B, got "".',
    ],
    [
      "Ann\tA\t1\t2\t3\t4\t5\nBob\tA",
      ["Bob"],
      "Line 1 isn't marked: it has 5 answers after name and version; the class asks for 4.",
    ],
  ])("name the line of %j that doesn't fit, and mark the others", (pasted, names, sentence) => {
    const { handedIn, unread } = pastedAnswers(pasted, options);
    expect(handedIn.map(({ name }) => name)).toEqual(names);
    expect(unread).toEqual([sentence]);
  });
});

describe("the class", () => {
  /** Everybody forgets the setback, one of two rounds courses down. */
  const students = ["Ann", "=HYPERLINK(1)"].map((name, index) =>
    marked(
      handedIn({ ...VERSION, version: index }, name, ({ shown, mistakes }, { topic }) => {
        const slip =
          topic === "starters"
            ? "forgot the setback"
            : topic === "courses" && index === 0
              ? "rounded down"
              : "";
        return mistakes.find((mistake) => mistake.slip === slip)?.shown ?? shown;
      }),
    ),
  );

  it("is a grid by topic, with the commonest slips, and what to teach again", () => {
    const grid = classGrid(students);
    expect(grid.topics.map(({ id }) => id)).toEqual(ALL);
    expect(grid.toTeachAgain.map(({ id }) => id)).toEqual(["starters"]);
    expect(grid.toTeachAgain[0]?.slips[0]).toEqual({ slip: "forgot the setback", students: 2 });
    const courses = grid.topics.find(({ id }) => id === "courses");
    expect(courses?.counts).toEqual({ right: 5, near: 1, wrong: 0, blank: 0 });
    expect(grid.rows[1]?.shares[3]).toBe(1);
    const [ann] = students;
    const rightOfAnn = ann?.answers.filter(({ verdict }) => verdict === "right").length ?? 0;
    expect(grid.rows[0]?.shareRight).toBe(rightOfAnn / (ann?.answers.length ?? 0));
    expect(grid.counts.right).toBe(grid.topics.reduce((sum, { counts }) => sum + counts.right, 0));
    expect(markingInWords(students)).toMatch(
      /^2 students, \d+ answers, 9\d % right\. To teach again: Stagger and starters\.$/,
    );
  });

  it.each([
    [[], /right\. To teach/],
    [
      [3],
      /right\. 1 page isn't marked, for what was given out was changed there: Ann \(problem 3\)\. To teach/,
    ],
    [
      [3, 5],
      /right\. 2 pages aren't marked, for what was given out was changed there: Ann \(problems 3, 5\)\. To teach/,
    ],
  ])("is said in a sentence, with the pages that were changed: %j", (altered, sentence) => {
    expect(
      markingInWords(students.map((student, index) => (index === 0 ? { ...student, altered } : student))),
    ).toMatch(sentence);
  });

  it("stands on two sheets, what students wrote as text", () => {
    const { sheets } = markingSheets(students, { grid: "Class", answers: "Answers" }, "2026-06-01");
    expect(sheets.map(({ name }) => name)).toEqual(["Class", "Answers"]);
    for (const { cells } of sheets)
      for (const { content } of cells) expect(content?.kind).not.toBe("formula");
    const names = sheets[0]?.cells.map(({ content }) => (content?.kind === "text" ? content.text : ""));
    expect(names).toContain("=HYPERLINK(1)");
  });

  it("says at its head which class it is and when it was marked, and names topics, students and slips in words", () => {
    const { sheets } = markingSheets(students, { grid: "Class", answers: "Answers" }, "2026-06-01");
    const [grid, answers] = sheets.map(({ cells }) =>
      cells.map(({ content }) => (content?.kind === "text" ? content.text : "")),
    );
    expect(grid?.slice(0, 3)).toEqual([
      "Class",
      "Seed 4711 · half day · feet and inches · 12 problems · topics 1 2 3 4 5 6 7 8 9 10 11 12",
      "Marked on 2026-06-01.",
    ]);
    expect(grid).toContain("All topics");
    expect(grid).toContain("Slips: forgot the setback (2 students).");
    expect(answers).toContain("Reading a tape");
    expect(answers).not.toContain("tape");
  });

  it("has room for a long name beside the column of versions", () => {
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
    [[LONG_NAME, LONG_NAME], [`2 students are called "${LONG_NAME}": see whether one handed in twice.`]],
    [["Ann", "Bob", "ann", "Ann"], ['3 students are called "Ann": see whether one handed in twice.']],
  ])("is told which of %j are called alike", (names, sentences) => {
    expect(sameNames(names.map((name) => ({ name })))).toEqual(sentences);
  });
});
