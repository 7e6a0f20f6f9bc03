import { areaAddress } from "../../../../src/workbook/address";
import { readBlock } from "../../../../src/sheets/extend/block";
import { singleResultOptions, resultOptions } from "../../../../src/sheets/extend/resultOptions";
import {
  guessBlock,
  mappedColumns,
  notesFor,
  placementOf,
} from "../../../../src/sheets/extend/mappedColumns";
import { PANEL_NAME, PANEL_VALUE_NAMES } from "../../../../src/sheets/panelSheet";
import { patchArea, type CellPatch } from "../../../../src/workbook/patch";
import { oneCellPlan, smallBlockPlan } from "../../../../src/sheets/extend/singleResultPlan";
import { optionById } from "../../../../src/sheets/extend/resultOptions";
import { extended } from "../../../support/extended";
import { surveyOf } from "../../../support/surveyOf";

const PANEL_NAMES = [PANEL_NAME, ...PANEL_VALUE_NAMES];

const BID = [
  ["Plane", "Eave (ft)", "Slope length in", "Pitch"],
  ["North", 30, 168, 6],
  ["South", 30, 168, 6],
  ["Total", 60, null, null],
];

/** The contents of a patch, row by row. */
const contents = ({ cells }: CellPatch): unknown[][] =>
  cells.map((line) =>
    line.map((cell) => {
      if (!cell) return null;
      const { content } = cell;
      return content.kind === "text"
        ? content.text
        : content.kind === "number"
          ? content.number
          : content.formula;
    }),
  );

describe("columns beside a block", () => {
  it("have a heading, a formula in every row, and a total where the block has one", () => {
    const patch = extended(surveyOf(BID, "A1", { names: PANEL_NAMES }), ["COURSES", "SQUARES", "PITCHANGLE"]);
    expect(areaAddress(patchArea(patch))).toBe("E1:G4");
    const inches = (row: number) => `IF(LEN(C${row})=0,"",IF(ISNUMBER(C${row}),C${row}/12,C${row}))`;
    const row = (row: number) => [
      `=IF(LEN(C${row})=0,"",GABLE.COURSES(${inches(row)},ExposedHeight))`,
      `=IF(AND(LEN(B${row})=0,LEN(C${row})=0),"",GABLE.SQUARES(GABLE.OUTLINEAREA(GABLE.OUTLINE("rectangle",B${row},${inches(row)}))))`,
      `=IF(LEN(D${row})=0,"",GABLE.PITCHANGLE(D${row}))`,
    ];
    expect(contents(patch)).toEqual([
      ["Courses", "Squares", "Pitch (degrees)"],
      row(2),
      row(3),
      ["=SUM(E2:E3)", "=SUM(F2:F3)", null],
    ]);
    expect(patch.cells[1]?.map((cell) => cell?.numberFormat)).toEqual(["#,##0", "#,##0.00", "0.00"]);
    expect(patch.copyFormatsFrom).toEqual({ column: 3 });
  });

  it("look like the last column of numbers, or like the last one where there is none", () => {
    const formatsOf = (...columns: (string | number)[][]): CellPatch["copyFormatsFrom"] =>
      extended(surveyOf([["Eave (ft)", "Slope (ft)", "Notes"], ...columns]), ["SQUARES"]).copyFormatsFrom;
    expect(formatsOf([30, 14, "by hand"], [20, 12, "look again"])).toEqual({ column: 1 });
    expect(formatsOf(["30 ft", "14 ft", "by hand"])).toEqual({ column: 2 });
  });

  it("take what the workbook has no name for as it was typed, in its unit", () => {
    const patch = extended(surveyOf(BID), ["COURSES"], { exposedHeightIn: "1 ft" });
    expect(contents(patch)[1]?.[0]).toContain(",12))");
  });

  it.each([
    ["", "exposure is missing: it takes a length in inches"],
    ["12,5", 'got "12,5"'],
    ['12),HYPERLINK("x"', "exposure takes a length in inches"],
  ])("refuse a typed exposure of %j with a sentence", (typed, sentence) => {
    expect(() => extended(surveyOf(BID), ["COURSES"], { exposedHeightIn: typed })).toThrow(sentence);
  });

  it("quote typed words, so that none can go on as a formula", () => {
    const patch = extended(surveyOf(BID, "A1", { names: PANEL_NAMES }), ["PANELCOUNT"], { start: "right" });
    expect(contents(patch)[1]?.[0]).toContain(',Panel,,"right"))');
    expect(() =>
      extended(surveyOf(BID, "A1", { names: PANEL_NAMES }), ["PANELCOUNT"], { start: 'left")&A1&("' }),
    ).toThrow("start takes");
  });

  it("count a typed overhang in every result that comes from run and pitch", () => {
    const rows = [
      ["Run (ft)", "Pitch", "Eave (ft)", "Exposure (in)"],
      [12, 6, 30, 12],
    ];
    const results = ["RAFTERLENGTH", "COURSES", "OUTLINEAREA", "SQUARES"];
    const written = contents(extended(surveyOf(rows), results, { overhangFt: "16 in" }))[1];
    expect(written).toHaveLength(results.length);
    for (const formula of written ?? []) expect(formula).toContain('GABLE.RAFTERLENGTH(A2,B2,"16 in")');
    expect(() => extended(surveyOf(rows), ["COURSES"], { overhangFt: "a bit" })).toThrow("overhang takes");
    expect(contents(extended(surveyOf(rows), ["COURSES"]))[1]?.[0]).toContain("GABLE.RAFTERLENGTH(A2,B2)");
  });

  it("pass on what a column gives to optional values, and what is between them is left out", () => {
    const rows = [
      ["Run (ft)", "Pitch", "Overhang (in)"],
      [12, 6, 18],
    ];
    expect(contents(extended(surveyOf(rows), ["RAFTERLENGTH"]))[1]).toEqual([
      '=IF(AND(LEN(A2)=0,LEN(B2)=0,LEN(C2)=0),"",GABLE.RAFTERLENGTH(A2,B2,IF(LEN(C2)=0,"",IF(ISNUMBER(C2),C2/12,C2))))',
    ]);
  });

  it("write totals as the block writes them", () => {
    const rows = [
      ["Plane", "Eave"],
      ["North", 30],
      ["South", 30],
      ["Total", { formula: "=SUBTOTAL(109,B2:B3)", shows: 60 }],
    ];
    expect(contents(extended(surveyOf(rows), ["TRIMFEET"])).at(-1)).toEqual(["=SUBTOTAL(109,C2:C3)"]);
  });

  it("are headed once each, whatever the block has already", () => {
    const rows = [
      ["Eave (ft)", "Squares of trim", "Trim (ft)"],
      [30, 1, null],
    ];
    expect(contents(extended(surveyOf(rows), ["TRIMFEET"]))[0]).toEqual(["Trim (ft) 2"]);
  });

  it("grow a table of the spreadsheet's", () => {
    const table = {
      name: "Planes",
      hasHeadings: true,
      hasTotals: false,
      area: { from: { row: 0, column: 0 }, to: { row: 2, column: 3 } },
    };
    const patch = extended(surveyOf(BID.slice(0, 3), "A1", { table }), ["PITCHANGLE"]);
    expect(patch.table).toEqual(table);
  });
});

describe("what is offered", () => {
  const ids = (rows: Parameters<typeof surveyOf>[0], names: string[] = []) => {
    const block = readBlock(surveyOf(rows));
    return resultOptions({ columns: mappedColumns(block, guessBlock(block)), names, typed: {} }).map(
      ({ spec }) => spec.id,
    );
  };

  it("follows from the columns: a slope's length gives courses, run and pitch give it too", () => {
    expect(
      ids([
        ["Slope length", "x"],
        [14, ""],
      ]),
    ).toContain("COURSES");
    expect(
      ids([
        ["Run", "Pitch"],
        [12, 6],
      ]),
    ).toContain("COURSES");
    expect(
      ids([
        ["Item", "Top"],
        ["a", 6],
      ]),
    ).not.toContain("COURSES");
    expect(
      ids([
        ["Qty", "Per pack"],
        [12, 6],
      ]),
    ).toContain("PACKS");
  });

  it("leaves out what would need another column", () => {
    const offered = ids([
      ["Pitch", "Notes"],
      [6, ""],
    ]);
    expect(offered).toContain("PITCHANGLE");
    expect(offered).not.toContain("RAFTERLENGTH");
  });

  it("counts panels where the workbook has a panel sheet", () => {
    const rows = [
      ["Eave", "Slope length"],
      [30, 14],
    ];
    expect(ids(rows)).not.toContain("PANELCOUNT");
    expect(ids(rows, PANEL_NAMES)).toContain("PANELCOUNT");
  });

  it("is nothing where no column means anything", () => {
    expect(
      ids([
        ["Item", "Notes"],
        ["a", "b"],
      ]),
    ).toEqual([]);
  });
});

describe("room to write", () => {
  const patchFor = (survey: ReturnType<typeof surveyOf>) => extended(survey, ["PITCHANGLE", "RAFTERFACTOR"]);
  const withNote = BID.map((row, index) => [...row, null, index === 2 ? "call first" : null]);

  it("is beside the block where nothing stands there", () => {
    const survey = surveyOf(BID);
    expect(placementOf(survey, patchFor(survey))).toEqual({ area: patchArea(patchFor(survey)) });
  });

  it("says what is in the way, and offers the next column where it fits", () => {
    const survey = surveyOf(withNote, "A1:D4");
    expect(placementOf(survey, patchFor(survey))).toMatchObject({
      obstacle: 'F3 holds "call first"',
      freeColumn: 6,
    });
  });

  it("counts a formula that shows nothing, and white space", () => {
    const rows = BID.map((row, index) => [
      ...row,
      index === 1 ? { formula: '=""', shows: "" } : index === 2 ? " " : null,
    ]);
    const survey = surveyOf(rows, "A1:D4");
    expect(placementOf(survey, patchFor(survey)).obstacle).toBe('E2 holds "=""", E3 holds " "');
  });

  it("goes round merged cells, and ends where the sheet does", () => {
    const merged = [{ from: { row: 2, column: 4 }, to: { row: 2, column: 5 } }];
    const survey = surveyOf(BID, "A1", { merged });
    expect(placementOf(survey, patchFor(survey))).toMatchObject({
      obstacle: "E3:F3 is merged",
      freeColumn: 6,
    });
    const narrow = surveyOf(BID, "A1", { end: { row: 100, column: 4 } });
    expect(placementOf(narrow, patchFor(narrow))).toMatchObject({
      obstacle: "E1:F4 goes past the sheet's end",
    });
    expect(placementOf(narrow, patchFor(narrow)).freeColumn).toBeUndefined();
  });
});

describe("notes before anything is written", () => {
  it("tell of hidden rows, and of numbers kept as text", () => {
    const rows = [
      ["Eave (ft)", "Slope (in)"],
      [30, "168"],
      [30, 168],
    ];
    const survey = surveyOf(rows, "A1", { hiddenRows: [2, 9] });
    const block = readBlock(survey);
    expect(notesFor(survey, block, mappedColumns(block, guessBlock(block)))).toEqual([
      "1 row of the block is hidden and will be filled too.",
      '"Slope (in)" holds 168 as text: it will be read in feet, not in inches.',
    ]);
  });
});

describe("results that stand alone", () => {
  const at = { row: 4, column: 2 };
  const courses = (names: readonly string[] = []) => optionById(singleResultOptions(names), "COURSES");

  it("go into one cell with what was typed", () => {
    const typed = { slopeLengthFt: "18' 6\"", exposedHeightIn: "12" };
    expect(contents(oneCellPlan("Bid", at, courses(), { names: [], typed }))).toEqual([
      ["=GABLE.COURSES(18.5,12)"],
    ]);
    expect(() => oneCellPlan("Bid", at, courses(), { names: [], typed: {} })).toThrow(
      "slope length is missing",
    );
  });

  it("or into a small block, whose typed values are cells and never formulas", () => {
    const typed = { slopeLengthFt: "18' 6\"" };
    const patch = smallBlockPlan(
      "Bid",
      at,
      { option: courses(PANEL_NAMES), heading: "=1+1" },
      { names: PANEL_NAMES, typed },
    );
    expect(contents(patch).slice(0, 3)).toEqual([
      ["slope length (feet)", "=1+1"],
      ["18' 6\"", '=IF(LEN(C6)=0,"",GABLE.COURSES(C6,ExposedHeight))'],
      [null, '=IF(LEN(C7)=0,"",GABLE.COURSES(C7,ExposedHeight))'],
    ]);
    expect(patch.cells[0]?.[1]?.content.kind).toBe("text");
  });
});
