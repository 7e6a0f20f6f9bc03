import { LEVELS } from "../../../functions/practice/level";
import { UNITS } from "../../../functions/practice/measuring";
import { fileCount, practiceFiles } from "../../../src/hosts/xlsx/practiceFiles";
import { openXlsx } from "../../../src/hosts/xlsx/xlsxFile";
import { SESSIONS } from "../../../src/practice/course/sessions";
import { readStudentFile } from "../../../src/practice/marking/readStudentFile";
import type { ClassOptions } from "../../../src/practice/classOptions";
import { problemsOf, readClassLine } from "../../../src/practice/practiceClass";
import type { Problem } from "../../../src/practice/problem";
import { TOPIC_IDS } from "../../../src/practice/topicTitles";
import { straightAnswer } from "./straightFormulas";

jest.setTimeout(120_000);

const EVERY = UNITS.flatMap((units) =>
  LEVELS.flatMap((level) => Array.from({ length: 12 }, (_, seed) => ({ units, level, seed: String(seed) }))),
);

const courseOf = (options: (typeof EVERY)[number]): Problem[] =>
  problemsOf({ ...options, version: 0, set: { kind: "course" } });

const ofTopic = (problems: readonly Problem[], id: string): Problem => {
  const problem = problems.find(({ topic }) => topic === id);
  if (!problem) throw new Error(`the day has no problem of ${id}`);
  return problem;
};

const answerTo = (problem: Problem, label: string): string =>
  problem.solution.answers.find(({ field }) => field.label === label)?.shown ?? "";

const given = (problem: Problem, label: string): string =>
  problem.question.givens.find((each) => each.label === label)?.text ?? "";

describe("the day's course", () => {
  it("has eight sessions in order that don't overlap, and a problem of each topic", () => {
    expect(SESSIONS).toHaveLength(8);
    const starts = SESSIONS.map(
      (session) => Number(session.starts.slice(0, 2)) * 60 + Number(session.starts.slice(3)),
    );
    SESSIONS.forEach(({ minutes }, index) => {
      expect((starts[index] ?? 0) + minutes).toBeLessThanOrEqual(starts[index + 1] ?? Infinity);
    });
    for (const options of EVERY) {
      const problems = courseOf(options);
      expect(problems.map(({ topic }) => topic).sort()).toEqual(TOPIC_IDS.sort());
      expect(problems).toHaveLength(SESSIONS.reduce((sum, { pages }) => sum + pages, 0));
    }
  });

  it("grows one roof: what a session finds is given in the next", () => {
    for (const options of EVERY) {
      const problems = courseOf(options);
      const [rafter, gables, courses, starters, trim, underlayment] = [
        "rafter", "gables", "courses", "starters", "trim", "underlayment",
      ].map((id) => ofTopic(problems, id)) as [Problem, Problem, Problem, Problem, Problem, Problem]; // prettier-ignore
      const slope = answerTo(rafter, "Length up the slope");
      expect(slope).toBe(answerTo(gables, "Length up the slope"));
      expect(given(courses, "Slope, eave to ridge")).toBe(slope);
      expect(given(underlayment, "Slope, eave to ridge")).toBe(slope);
      expect(given(starters, "Courses up the gable")).toBe(answerTo(courses, "Courses"));
      expect(given(trim, "Run")).toBe(given(ofTopic(problems, "fasteners"), "Run"));
      expect(answerTo(ofTopic(problems, "tape"), "Both pieces end to end")).toBe(
        given(gables, "Building, along the ridge"),
      );
      const packs = answerTo(ofTopic(problems, "order"), "Packs");
      expect(given(ofTopic(problems, "change order"), "Packs of panels")).toContain(
        `before ${packs}, after `,
      );
      expect(given(ofTopic(problems, "hips"), "Pitch of both slopes")).toBe(given(rafter, "Pitch"));
    }
  });

  it("has each answer as straight formulas give it", () => {
    for (const options of EVERY)
      for (const { topic, facts, solution } of courseOf(options))
        for (const { field, value } of solution.answers) {
          const straight = straightAnswer(topic, facts, field.label);
          if (typeof value === "string") expect(value).toBe(straight);
          else expect(Math.abs(value - Number(straight))).toBeLessThanOrEqual(1e-7 * Math.max(1, value));
        }
  });
});

describe("a class's files", () => {
  const options: ClassOptions = {
    seed: "day-1",
    level: "half day",
    units: "feet and inches",
    set: { kind: "course" },
    versions: 2,
  };

  it("are one for each version and a key, with the plan of the day in front of it", () => {
    const files = [...practiceFiles(options)];
    expect(files.map(({ name }) => name)).toEqual([
      "course-day-1-A.xlsx",
      "course-day-1-B.xlsx",
      "course-day-1-key.xlsx",
    ]);
    expect(files).toHaveLength(fileCount(options));
    const sheets = files.map(({ bytes }) => openXlsx(bytes).book.sheets.map(({ name }) => name));
    expect(sheets[2]).toEqual(["Plan", "Key A", "Key B"]);
    const line = String(
      openXlsx(files[1]?.bytes as Uint8Array)
        .book.sheets[3]?.cells.get(1)
        ?.get(0)?.value,
    );
    expect(line).toBe("Seed day-1 · version B · half day · feet and inches · full-day course");
    expect(readClassLine(line)).toEqual({
      seed: "day-1",
      level: "half day",
      units: "feet and inches",
      set: { kind: "course" },
      version: 1,
    });
    expect(readStudentFile(openXlsx(files[1]?.bytes as Uint8Array).book, "b").altered).toEqual([]);
  });

  it.each([
    [["tape"], "tape-day-1"],
    [["change order"], "change-order-day-1"],
    [["tape", "pitch"], "practice-day-1-topics-1-2"],
    [TOPIC_IDS, "practice-day-1"],
  ] as const)("of problems by topic are called otherwise, by topics %j: %s", (topics, title) => {
    const set = { kind: "topics", topics, problems: 1 } as const;
    const files = practiceFiles({ ...options, set, versions: 1 });
    expect([...files].map(({ name }) => name)).toEqual([`${title}-A.xlsx`, `${title}-key.xlsx`]);
  });

  it("come out the same, byte for byte, from the same options", () => {
    const [first, again] = [[...practiceFiles(options)], [...practiceFiles(options)]];
    first.forEach(({ bytes }, index) => {
      expect(Buffer.compare(bytes, again[index]?.bytes ?? new Uint8Array())).toBe(0);
    });
  });

  it("are refused before the first, where the options can't be right", () => {
    expect(() => practiceFiles({ ...options, seed: "" }).next()).toThrow("The seed takes 1 to 20 letters");
  });
});
