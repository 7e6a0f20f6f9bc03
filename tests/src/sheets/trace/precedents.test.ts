import type { Cell } from "../../../../shared/cell";
import { a1, areaAddress, readArea } from "../../../../src/workbook/address";
import { labelsOf } from "../../../../src/sheets/trace/cellLabels";
import { measurementsBehind } from "../../../../src/sheets/trace/measurements";
import { referencesOf } from "../../../../src/sheets/trace/references";
import { allPrecedents } from "../../../../src/sheets/trace/precedents";
import type { Contents, SheetContents } from "../../../../src/workbook/contents";

type Typed = string | number | null;

/** A formula with its value after an arrow: `=A1*2 -> 8`. */
const sheetOf = (rows: readonly (readonly Typed[])[]): SheetContents => {
  const split = (cell: Typed): [formula: string, shown: Cell] => {
    if (typeof cell !== "string" || !cell.startsWith("=")) return ["", cell];
    const [formula = "", shown = ""] = cell.split(" -> ");
    return [formula, shown === "" || Number.isNaN(Number(shown)) ? shown : Number(shown)];
  };
  return {
    cells: rows.map((row) => row.map((cell) => split(cell)[1])),
    formulas: rows.map((row) => row.map((cell) => split(cell)[0])),
  };
};

const workbook = (
  sheets: Readonly<Record<string, readonly (readonly Typed[])[]>>,
  targets: Readonly<Record<string, string>> = {},
): Contents => ({
  sheets: new Map(Object.entries(sheets).map(([name, rows]) => [name, sheetOf(rows)])),
  targets: new Map(Object.entries(targets)),
});

const PANEL = [
  ["exposed width", 24],
  ["exposed height", 12],
  ["panel price", 7.35],
];

describe("what a formula refers to", () => {
  const refersTo = (formula: string): string[] => {
    const contents = workbook(
      {
        Bid: [
          [formula, "exposed height"],
          [1, 2],
          [3, 4],
        ],
        "Tom's panel": PANEL,
      },
      { Panel: "'Tom''s panel'!$A$1:$B$3", Width: "'Tom''s panel'!$B$1", Twice: "=Width*2" },
    );
    return referencesOf(contents, "Bid", { row: 0, column: 0 }).map(
      ({ sheet, area }) => `${sheet} ${areaAddress(area)}`,
    );
  };

  it.each([
    ["=A2+$B$3", ["Bid A2", "Bid B3"]],
    ["=SUM(A2:B3)*2", ["Bid A2:B3"]],
    [`='Tom''s panel'!B1&"A9"&Bid!A3`, ["Tom's panel B1", "Bid A3"]],
    ["=Width+panel", ["Tom's panel B1", "Tom's panel A1:B3"]],
    ["=Twice", ["Tom's panel B1"]],
    ["=SUM(A:A)", ["Bid A1:A3"]],
    ["=SUM(2:3)", ["Bid A2:B3"]],
    ["=INDEX(Panel,2,2)", ["Tom's panel B2"]],
    ["=INDEX(Panel,0,2)", ["Tom's panel B1:B3"]],
    ["=INDEX(Panel,A2,2)", ["Tom's panel A1:B3", "Bid A2"]],
    // Functions that lay panels read no prices.
    ["=GABLE.PANELCOUNT((A2:B3),Panel)", ["Bid A2:B3", "Tom's panel A1:B1", "Tom's panel A2:B2"]],
    ["=SUM(Panel)", ["Tom's panel A1:B3"]],
    ["=GABLE.PANELVALUE(Panel,B1)", ["Tom's panel A2:B2", "Bid B1"]],
    ["=Unknown+Gone!A1+LOG10(2)", []],
    ['="B2"', []],
  ])("%s", (formula, expected) => {
    expect(refersTo(formula)).toEqual(expected);
  });
});

describe("all precedents of a cell", () => {
  const contents = workbook({
    Bid: [
      ["=B1*2 -> 8", "=C1+Prices!A1 -> 4", 1],
      ["=A3", null, 5],
      ["=A2", null, 6],
    ],
    Prices: [[3], [4]],
  });
  const from = { sheet: "Bid", row: 0, column: 0 };
  const addresses = (cells: readonly { sheet: string; row: number; column: number }[]): string[] =>
    cells.map((cell) => `${cell.sheet} ${a1(cell)}`).sort();

  it("finds every precedent once, on all sheets", () => {
    expect(addresses(allPrecedents(contents, [from]))).toEqual(["Bid A1", "Bid B1", "Bid C1", "Prices A1"]);
  });

  it("ends where formulas are circular", () => {
    expect(addresses(allPrecedents(contents, [{ sheet: "Bid", row: 1, column: 0 }]))).toEqual([
      "Bid A2",
      "Bid A3",
    ]);
  });

  it("leaves out cells that only a skipped cell leads to", () => {
    const reached = allPrecedents(contents, [from], ({ sheet }) => sheet === "Prices");
    expect(addresses(reached)).toEqual(["Bid A1", "Bid B1", "Bid C1"]);
  });
});

describe("labels of cells", () => {
  const sheet = sheetOf([
    ["Roof takeoff"],
    [null],
    ["1  Roof planes"],
    ["Plane", "Shape", "Eave (ft)", "and pitch"],
    ["B", "rectangle", 40, 6],
    ["Porch", "rectangle", 12, 3],
    ["Porch", "rectangle", 9, 3],
    [null, "rectangle", 7, 3],
    [null],
    ["6  Deck"],
    ["Attic floor to vent (sq ft)", null, 1200, "blank: no vents"],
  ]);
  const labelAt = (address: string) => labelsOf("Takeoff", sheet).at(readArea(address).from);

  it.each([
    ["C5", "Plane B", "Eave", "ft"],
    ["D5", "Plane B", "and pitch", ""],
    ["C6", "Porch", "Eave", "ft"],
    // Rows with the same name are numbered in their order, not by row.
    ["C7", "Porch (2)", "Eave", "ft"],
    ["C8", "row 8", "Eave", "ft"],
    // A title ends the table above it.
    ["C11", "Attic floor to vent (sq ft)", "", "sq ft"],
  ])("%s is %s, %s", (address, row, heading, unit) => {
    expect(labelAt(address)).toEqual({ sheet: "Takeoff", row, heading, unit });
  });

  it("names of rows and headings have no labels", () => {
    expect(labelAt("A5")).toBeUndefined();
    expect(labelAt("C4")).toBeUndefined();
  });

  it("the measurements behind a cell are its precedents and the numbers beside them", () => {
    const contents = workbook({
      Order: [["=Planes!D3 -> 800"]],
      Planes: [
        ["Planes"],
        ["Plane", "Shape", "Eave (ft)", "Area (sq ft)", "Courses", "Note"],
        ["North", "rectangle", "40 ft", "=C3*20 -> 800", "=20 -> 20", "measured twice"],
      ],
    });
    const traced = allPrecedents(contents, [{ sheet: "Order", row: 0, column: 0 }]);
    const measurements = measurementsBehind(contents, traced).map(({ heading, value, kind }) => [
      heading,
      value,
      kind,
    ]);
    expect(measurements).toEqual([
      ["Eave", "40 ft", "input"],
      ["Area", 800, "result"],
      ["Courses", 20, "result"],
    ]);
  });
});
