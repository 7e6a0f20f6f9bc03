import ExcelJS from "exceljs";
import { LEVELS } from "../../functions/practice/level";
import { UNITS } from "../../functions/practice/measuring";
import { planBook } from "../../src/xlsx/planBook";
import { openXlsx, saveXlsx } from "../../src/xlsx/xlsxFile";
import { parseXml } from "../../src/xlsx/xml/xml";
import type { Figure, Mark } from "../../src/pictures/figure";
import type { PicturePoint } from "../../src/pictures/picturePoint";
import { figureSvg } from "../../src/pictures/figureSvg";
import { PAPER_PALETTE } from "../../src/pictures/palette";
import { problemsOf } from "../../src/practice/class/practiceClass";
import { TOPIC_IDS } from "../../src/practice/topics/index";
import { a1 } from "../../src/workbook/address";
import type { PrintableSheet } from "../../src/workbook/printableSheet";
import { sheetsOf, studentSheets } from "../../src/practice/sheets/studentSheets";

const versionOf = (units: (typeof UNITS)[number], level: (typeof LEVELS)[number], seed: number) => ({
  seed: String(seed),
  version: 0,
  units,
  level,
  set: { kind: "topics", topics: TOPIC_IDS, problems: TOPIC_IDS.length } as const,
});

const FIGURES: readonly (readonly [topic: string, Figure])[] = UNITS.flatMap((units) =>
  LEVELS.flatMap((level) =>
    Array.from({ length: 15 }, (_, seed) => problemsOf(versionOf(units, level, seed))).flatMap((problems) =>
      problems.flatMap(({ topic, question: { figure } }) => (figure ? [[topic, figure] as const] : [])),
    ),
  ),
);

/** The approximate width of a letter, at the size of the figures' text. */
const LETTER_PX = 6;

const pointsOf = (mark: Mark): readonly PicturePoint[] => {
  switch (mark.kind) {
    case "dimension":
      return [mark.from, mark.to];
    case "label": {
      const { at, text, align } = mark;
      const width = text.length * LETTER_PX;
      const left = align === "start" ? at.x : at.x - width / 2;
      return [
        { x: left, y: at.y - 6 },
        { x: left + width, y: at.y + 6 },
      ];
    }
    default:
      return mark.points;
  }
};

describe("the pictures of practice problems", () => {
  it("stay within the figure", () => {
    for (const [topic, { width, height, marks }] of FIGURES)
      for (const mark of marks)
        for (const { x, y } of pointsOf(mark))
          if (!(x >= 0 && x <= width && y >= 0 && y <= height))
            throw new Error(`${topic}: ${JSON.stringify(mark)} leaves ${width} by ${height}`);
  });

  it("draw a slope to scale", () => {
    const rafters = UNITS.flatMap((units) => problemsOf(versionOf(units, "full roof", 3))).filter(
      ({ topic }) => topic === "rafter",
    );
    expect(rafters).toHaveLength(2);
    for (const { facts, question } of rafters) {
      const [slope] = (question.figure?.marks ?? []).filter((mark) => mark.kind === "line");
      const [eave, ridge] = slope?.kind === "line" ? slope.points : [];
      const drawn = ((eave?.y ?? 0) - (ridge?.y ?? 0)) / ((ridge?.x ?? 0) - (eave?.x ?? 0));
      expect(drawn).toBeCloseTo((facts["rise"] ?? NaN) / 12, 6);
    }
  });

  it("have as many labels, lines and faces in the SVG as in the workbook file", () => {
    for (const [, figure] of FIGURES.slice(0, 40)) {
      const svg = figureSvg(figure, { title: "T", id: "t", palette: PAPER_PALETTE });
      expect(parseXml(new TextEncoder().encode(svg), "picture").root.name).toBe("svg");
      const sheet: PrintableSheet = {
        name: "P",
        cells: [],
        columnWidths: [],
        rowHeights: {},
        frozenRows: 0,
        inputPrompts: [],
        drawing: { at: { row: 0, column: 0 }, figure },
      };
      const { parts } = openXlsx(saveXlsx(undefined, planBook([sheet])));
      const drawing = new TextDecoder().decode(parts.get("xl/drawings/drawing1.xml"));
      const count = (text: string, what: RegExp): number => [...text.matchAll(what)].length;
      // The SVG has a title on top.
      expect(count(svg, /<text/g) - 1).toBe(count(drawing, /<a:t>/g));
      expect(count(svg, /<line/g)).toBe(count(drawing, /prst="line"/g));
      expect(count(svg, /<polygon/g)).toBe(count(drawing, /<a:custGeom>/g));
    }
  });

  it("accept any text: markup characters stay text", () => {
    const odd: Figure = {
      width: 100,
      height: 50,
      description: '<&">',
      marks: [{ kind: "label", at: { x: 50, y: 20 }, text: "</a:t><script>&", align: "middle" }],
    };
    expect(figureSvg(odd, { title: "<b>", id: "t", palette: PAPER_PALETTE })).not.toContain("<script>");
    const sheet: PrintableSheet = {
      name: "P", cells: [], columnWidths: [], rowHeights: {}, frozenRows: 0, inputPrompts: [],
      drawing: { at: { row: 0, column: 0 }, figure: odd },
    }; // prettier-ignore
    const { parts } = openXlsx(saveXlsx(undefined, planBook([sheet])));
    const drawing = parseXml(parts.get("xl/drawings/drawing1.xml") ?? new Uint8Array(), "drawing");
    expect(drawing.source).not.toContain("<script>");
  });
});

it("another program reads a student's file, with the prompt of each answer cell", async () => {
  const version = versionOf("feet and inches", "half day", 1);
  const questions = problemsOf(version).map(({ question }) => question);
  const sheets = studentSheets(questions, version);
  const bytes = Buffer.from(saveXlsx(undefined, planBook(sheetsOf(sheets))));
  const workbook = new ExcelJS.Workbook();
  await workbook.xlsx.load(
    bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength) as ArrayBuffer,
  );
  expect(workbook.worksheets).toHaveLength(1 + TOPIC_IDS.length);
  const pitch = workbook.getWorksheet("2 Pitch");
  const cells = (sheets.problems[1]?.answerPlaces ?? []).map((place) => pitch?.getCell(a1(place)));
  const answers = cells.map((cell) => cell?.dataValidation);
  expect(answers.map((rule) => rule?.type)).toEqual(["custom", "custom", "list"]);
  expect(answers[0]?.prompt).toBe("Write rise in 12.");
  expect(answers[2]?.formulae).toEqual(['"steep,low slope"']);
  expect(cells.map((cell) => cell?.numFmt)).toEqual(["@", "@", "@"]);
});
