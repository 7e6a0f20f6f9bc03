import { roofEdgesSpec } from "../../../functions/roof/roofEdges";
import { roofPlanesSpec } from "../../../functions/roof/roofPlanes";
import type { TableColumn } from "../../../shared/spec/spec";
import { a1, a1Range, absoluteA1, type CellAddress } from "../../workbook/address";
import { call, isEmpty, unlessEmpty } from "../../workbook/formula";
import { PANEL_NAME, panelFieldName } from "../panelSheet";
import {
  formula,
  text,
  value,
  type PlannedCell,
  type PlannedName,
  type SheetPlan,
} from "../../workbook/plan";
import { rowHeightsOf } from "../../workbook/rowHeights";
import { cautionCells } from "../cautionCells";
import {
  CHECK_ROW,
  FIRST_SIDE_ROW,
  INPUT_COLUMN,
  layOutRoof,
  ROOF_INPUTS,
  ROWS_BELOW,
  SIDE_COLUMNS,
  SIDE_HEADINGS,
  type RoofLayout,
} from "./roofSheetLayout";
import { ROOF_ARGUMENTS, ROOF_NAMES } from "./roofSheetNames";
import type { RoofInput } from "./roofSheetOptions";

const COLUMN_WIDTHS = [130, 78, 78, 66, 70, 70, 70, 24, 60, 96, 70, 76, 96, 106, 76, 106, 76];

const inputCells = (roof: RoofInput): PlannedCell[] =>
  (Object.keys(ROOF_INPUTS) as (keyof typeof ROOF_INPUTS)[]).flatMap((key): PlannedCell[] => {
    const { label, row } = ROOF_INPUTS[key];
    const typed = roof[key];
    return [
      { row, column: 0, content: text(label), style: "label" },
      { row, column: INPUT_COLUMN, content: typed === undefined ? null : value(typed), style: "input" },
    ];
  });

const commonPitch = absoluteA1({ row: ROOF_INPUTS.pitch.row, column: INPUT_COLUMN });

const firstX = absoluteA1({ row: FIRST_SIDE_ROW, column: SIDE_COLUMNS.x });

const sideRow = (roof: RoofInput, side: number): PlannedCell[] => {
  const row = FIRST_SIDE_ROW + side - 1;
  const at = (column: keyof typeof SIDE_COLUMNS): string => a1({ row, column: SIDE_COLUMNS[column] });
  const corner = roof.corners[side - 1];
  const input = (
    column: keyof typeof SIDE_COLUMNS,
    typed: string | number | undefined,
    choices?: string[],
  ): PlannedCell => ({
    row,
    column: SIDE_COLUMNS[column],
    content: typed === undefined ? null : value(typed),
    style: "input",
    ...(choices && { choices }),
  });
  return [
    // The count continues after the blank row before a courtyard, as the functions count sides.
    {
      row,
      column: SIDE_COLUMNS.side,
      content: formula(unlessEmpty(at("x"), `COUNTA(${firstX}:${at("x")})`)),
      style: "label",
    },
    input("x", corner?.[0]),
    input("y", corner?.[1]),
    input("gable", roof.gables.includes(side) ? "yes" : undefined, ["yes"]),
    input("ownPitch", undefined),
    {
      row,
      column: SIDE_COLUMNS.pitchUsed,
      content: formula(
        unlessEmpty(at("x"), `IF(${isEmpty(at("ownPitch"))},${commonPitch},${at("ownPitch")})`),
      ),
      style: "result",
    },
    {
      row,
      column: SIDE_COLUMNS.gableSide,
      content: formula(unlessEmpty(at("gable"), at("side"))),
      style: "result",
    },
  ];
};

const tableHead = (
  { row, column }: CellAddress,
  title: string,
  columns: readonly TableColumn[] | undefined,
): PlannedCell[] => [
  { row: row - 2, column, content: text(title), style: "section" },
  ...(columns ?? []).map(({ heading }, index): PlannedCell => ({
    row: row - 1,
    column: column + index,
    content: text(heading),
    style: "heading",
  })),
];

/** Cells with number formats for a table to spill into. */
const spillCells = (
  { row, column }: CellAddress,
  rows: number,
  columns: readonly TableColumn[] | undefined,
  content: string,
): PlannedCell[] =>
  Array.from({ length: rows }, (_, down) =>
    (columns ?? []).map(({ result }, across): PlannedCell => ({
      row: row + down,
      column: column + across,
      content: down === 0 && across === 0 ? formula(content) : null,
      numberFormat: result.numberFormat,
    })),
  ).flat();

/** The table of planes; with courses once the panel sheet is filled in. */
const planesWithCourses = ((): string => {
  const [width, height] = [panelFieldName("exposedWidthIn"), panelFieldName("exposedHeightIn")];
  const table = (panel: string): string => call(roofPlanesSpec, ...ROOF_ARGUMENTS, panel, "FALSE");
  return `IF(OR(${isEmpty(width)},${isEmpty(height)}),${table("")},${table(PANEL_NAME)})`;
})();

/** Warns of corners below the rows that are read. */
const checkCell = ({ sides }: RoofLayout): PlannedCell => {
  const from = { row: FIRST_SIDE_ROW + sides, column: SIDE_COLUMNS.x };
  const below = a1Range(from, { row: from.row + ROWS_BELOW - 1, column: SIDE_COLUMNS.y });
  const sentence = `"Corners below row ${from.row} are not read: insert rows above it, or build a larger roof sheet."`;
  return {
    row: CHECK_ROW,
    column: 0,
    content: formula(`=IF(COUNTA(${below})=0,"",${sentence})`),
    style: "caution",
  };
};

const tables = ({ planes, edges, sides, edgeRows }: RoofLayout): PlannedCell[] => {
  const unlessNoFootprint = (spilled: string): string =>
    `=IF(COUNTA(${ROOF_NAMES.footprint})=0,"",${spilled})`;
  return [
    ...tableHead(planes, "Planes", roofPlanesSpec.columns),
    ...spillCells(planes, sides, roofPlanesSpec.columns, unlessNoFootprint(planesWithCourses)),
    ...tableHead(edges, "Edges", roofEdgesSpec.columns),
    ...spillCells(
      edges,
      edgeRows,
      roofEdgesSpec.columns,
      unlessNoFootprint(call(roofEdgesSpec, ...ROOF_ARGUMENTS, "FALSE")),
    ),
  ];
};

const namesOn = (sheet: string, layout: RoofLayout): PlannedName[] => {
  const input = (key: keyof typeof ROOF_INPUTS): string =>
    absoluteA1({ row: ROOF_INPUTS[key].row, column: INPUT_COLUMN });
  const sides = (from: keyof typeof SIDE_COLUMNS, to: keyof typeof SIDE_COLUMNS = from): string => {
    const last = FIRST_SIDE_ROW + layout.sides - 1;
    return `${absoluteA1({ row: FIRST_SIDE_ROW, column: SIDE_COLUMNS[from] })}:${absoluteA1({ row: last, column: SIDE_COLUMNS[to] })}`;
  };
  return [
    { name: ROOF_NAMES.footprint, sheet, range: sides("x", "y") },
    { name: ROOF_NAMES.pitch, sheet, range: input("pitch") },
    { name: ROOF_NAMES.ownPitches, sheet, range: sides("ownPitch") },
    { name: ROOF_NAMES.pitchesUsed, sheet, range: sides("pitchUsed") },
    { name: ROOF_NAMES.gables, sheet, range: sides("gableSide") },
    { name: ROOF_NAMES.eaveOverhang, sheet, range: input("eaveOverhang") },
    { name: ROOF_NAMES.rakeOverhang, sheet, range: input("rakeOverhang") },
  ];
};

/** The Roof sheet, in front of a takeoff: from wall corners and a pitch to every plane and edge. */
export const roofSheet = (sheetName: string, roof: RoofInput): { sheet: SheetPlan; names: PlannedName[] } => {
  const layout = layOutRoof(roof);
  const cells: PlannedCell[] = [
    { row: 0, column: 0, content: text("Roof"), style: "title" },
    {
      row: 1,
      column: 0,
      content: text(
        "Type the wall corners in order around the building. Side 1 goes from corner 1 to corner 2. For a courtyard, leave a blank row, then type its corners. The planes feed the takeoff.",
      ),
      style: "note",
    },
    ...inputCells(roof),
    checkCell(layout),
    { row: FIRST_SIDE_ROW - 2, column: 0, content: text("Footprint"), style: "section" },
    ...SIDE_HEADINGS.map((heading, column): PlannedCell => ({
      row: FIRST_SIDE_ROW - 1,
      column,
      content: text(heading),
      style: "heading",
    })),
    ...Array.from({ length: layout.sides }, (_, index) => sideRow(roof, index + 1)).flat(),
    ...tables(layout),
    ...cautionCells(layout.foot),
  ];
  return {
    names: namesOn(sheetName, layout),
    sheet: {
      name: sheetName,
      print: "one page wide, landscape",
      columnWidths: COLUMN_WIDTHS,
      rowHeights: rowHeightsOf(cells),
      frozenRows: 1,
      cells,
    },
  };
};
