import { CellError, type Cell } from "../../../shared/cell";
import type { SheetInView } from "../../../src/sheets/inView";
import type { Named } from "../../../src/sheets/named";
import { planeInView } from "../../../src/sheets/planeInView";
import { PLANE_HEADINGS } from "../../../src/sheets/takeOff/planes";

const PANEL: Named = new Map([
  [
    "Panel",
    [
      ["exposed width", 24],
      ["exposed height", 12],
    ],
  ],
]);

/** A row of a take-off: name, shape, eave, top, then what leads to the slope that is used. */
const planeRow = (name: string, eave: Cell, slopeUsed: Cell, shape = "rectangle", top: Cell = null): Cell[] => [
  name, shape, eave, top, null, null, null, null, 2, slopeUsed, null, null, null,
]; // prettier-ignore

const takeOff = (selectedRow: number, ...rows: Cell[][]): SheetInView => ({
  sheet: "Take-off",
  selected: { row: selectedRow, column: 0 },
  cells: [["Roof take-off"], [...PLANE_HEADINGS], ...rows, ["All planes"], [], ["South", 20]],
});

describe("the plane in view on a take-off", () => {
  const north = planeRow("North", 30, 20);
  const south = planeRow("South", 40, 15, "triangle");

  it("is that of the selected row", () => {
    expect(planeInView(takeOff(3, north, south), PANEL)).toMatchObject({
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

  it("is the one whose name stands in the selected row of another table, else the first", () => {
    expect(planeInView(takeOff(6, north, south), PANEL).name).toBe("South");
    expect(planeInView(takeOff(0, north, south), PANEL).name).toBe("North");
  });

  it.each([
    [
      "no take-off",
      { sheet: "Bid", selected: { row: 0, column: 0 }, cells: [["a"]] },
      PANEL,
      "Select a plane's row",
    ],
    ["no panel", takeOff(2, north), new Map(), "This workbook has no block named Panel"],
    [
      "a panel without height",
      takeOff(2, north),
      [["exposed width", 24]],
      'panel "exposed height" is missing',
    ],
    [
      "an error in the slope",
      takeOff(2, planeRow("North", 30, new CellError("#VALUE!", "pitch is missing"))),
      PANEL,
      "pitch is missing",
    ],
    ["nothing measured", takeOff(2, planeRow("North", null, null)), PANEL, "eave is missing"],
  ] as const)("says what is lacking: %s", (_, view, panel, sentence) => {
    expect(() => planeInView(view, panel)).toThrow(sentence);
  });
});
