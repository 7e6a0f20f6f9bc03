import { CellError, type Cell } from "../../../../shared/cell";
import type { ActiveSheet } from "../../../../src/workbook/activeSheet";
import type { NamedRanges } from "../../../../src/sheets/activeSheet/namedRanges";
import { activePlane } from "../../../../src/sheets/activeSheet/activePlane";
import { roofFromNames } from "../../../../src/sheets/activeSheet/activeRoof";
import { PLANE_HEADINGS } from "../../../../src/sheets/takeoff/planeSection";

const PANEL: NamedRanges = new Map([
  [
    "Panel",
    [
      ["exposed width", 24],
      ["exposed height", 12],
    ],
  ],
]);

/** A row of a takeoff: name, shape, eave, top, then what leads to the slope that is used. */
const planeRow = (name: string, eave: Cell, slopeUsed: Cell, shape = "rectangle", top: Cell = null): Cell[] => [
  name, shape, eave, top, null, null, null, null, 2, slopeUsed, null, null, null,
]; // prettier-ignore

const takeoff = (selectedRow: number, ...rows: Cell[][]): ActiveSheet => ({
  sheet: "Takeoff",
  selected: { row: selectedRow, column: 0 },
  cells: [["Roof takeoff"], [...PLANE_HEADINGS], ...rows, ["All planes"], [], ["South", 20]],
});

describe("the plane in view on a takeoff", () => {
  const north = planeRow("North", 30, 20);
  const south = planeRow("South", 40, 15, "triangle");

  it("is that of the selected row", () => {
    expect(activePlane(takeoff(3, north, south), PANEL)).toMatchObject({
      name: "South",
      plane: {
        outline: [
          { x: 0, y: 0 },
          { x: 40, y: 0 },
          { x: 20, y: 15 },
        ],
        openings: [],
      },
      start: { side: "left", shiftIn: 0, step: 1 },
    });
  });

  it("is none where an unfilled row is selected, and a hand-measured plane below unfilled rows is found", () => {
    const blank = planeRow("", null, null, "");
    const porch = planeRow("Porch", 12, 8);
    expect(() => activePlane(takeoff(3, north, blank, porch), PANEL)).toThrow("Select a plane's row");
    expect(activePlane(takeoff(4, north, blank, porch), PANEL).name).toBe("Porch");
  });

  it("is the one whose name stands in the selected row of another table, else the first", () => {
    expect(activePlane(takeoff(6, north, south), PANEL).name).toBe("South");
    expect(activePlane(takeoff(0, north, south), PANEL).name).toBe("North");
  });

  it.each<[string, ActiveSheet, NamedRanges, string]>([
    [
      "no takeoff",
      { sheet: "Bid", selected: { row: 0, column: 0 }, cells: [["a"]] },
      PANEL,
      "Select a plane's row",
    ],
    [
      "no panel",
      takeoff(2, north),
      new Map(),
      "This workbook has no panel sheet (name Panel): build a takeoff first.",
    ],
    [
      "a panel without height",
      takeoff(2, north),
      new Map([["Panel", [["exposed width", 24]]]]),
      'panel "exposed height" is missing',
    ],
    [
      "an error in the slope",
      takeoff(2, planeRow("North", 30, new CellError("#VALUE!", "pitch is missing"))),
      PANEL,
      "pitch is missing",
    ],
    ["nothing measured", takeoff(2, planeRow("North", null, null)), PANEL, "eave is missing"],
    [
      "a roof's plane without a roof",
      takeoff(2, planeRow("Plane 1", 30, 20, "from footprint")),
      PANEL,
      "no footprint",
    ],
  ])("says what is lacking: %s", (_, view, panel, sentence) => {
    expect(() => activePlane(view, panel)).toThrow(sentence);
  });
});

describe("a plane and a roof from the footprint", () => {
  const named: NamedRanges = new Map([
    ...PANEL,
    [
      "Footprint",
      [
        [0, 0],
        [40, 0],
        [40, 24],
        [0, 24],
        [null, null],
      ],
    ],
    ["RoofPitch", [[9]]],
    ["OwnPitches", [[null], [null], [null], [null], [null]]],
    ["PitchesUsed", [[9], [9], [9], [9], [""]]],
    ["GableSides", [[""], [""], [""], [""], [""]]],
    ["EaveOverhang", [[null]]],
    ["RakeOverhang", [[null]]],
  ]);

  it("gives the plane its own corners: 12 ft of run at 9 in 12 is 15 ft of slope", () => {
    const { plane } = activePlane(takeoff(2, planeRow("Plane 1", 40, 15, "from footprint")), named);
    expect(plane.outline).toEqual([
      { x: 0, y: 0 },
      { x: 40, y: 0 },
      { x: expect.closeTo(28, 9) as number, y: expect.closeTo(15, 9) as number },
      { x: expect.closeTo(12, 9) as number, y: expect.closeTo(15, 9) as number },
    ]);
  });

  it("gives the roof of the workbook, or says what it lacks", () => {
    expect(roofFromNames(named).planes).toHaveLength(4);
    expect(() => roofFromNames(new Map([...named, ["RoofPitch", [[null]]]]))).toThrow(
      "Type the pitch to see the roof.",
    );
    expect(() => roofFromNames(new Map([...named, ["Footprint", [[null, null]]]]))).toThrow(
      "Type the wall corners",
    );
  });
});
