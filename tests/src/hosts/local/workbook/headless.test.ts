import { CellError } from "../../../../../shared/cell";
import { createHeadlessEngine, type HeadlessEngine } from "../../../../../src/hosts/local/workbook/headless";
import { fakeCatalog } from "../fakeCatalog";
import { planOf } from "../planOf";

let engine: HeadlessEngine;
afterEach(() => {
  engine.dispose();
});

const value = (v: unknown) => ({ kind: "value", value: v });
const error = (code: string, message: string) => ({ kind: "error", code, message });
const at = (row: number, column: number, sheet = "Bid") => ({ sheet, row, column });

describe("a formula in no cell", () => {
  beforeEach(() => {
    engine = createHeadlessEngine(fakeCatalog);
  });

  test.each([
    ["=GABLE.DOUBLE(4)", value(8)],
    ["GABLE.DOUBLE(4)", value(8)],
    ["=gable.double(4)", value(8)],
    ["=GABLE.DOUBLE(4,1)", value(9)],
    ["=GABLE.DOUBLE(4,)", value(8)],
    ["=GABLE.DOUBLE(GABLE.DOUBLE(4))+1", value(17)],
    ["=GABLE.DOUBLE(A1)", value("")],
    ["=1+1", value(2)],
    ["=LET(x,4,GABLE.DOUBLE(x))", value(8)],
    ["=1=1", value(true)],
    ["=GABLE.DOUBLE(-1)", error("#VALUE!", "value must be 0 or more, got -1")],
    ["=GABLE.NOSTOCK()", error("#N/A", "no stock is long enough")],
    ["=GABLE.DOUBLE(GABLE.NOSTOCK())", error("#N/A", "no stock is long enough")],
    ["=ROUND(1+GABLE.DOUBLE(GABLE.NOSTOCK()),1)", error("#N/A", "no stock is long enough")],
    ["=GABLE.DOUBLE()", error("#VALUE!", "value must be a number, got omitted")],
    ["=IFERROR(GABLE.NOSTOCK(),7)", value(7)],
    ["=1/0", error("#DIV/0!", "")],
    ["=NOPE(1)", error("#NAME?", "")],
    ["=GABLE.NOPE(1)", error("#NAME?", "")],
  ])("%s", async (formula, expected) => {
    expect(await engine.evaluate(formula)).toEqual(expected);
  });

  test.each(["", "=", "=GABLE.COURSES(20,", "=)(", "=(1", '="a', "=1+"])(
    "%s isn't a formula",
    async (formula) => {
      expect(await engine.evaluate(formula)).toEqual({ kind: "unparsable" });
    },
  );

  test("a table, with an error inside; a blank in a result is an empty text", async () => {
    expect(await engine.evaluate("=GABLE.COURSES(3)")).toEqual({
      kind: "table",
      table: [
        [1, "course 1", ""],
        [2, new CellError("#N/A", "row 2 has no answer"), ""],
        [3, "course 3", ""],
      ],
    });
  });

  test("a table in a native function keeps its error messages", async () => {
    expect(await engine.evaluate("=INDEX(GABLE.COURSES(3),2,2)")).toEqual(
      error("#N/A", "row 2 has no answer"),
    );
    expect(await engine.evaluate("=SUM(INDEX(GABLE.COURSES(3),0,1))")).toEqual(value(6));
  });

  test("a thousand formulas take a few seconds at most", async () => {
    const start = performance.now();
    for (let i = 0; i < 1000; i += 1) {
      expect(await engine.evaluate(`=GABLE.DOUBLE(${i})+SUM(INDEX(GABLE.COURSES(3),0,1))`)).toEqual(
        value(2 * i + 6),
      );
    }
    expect(performance.now() - start).toBeLessThan(5000);
  });
});

describe("a workbook", () => {
  beforeEach(async () => {
    engine = createHeadlessEngine(
      fakeCatalog,
      planOf({
        sheets: [
          {
            name: "Bid",
            cells: [
              { row: 0, column: 0, content: 4 },
              { row: 0, column: 1, content: "=GABLE.DOUBLE(A1)*Price" },
              { row: 1, column: 1, content: "=GABLE.DOUBLE(B1)+'Price list'!A1" },
              { row: 2, column: 1, content: "=GABLE.COURSES(A1)" },
              { row: 0, column: 5, content: "6:12" },
              { row: 1, column: 5, content: "=GABLE.SHOW(F1,F9,F1:F2)" },
              { row: 0, column: 6, content: "=GABLE.DOUBLE(B4:C4)" },
            ],
          },
          { name: "Price list", cells: [{ row: 0, column: 0, content: 10 }] },
        ],
        names: [{ name: "Price", sheet: "Price list", range: "$A$1" }],
      }),
    );
    await engine.calculated();
  });

  test("calculates across sheets, names and spills", () => {
    expect(engine.getCell(at(0, 1))).toBe(80);
    expect(engine.getCell(at(1, 1))).toBe(170);
    expect(engine.getCell(at(3, 2))).toEqual(new CellError("#N/A", "row 2 has no answer"));
    expect(engine.getCell(at(5, 2))).toBe("course 4");
    expect(engine.getCell(at(1, 5))).toContain("string 6:12 | blank | [string 6:12;");
  });

  test("after each of two hundred edits the results are current", async () => {
    for (let i = 1; i <= 200; i += 1) {
      engine.setCell(at(0, 0), i % 7);
      await engine.calculated();
      expect(engine.getCell(at(0, 1))).toBe((i % 7) * 20);
      expect(engine.getCell(at(1, 1))).toBe((i % 7) * 40 + 10);
    }
  });

  test("several edits on several sheets at once", async () => {
    engine.setCell(at(0, 0), 1);
    engine.setCell(at(0, 0, "Price list"), 3);
    engine.setCell(at(10, 0), "=A1+100");
    await engine.calculated();
    expect(engine.getCell(at(0, 1))).toBe(6);
    expect(engine.getCell(at(10, 0))).toBe(101);
  });

  test("two calls at once both wait", async () => {
    engine.setCell(at(0, 0), 2);
    const first = engine.calculated();
    engine.setCell(at(0, 0), 3);
    const second = engine.calculated();
    await Promise.all([first, second]);
    expect(engine.getCell(at(0, 1))).toBe(60);
  });

  test("an error has its message, and leaves no trace when it is fixed", async () => {
    engine.setCell(at(0, 0), -1);
    await engine.calculated();
    expect(engine.getCell(at(0, 1))).toEqual(new CellError("#VALUE!", "value must be 0 or more, got -1"));
    expect(engine.getCell(at(1, 1))).toEqual(new CellError("#VALUE!", "value must be 0 or more, got -1"));
    engine.setCell(at(0, 0), 1);
    await engine.calculated();
    expect(engine.getCell(at(0, 1))).toBe(20);
    engine.setCell(at(0, 1), "#VALUE!");
    await engine.calculated();
    expect(engine.getCell(at(0, 1))).toEqual(new CellError("#VALUE!", ""));
  });

  test("a spill grows, shrinks, is blocked and comes back", async () => {
    engine.setCell(at(0, 0), 2);
    await engine.calculated();
    expect(engine.getCell(at(5, 2))).toBeNull();
    engine.setCell(at(3, 1), "in the way");
    await engine.calculated();
    expect(engine.getCell(at(2, 1))).toEqual(new CellError("#SPILL!", ""));
    engine.setCell(at(3, 1), null);
    await engine.calculated();
    expect(engine.getCell(at(2, 1))).toBe(1);
    expect(engine.getCell(at(3, 1))).toBe(2);
  });

  test("a formula turns into text and back", async () => {
    engine.setCell(at(0, 1), "gone");
    await engine.calculated();
    expect(engine.getCell(at(0, 1))).toBe("gone");
    engine.setCell(at(0, 1), "=GABLE.DOUBLE(1)");
    await engine.calculated();
    expect(engine.getCell(at(0, 1))).toBe(2);
  });

  test("a formula in no cell can read the workbook", async () => {
    expect(await engine.evaluate("=A1+Price")).toEqual(value(14));
  });

  test("an unparsable formula and an unknown function in a cell", async () => {
    engine.setCell(at(12, 0), "=)(");
    engine.setCell(at(13, 0), "=NOPE(1)");
    await engine.calculated();
    expect(engine.getCell(at(12, 0))).toBeInstanceOf(CellError);
    expect(engine.getCell(at(13, 0))).toEqual(new CellError("#NAME?", ""));
  });
});

test("a formula that is deleted and entered again causes no errors in the engine", async () => {
  const complain = jest.spyOn(console, "error").mockImplementation(() => undefined);
  const cells = [
    { row: 0, column: 0, content: "=D1+1" },
    { row: 0, column: 3, content: 1 },
  ];
  engine = createHeadlessEngine(fakeCatalog, planOf({ sheets: [{ name: "Bid", cells }], names: [] }));
  for (const [column, content] of [
    [1, "=SEQUENCE(A1)"],
    [3, 2],
    [1, null],
    [3, 3],
    [1, "=A1+D1"],
    [3, 4],
  ] as const) {
    engine.setCell(at(0, column), content);
    await engine.calculated();
  }
  expect(engine.getCell(at(0, 1))).toBe(9);
  expect(complain).not.toHaveBeenCalled();
  complain.mockRestore();
});
