import { LEVELS } from "../../../functions/practice/level";
import { UNITS } from "../../../functions/practice/measuring";
import { localCatalog } from "../../../src/hosts/local/formulas/catalog";
import { createHeadlessEngine } from "../../../src/hosts/local/workbook/headless";
import { planBook } from "../../../src/xlsx/planBook";
import { openXlsx, saveXlsx } from "../../../src/xlsx/xlsxFile";
import type { VersionOptions } from "../../../src/practice/class/classOptions";
import { problemsOf } from "../../../src/practice/class/practiceClass";
import type { Problem } from "../../../src/practice/problems/problem";
import { TOPICS, TOPIC_IDS } from "../../../src/practice/topics/index";
import { answerKeySheet } from "../../../src/practice/sheets/answerKeySheet";
import { sheetsOf, studentSheets } from "../../../src/practice/sheets/studentSheets";
import { convert, describeWithLibreOffice } from "../../support/libreOffice";

jest.setTimeout(120_000);

const versionOf = (more: Partial<VersionOptions> = {}): VersionOptions => ({
  seed: "4711",
  version: 0,
  level: "full roof",
  units: "feet and inches",
  set: { kind: "topics", topics: TOPIC_IDS, problems: TOPIC_IDS.length },
  ...more,
});

const EVERY = UNITS.flatMap((units) => LEVELS.map((level) => versionOf({ units, level })));

const studentFile = (problems: readonly Problem[], version: VersionOptions): Uint8Array =>
  saveXlsx(
    undefined,
    planBook(
      sheetsOf(
        studentSheets(
          problems.map(({ question }) => question),
          version,
        ),
      ),
    ),
  );

const keyFile = (problems: readonly Problem[], version: VersionOptions): Uint8Array =>
  saveXlsx(undefined, planBook([answerKeySheet(problems, version)]));

/** Every part of a file as text. */
const partsOf = (file: Uint8Array): ReadonlyMap<string, string> =>
  new Map([...openXlsx(file).parts].map(([path, bytes]) => [path, new TextDecoder().decode(bytes)]));

const textsOf = (xml: string): string[] =>
  [...xml.matchAll(/<(?:a:)?t(?: [^>]*)?>([^<]*)</g)].map(([, text = ""]) =>
    text.replaceAll("&quot;", '"').replaceAll("&apos;", "'"),
  );

const drawingOf = (parts: ReadonlyMap<string, string>, sheet: number): string[] => {
  const relations = parts.get(`xl/worksheets/_rels/sheet${sheet}.xml.rels`) ?? "";
  return [...relations.matchAll(/Target="\/(xl\/drawings\/[^"]*)"/g)].map(([, path = ""]) => path);
};

/** `5"` isn't in `15"`. */
const holds = (text: string, answer: string): boolean => {
  const at = text.indexOf(answer);
  return at >= 0 && !/[\d./]/.test(text.charAt(at - 1)) && !/[\d./]/.test(text.charAt(at + answer.length));
};

describe("a student's file", () => {
  it("is byte for byte the same with other answers, mistakes and steps", () => {
    for (const version of EVERY) {
      const problems = problemsOf(version);
      const others = problems.map((problem) => ({
        ...problem,
        solution: {
          steps: [],
          answers: problem.solution.answers.map((answer) => ({
            ...answer,
            value: 1,
            shown: "1",
            tolerance: 9,
            why: "",
            mistakes: [],
          })),
        },
      }));
      expect(Buffer.compare(studentFile(others, version), studentFile(problems, version))).toBe(0);
    }
  });

  it("holds no formula, name, hidden sheet, row or column, comment or property", () => {
    for (const version of EVERY) {
      const parts = partsOf(studentFile(problemsOf(version), version));
      const known =
        /^(?:\[Content_Types\]\.xml|_rels\/\.rels|xl\/(?:workbook|styles)\.xml|xl\/_rels\/workbook\.xml\.rels|xl\/worksheets\/(?:_rels\/)?sheet\d+\.xml(?:\.rels)?|xl\/drawings\/drawing\d+\.xml)$/;
      expect([...parts.keys()].filter((path) => !known.test(path))).toEqual([]);
      const whole = [...parts.values()].join("");
      expect(whole).not.toMatch(/<f[ >]|definedName|hidden|veryHidden|<comment|extLst|customXml/);
      // The formula that checks typed cells, and the lists of choices that are printed beside.
      const rules = [...whole.matchAll(/<formula1>(.*?)<\/formula1>/g)].map(([, rule = ""]) => rule);
      for (const rule of rules)
        expect(rule).toMatch(
          /^(?:SUMPRODUCT\(--ISNUMBER\(FIND\(ROW\(\$1:\$10\)-1,B\d+\)\)\)&gt;0|&quot;steep,low slope&quot;)$/,
        );
    }
  });

  it("shows no answer in cell or drawing, unless it is also given as a measurement", () => {
    let checked = 0;
    for (const version of EVERY) {
      const problems = problemsOf(version);
      const parts = partsOf(studentFile(problems, version));
      problems.forEach(({ question, solution }, index) => {
        const given = [question.text, ...question.givens.map(({ text }) => text)].join(" ");
        const own = [`xl/worksheets/sheet${index + 2}.xml`, ...drawingOf(parts, index + 2)];
        const texts = own.flatMap((path) => textsOf(parts.get(path) ?? ""));
        for (const { shown, field } of solution.answers) {
          // A count may also be a page or course number, and all choices are printed; the first test covers these.
          if (field.kind === "count" || field.kind === "word" || given.includes(shown)) continue;
          checked++;
          expect(texts.filter((text) => holds(text, shown))).toEqual([]);
        }
      });
    }
    expect(checked).toBeGreaterThan(100);
  });

  it("gives every problem its own page, with cell rules that accept tape text", () => {
    const version = versionOf();
    const { parts, book } = openXlsx(studentFile(problemsOf(version), version));
    expect(book.sheets.map(({ name }) => name)).toEqual([
      "Start",
      ...TOPICS.map(({ title }, index) => `${index + 1} ${title}`),
    ]);
    for (let sheet = 1; sheet <= 1 + TOPIC_IDS.length; sheet++) {
      const xml = new TextDecoder().decode(parts.get(`xl/worksheets/sheet${sheet}.xml`));
      expect(xml).toContain('<pageSetup orientation="portrait" fitToWidth="1" fitToHeight="1"/>');
    }
    const rafter = new TextDecoder().decode(parts.get("xl/worksheets/sheet4.xml"));
    expect(rafter).toContain('prompt="Write feet, inches and sixteenths."');
    expect(rafter).toContain('errorStyle="warning"');
  });

  it.each(EVERY)("shows all its drawings when opened: $units, $level", (version) => {
    const problems = problemsOf(version);
    const { book, notShown } = openXlsx(studentFile(problems, version));
    const drawn = problems.flatMap(({ question }) => question.figure?.description ?? []);
    expect(drawn.length).toBeGreaterThan(8);
    const shown = book.sheets.flatMap(({ filePictures = [] }) => filePictures);
    expect(shown.map(({ description }) => description)).toEqual(drawn);
    expect(notShown.join()).not.toContain("drawings");
  });

  it.each([
    ["feet and inches", "18' 6 1/2\"", "6 in 12"],
    ["metric", "5650, or ", "26.6°"],
  ] as const)("explains first how to write measurements in its own units: %s", (units, length, slope) => {
    const version = versionOf({ units });
    const [start] = openXlsx(studentFile(problemsOf(version), version)).book.sheets;
    const words = [...(start?.cells.values() ?? [])].map((row) => String(row.get(0)?.value ?? "")).join(" ");
    const [, first = ""] = /such as (.{10})/.exec(words) ?? [];
    expect(first.startsWith(length)).toBe(true);
    expect(words).toContain(slope);
    expect(words.includes("' 6 1/2")).toBe(units !== "metric");
  });

  it("prints the seed on every sheet", () => {
    const version = versionOf({ seed: "monday" });
    const problems = problemsOf(version);
    for (const file of [studentFile(problems, version), keyFile(problems, version)])
      for (const sheet of openXlsx(file).book.sheets)
        expect(sheet.cells.get(1)?.get(0)?.value).toMatch(/^Seed monday · version A · /);
  });
});

describe("the answer key", () => {
  it("shows every answer, its tolerance and every common mistake", () => {
    const version = versionOf();
    const problems = problemsOf(version);
    const { book } = openXlsx(keyFile(problems, version));
    const texts = [...(book.sheets[0]?.cells.values() ?? [])].flatMap((row) =>
      [...row.values()].map(({ value }) => String(value)),
    );
    const whole = texts.join(" ");
    expect(whole).toContain("Where Gablewright isn't loaded, the formulas show #NAME?");
    for (const { solution } of problems)
      for (const { shown, why, mistakes } of solution.answers) {
        expect(texts).toContain(shown);
        expect(texts).toContain(why);
        for (const mistake of mistakes) expect(whole).toContain(`${mistake.name}: ${mistake.shown}`);
      }
  });

  it("has formulas that give the results in the file", async () => {
    const version = versionOf();
    const { book } = openXlsx(keyFile(problemsOf(version), version));
    const engine = createHeadlessEngine(localCatalog, book);
    await engine.calculated();
    const [sheet] = book.sheets;
    let formulas = 0;
    for (const [row, cells] of sheet?.cells ?? [])
      for (const [column, { formula, value }] of cells) {
        if (formula === undefined) continue;
        formulas++;
        const now = engine.getCell({ sheet: sheet?.name ?? "", row, column });
        if (typeof value === "number") expect(Number(now)).toBeCloseTo(value, 6);
        else expect(now).toBe(value);
      }
    expect(formulas).toBeGreaterThan(25);
    engine.dispose();
  });
});

describeWithLibreOffice("on paper", () => {
  it.each(UNITS)("each problem takes one page: %s", async (units) => {
    const version = versionOf({ units });
    const pdf = (await convert(studentFile(problemsOf(version), version), "xlsx", "pdf")).toString("latin1");
    expect([...pdf.matchAll(/\/Type\s*\/Page[^s]/g)]).toHaveLength(1 + TOPIC_IDS.length);
  });
});
