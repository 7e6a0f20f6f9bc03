import { LEVELS } from "../../../functions/practice/level";
import { measuringOf, UNITS } from "../../../functions/practice/measuring";
import { randomOf } from "../../../functions/practice/random";
import { PITCH_RUN, toRadians } from "../../../shared/units";
import { readPitchText } from "../../../shared/pitchText";
import { fileCount, practiceFiles } from "../../../src/practice/files/practiceFiles";
import { openXlsx } from "../../../src/xlsx/xlsxFile";
import { drawCourseRoof, isSuitableForCourse } from "../../../src/practice/course/courseRoof";
import { COURSE_SESSIONS } from "../../../src/practice/course/courseSessions";
import { readStudentFile } from "../../../src/practice/marking/readStudentFile";
import type { ClassOptions } from "../../../src/practice/class/classOptions";
import { readClassLine } from "../../../src/practice/class/classLine";
import { problemsOf } from "../../../src/practice/class/practiceClass";
import { inAreaUnit } from "../../../src/practice/answers/area";
import type { Problem } from "../../../src/practice/problems/problem";
import type { Answer } from "../../../src/practice/topic";
import { TOPIC_IDS, type TopicId } from "../../../src/practice/topics/index";
import { secondEngineAnswer } from "./secondEngine";

jest.setTimeout(120_000);

it("the course's roof isn't as long as wide, and its area isn't close to where rounding changes", () => {
  const measuring = measuringOf("feet and inches", "half day");
  const setting = { measuring, level: "half day" } as const;
  // 5 in 12, without an overhang: 13 ft of slope for 12 ft of run.
  const sides = { halfWidthIn: 144, buildingWidthIn: 288, rise: 5, overhangIn: 0 };
  const drawn = drawCourseRoof(randomOf("1"), setting);
  const fits = (eaveIn: number, buildingLengthIn = eaveIn): boolean =>
    isSuitableForCourse({ ...drawn, ...sides, eaveIn, buildingLengthIn }, setting);
  const sqFtPerInch = (2 * 13) / 12;
  expect(fits(240)).toBe(true);
  expect(fits(240, 288)).toBe(false);
  expect(fits(240 + 0.5 / sqFtPerInch)).toBe(false);
  expect(fits(240 + 0.2 / sqFtPerInch)).toBe(false);
  expect(fits(240 + 0.1 / sqFtPerInch)).toBe(true);
});

const EVERY = UNITS.flatMap((units) =>
  LEVELS.flatMap((level) => Array.from({ length: 12 }, (_, seed) => ({ units, level, seed: String(seed) }))),
);

const courseOf = (options: (typeof EVERY)[number]): Problem[] =>
  problemsOf({ ...options, version: 0, set: { kind: "course" } });

const ofTopic = (problems: readonly Problem[], id: string): Problem => {
  const problem = problems.find(({ topic }) => topic === id);
  if (!problem) throw new Error(`the course has no problem of ${id}`);
  return problem;
};

const answerTo = (problem: Problem, label: string): string =>
  problem.solution.answers.find(({ field }) => field.label === label)?.shown ?? "";

const given = (problem: Problem, label: string): string =>
  problem.question.givens.find((each) => each.label === label)?.text ?? "";

/** Of an angle such as `26.6°`. */
const riseOf = (angle: string): number => PITCH_RUN * Math.tan(toRadians(parseFloat(angle)));

interface Shown {
  readonly label: string;
  readonly text: string;
}

/** Materials come in common sizes, and a roof measurement may equal one by chance. */
const isMaterial = ({ label }: Shown): boolean => /^(Stock|Roll) /.test(label);

/** The roof's measurements on a page: its givens, and the text of its figure. */
const shownOn = ({ question: { givens, figure } }: Problem): Shown[] => {
  const materials = givens.filter(isMaterial).map(({ text }) => text);
  const inFigure = (figure?.marks ?? []).flatMap((mark) =>
    mark.kind === "label" && !materials.includes(mark.text) ? [{ label: "figure", text: mark.text }] : [],
  );
  return [...givens.filter((each) => !isMaterial(each)), ...inFigure];
};

/** Shorter lengths, of panels and laps, may be equal by chance. */
const LONG_IN = 8 * 12;

/** Whether a page shows an answer: by its value, and for counts, which may be equal by chance, by its label too. */
const givesAway = ({ label, text }: Shown, { field, value, shown }: Answer): boolean => {
  if (field.kind === "length") return Number(value) > LONG_IN && text.includes(shown);
  if (field.kind === "pitch" || field.kind === "degrees") {
    const rise = /in 12|°/.test(text) ? readPitchText(text) : undefined;
    const asked = field.kind === "pitch" ? Number(value) : riseOf(shown);
    return rise !== undefined && Math.abs(rise - asked) < 0.1;
  }
  if (field.kind === "area")
    return text.endsWith(field.unit) && Math.abs(parseFloat(text) - parseFloat(shown)) <= 1;
  if (field.kind === "count") return label.startsWith(field.label) && new RegExp(`\\b${shown}\\b`).test(text);
  return false;
};

/** Pages already handed out depend on this order: a topic that is added later doesn't join the course. */
const COURSE_TOPICS: readonly TopicId[] = [
  "tape",
  "pitch",
  "rafter",
  "gables",
  "hips",
  "courses",
  "starters",
  "trim",
  "fasteners",
  "underlayment",
  "order",
  "change order",
];

describe("the full-day course", () => {
  it("has eight sessions in order that don't overlap, and always the same topics", () => {
    expect(COURSE_SESSIONS).toHaveLength(8);
    const starts = COURSE_SESSIONS.map(
      (session) => Number(session.starts.slice(0, 2)) * 60 + Number(session.starts.slice(3)),
    );
    COURSE_SESSIONS.forEach(({ minutes }, index) => {
      expect((starts[index] ?? 0) + minutes).toBeLessThanOrEqual(starts[index + 1] ?? Infinity);
    });
    for (const options of EVERY) {
      const problems = courseOf(options);
      expect(problems.map(({ topic }) => topic)).toEqual(COURSE_TOPICS);
      expect(problems).toHaveLength(COURSE_SESSIONS.reduce((sum, { problemCount }) => sum + problemCount, 0));
    }
  });

  it("is on one roof: each session uses what earlier ones found", () => {
    for (const options of EVERY) {
      const problems = courseOf(options);
      const { write, writeSmall } = measuringOf(options.units, options.level);
      const fact = (topic: string, name: string): number => ofTopic(problems, topic).facts[name] ?? NaN;
      const found = (topic: string, label: string): string => answerTo(ofTopic(problems, topic), label);
      const slope = found("rafter", "Slope length");
      expect(slope).toBe(found("gables", "Slope length"));
      expect(slope).toBe(write(fact("courses", "slopeIn")));
      expect(slope).toBe(write(fact("underlayment", "slopeIn")));
      expect(found("courses", "Courses")).toBe(String(fact("starters", "gableCourses")));
      expect(fact("trim", "runIn")).toBe(fact("fasteners", "runIn"));
      expect(found("tape", "Both pieces end to end")).toBe(write(fact("gables", "lengthIn")));
      expect(writeSmall(fact("rafter", "runIn"))).toBe(writeSmall(fact("pitch", "runIn")));
      expect(fact("hips", "rise")).toBe(fact("rafter", "rise"));
      expect(riseOf(found("pitch", "Angle above level"))).toBeCloseTo(fact("gables", "rise"), 0);
      const area = parseFloat(found("gables", "Area of both sides"));
      const toOrder = inAreaUnit(fact("order", "areaSqFt"), measuringOf(options.units, options.level));
      expect(Math.round(area)).toBe(Math.round(toOrder));
      expect(found("order", "Packs")).toBe(String(fact("change order", "packsBefore")));
    }
  });

  it("shows on no page what an earlier one asks for, and names the earlier problem", () => {
    for (const options of EVERY) {
      const problems = courseOf(options);
      problems.forEach((problem, index) => {
        const shown = shownOn(problem);
        for (const earlier of problems.slice(0, index))
          for (const answer of earlier.solution.answers)
            expect({
              shown: shown.filter((each) => givesAway(each, answer)),
              answer: answer.field.label,
            }).toEqual({ shown: [], answer: answer.field.label });
      });
      expect(given(ofTopic(problems, "courses"), "Slope, eave to ridge")).toBe("answer to problem 3");
      expect(given(ofTopic(problems, "order"), "Area on the slope")).toMatch(
        /^answer to problem 4, rounded to a whole (sq ft|m²)$/,
      );
      expect(given(ofTopic(problems, "change order"), "Packs of panels")).toMatch(
        /^before as in problem 11, after \d+, at \d+\.\d\d$/,
      );
    }
  });

  it("has the answers of the second engine", () => {
    for (const options of EVERY)
      for (const { topic, facts, solution } of courseOf(options))
        for (const { field, value } of solution.answers) {
          const expected = secondEngineAnswer(topic, facts, field.label);
          if (typeof value === "string") expect(value).toBe(expected);
          else expect(Math.abs(value - Number(expected))).toBeLessThanOrEqual(1e-7 * Math.max(1, value));
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

  it("are one per version and an answer key that starts with the day's plan", () => {
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
    expect(readStudentFile(openXlsx(files[1]?.bytes as Uint8Array).book, "b").alteredProblems).toEqual([]);
  });

  it.each([
    [["tape"], "tape-day-1"],
    [["change order"], "change-order-day-1"],
    [["tape", "pitch"], "practice-day-1-topics-1-2"],
    [TOPIC_IDS, "practice-day-1"],
  ] as const)("have other names for topics %j: %s", (topics, title) => {
    const set = { kind: "topics", topics, problems: 1 } as const;
    const files = practiceFiles({ ...options, set, versions: 1 });
    expect([...files].map(({ name }) => name)).toEqual([`${title}-A.xlsx`, `${title}-key.xlsx`]);
  });

  it("are byte for byte the same for the same options", () => {
    const [first, again] = [[...practiceFiles(options)], [...practiceFiles(options)]];
    first.forEach(({ bytes }, index) => {
      expect(Buffer.compare(bytes, again[index]?.bytes ?? new Uint8Array())).toBe(0);
    });
  });

  it("are refused before the first one if the options are wrong", () => {
    expect(() => practiceFiles({ ...options, seed: "" }).next()).toThrow("The seed must be 1 to 20 letters");
  });
});
