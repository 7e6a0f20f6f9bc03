import { blockInWords, readBlock } from "../../../../src/sheets/extend/block";
import { readArea } from "../../../../src/workbook/address";
import { surveyOf } from "../../../support/surveyOf";

const sum = (range: string) => ({ formula: `=SUM(${range})`, shows: 1 });

const BID = [
  ["Bid for the mill", null, null],
  [null, null, null],
  [null, "Plane", "Eave (ft)", "Slope (ft)"],
  [null, "North", 30, 14],
  [null, "South", 30, 14],
  [null, null, null, null],
  ["foot", null, null, null],
];

describe("a block in words", () => {
  it("says where it is and how many rows of data it has, the totals apart", () => {
    expect(blockInWords(readBlock(surveyOf(BID, "C4")))).toBe('B3:D5 on "Bid": 2 rows below the headings');
    const rows = [
      ["Plane", "Eave"],
      ["North", 30],
      ["Total", sum("B2:B2")],
    ];
    expect(blockInWords(readBlock(surveyOf(rows, "A1")))).toBe(
      'A1:B3 on "Bid": 1 row below the headings, and a row of totals',
    );
  });
});

describe("reading a block", () => {
  it("finds the block around one cell", () => {
    expect(readBlock(surveyOf(BID, "C4"))).toMatchObject({
      headingRow: 2,
      firstRow: 3,
      lastRow: 4,
      firstColumn: 1,
      lastColumn: 3,
      headings: ["Plane", "Eave (ft)", "Slope (ft)"],
    });
  });

  it("takes a selection as it is, without blank rows and columns at its edges", () => {
    expect(readBlock(surveyOf(BID, "B2:F6"))).toMatchObject({ headingRow: 2, lastRow: 4, lastColumn: 3 });
    expect(readBlock(surveyOf(BID, "C3:D4"))).toMatchObject({ firstColumn: 2, lastRow: 3 });
  });

  it("ends a selection of whole columns where the sheet's cells end", () => {
    const rows = [
      ["Plane", "Eave"],
      ["North", 30],
    ];
    expect(readBlock(surveyOf(rows, "A1:B1001"))).toMatchObject({ lastRow: 1, lastColumn: 1 });
  });

  it("passes over a title that touches the headings", () => {
    const rows = [["Roof of the mill"], ["Plane", "Eave", "Slope"], ["North", 30, 14]];
    expect(readBlock(surveyOf(rows, "B3"))).toMatchObject({ headingRow: 1, firstRow: 2 });
  });

  it("keeps blank rows inside a selection as rows to be filled", () => {
    const rows = [
      ["Plane", "Eave"],
      ["North", 30],
      [null, null],
      ["South", 20],
    ];
    expect(readBlock(surveyOf(rows, "A1:B4"))).toMatchObject({ firstRow: 1, lastRow: 3 });
  });

  it("takes a table of the spreadsheet's for its whole extent", () => {
    const table = { name: "Planes", area: readArea("B3:D5"), hasHeadings: true, hasTotals: false };
    expect(readBlock(surveyOf(BID, "C5", { table }))).toMatchObject({ headingRow: 2, lastRow: 4, table });
  });

  it("takes a table's own row of totals for one, and refuses a table without headings", () => {
    const table = { name: "Planes", area: readArea("B3:D5"), hasHeadings: true, hasTotals: true };
    expect(readBlock(surveyOf(BID, "C5", { table }))).toMatchObject({
      lastRow: 3,
      total: { row: 4, call: "SUBTOTAL(109," },
    });
    expect(() => readBlock(surveyOf(BID, "C5", { table: { ...table, hasHeadings: false } }))).toThrow(
      "The table Planes shows no headings",
    );
  });

  describe("a row of totals", () => {
    const withTotal = (...total: Parameters<typeof surveyOf>[0][number]) =>
      readBlock(surveyOf([["Plane", "Eave"], ["North", 30], ["South", 20], total], "A1"));

    it.each([
      [["Total", 50], "SUM("],
      [["Grand total", null], "SUM("],
      [["All planes", 50], "SUM("],
      [["", sum("B2:B3")], "SUM("],
      [["", { formula: "=SUBTOTAL(109,B2:B3)", shows: 50 }], "SUBTOTAL(109,"],
      [["", { formula: "=SUBTOTAL(109,[Eave])", shows: 50 }], "SUBTOTAL(109,"],
    ] as const)("is %j", (row, call) => {
      expect(withTotal(...row)).toMatchObject({ lastRow: 2, total: { row: 3, call } });
    });

    it.each([[["West", 20]], [["x Total", 20]], [["West", { formula: "=SUM(C4:E4)", shows: 3 }]]] as const)(
      "is not %j",
      (row) => {
        expect(withTotal(...row)).toMatchObject({ lastRow: 3 });
        expect(withTotal(...row).total).toBeUndefined();
      },
    );

    it("is not a running total", () => {
      const rows = [
        ["Plane", "Eave", "So far"],
        ["N", 1, sum("B$2:B2")],
        ["S", 2, sum("B$2:B3")],
        ["W", 3, sum("B$2:B4")],
      ];
      expect(readBlock(surveyOf(rows)).total).toBeUndefined();
    });
  });

  describe("refusals", () => {
    const plain = [
      ["Plane", "Eave"],
      ["North", 30],
      ["South", 20],
    ];

    it.each([
      ["nothing", surveyOf([], "A1"), "Select a table or a block with a heading row. There is nothing here."],
      [
        "numbers alone",
        surveyOf([
          [1, 2],
          [3, 4],
        ]),
        "A1:B2 has no row of headings",
      ],
      [
        "headings alone",
        surveyOf([["Plane", "Eave"]]),
        "A1:B1 has no row of headings with rows of data below it",
      ],
      [
        "headings and totals",
        surveyOf([
          ["Plane", "Eave"],
          ["Total", 1],
        ]),
        "There are no rows of data here",
      ],
      ["a protected sheet", surveyOf(plain, "A1", { isProtected: true }), '"Bid" is protected'],
      ["a filter", surveyOf(plain, "A1", { isFiltered: true }), 'A filter hides rows of "Bid"'],
      ["merged cells", surveyOf(plain, "A1", { merged: [readArea("A2:A3")] }), "A2:A3 is merged"],
      [
        "a subtotal",
        surveyOf([
          ["Plane", "Eave"],
          ["N", 1],
          ["Subtotal", 1],
          ["S", 2],
          ["Total", 3],
        ]),
        "Row 3 looks like a subtotal",
      ],
    ])("says what is wrong with %s", (_, survey, sentence) => {
      expect(() => readBlock(survey)).toThrow(sentence);
    });

    it("leaves merged cells elsewhere alone", () => {
      expect(readBlock(surveyOf(plain, "A1", { merged: [readArea("F1:G1")] })).lastRow).toBe(2);
    });
  });
});
