import { LEVELS } from "../../../functions/practice/level";
import { measuringOf, UNITS } from "../../../functions/practice/measuring";
import { randomOf } from "../../../functions/practice/random";
import { PITCH_RUN, toRadians } from "../../../shared/units";
import { readPitchText } from "../../../shared/pitchText";
import { fileCount, practiceFiles } from "../../../src/practice/files/practiceFiles";
import { openXlsx } from "../../../src/xlsx/xlsxFile";
import { drawDayRoof, isFitForDay } from "../../../src/practice/course/dayRoof";
import { SESSIONS } from "../../../src/practice/course/sessions";
import { readStudentFile } from "../../../src/practice/marking/readStudentFile";
import type { ClassOptions } from "../../../src/practice/classOptions";
import { problemsOf, readClassLine } from "../../../src/practice/class/practiceClass";
import { inAreaUnit } from "../../../src/practice/answers";
import type { Answer, Problem } from "../../../src/practice/problem";
import { TOPIC_IDS } from "../../../src/practice/topicTitles";
import { straightAnswer } from "./straightFormulas";

jest.setTimeout(120_000);

it("the day's roof isn't as long as wide, and its area doesn't hinge on rounding", () => {
  const measuring = measuringOf("feet and inches", "half day");
  const setting = { measuring, level: "half day" } as const;
  // 5 in 12, without an overhang: 13 ft of slope for 12 ft of run.
  const sides = { halfWidthIn: 144, buildingWidthIn: 288, rise: 5, overhangIn: 0 };
  const drawn = drawDayRoof(randomOf("1"), setting);
  const fits = (eaveIn: number, buildingLengthIn = eaveIn): boolean =>
    isFitForDay({ ...drawn, ...sides, eaveIn, buildingLengthIn }, setting);
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
  if (!problem) throw new Error(`the day has no problem of ${id}`);
  return problem;
};

const answerTo = (problem: Problem, label: string): string =>
  problem.solution.answers.find(({ field }) => field.label === label)?.shown ?? "";

const given = (problem: Problem, label: string): string =>
  problem.question.givens.find((each) => each.label === label)?.text ?? "";

/** Of an angle such as `26.6°`. */
const riseOf = (angle: string): number => PITCH_RUN * Math.tan(toRadians(parseFloat(angle)));

interface Told {
  readonly label: string;
  readonly text: string;
}

/** What is bought has usual sizes, of which the roof's measures may be one by chance. */
const isBought = ({ label }: Told): boolean => /^(Stock|Roll) /.test(label);

/** The roof's measures on a page: what it gives, line by line, and the words of its figure. */
const toldOn = ({ question: { givens, figure } }: Problem): Told[] => {
  const bought = givens.filter(isBought).map(({ text }) => text);
  const inFigure = (figure?.marks ?? []).flatMap((mark) =>
    mark.kind === "label" && !bought.includes(mark.text) ? [{ label: "figure", text: mark.text }] : [],
  );
  return [...givens.filter((each) => !isBought(each)), ...inFigure];
};

/** Shorter ones, of panels and laps, may be alike by chance. */
const LONG_IN = 8 * 12;

/** Whether what is told is the quantity that is asked for: by its value, and of counts, which are alike by chance, by its name too. */
const givesAway = ({ label, text }: Told, { field, value, shown }: Answer): boolean => {
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
      expect(problems.map(({ topic }) => topic).sort()).toEqual([...TOPIC_IDS].sort());
      expect(problems).toHaveLength(SESSIONS.reduce((sum, { pages }) => sum + pages, 0));
    }
  });

  it("grows one roof: what a session finds the next ones go on with", () => {
    for (const options of EVERY) {
      const problems = courseOf(options);
      const { write, writeSmall } = measuringOf(options.units, options.level);
      const fact = (topic: string, name: string): number => ofTopic(problems, topic).facts[name] ?? NaN;
      const found = (topic: string, label: string): string => answerTo(ofTopic(problems, topic), label);
      const slope = found("rafter", "Length up the slope");
      expect(slope).toBe(found("gables", "Length up the slope"));
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

  it("tells on no page what an earlier one asks for, and names that one's number", () => {
    for (const options of EVERY) {
      const problems = courseOf(options);
      problems.forEach((problem, index) => {
        const told = toldOn(problem);
        for (const earlier of problems.slice(0, index))
          for (const answer of earlier.solution.answers)
            expect({
              told: told.filter((each) => givesAway(each, answer)),
              answer: answer.field.label,
            }).toEqual({ told: [], answer: answer.field.label });
      });
      expect(given(ofTopic(problems, "courses"), "Slope, eave to ridge")).toBe("as found in problem 3");
      expect(given(ofTopic(problems, "order"), "Area on the slope")).toMatch(
        /^as found in problem 4, to a whole (sq ft|m²)$/,
      );
      expect(given(ofTopic(problems, "change order"), "Packs of panels")).toMatch(
        /^before as found in problem 11, after \d+, at \d+\.\d\d$/,
      );
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
