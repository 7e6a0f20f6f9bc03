import { TRIM_EDGES, TRIM_KINDS, type TrimKind } from "../../../shared/trimKinds";
import { absoluteA1 } from "../../workbook/address";
import { cautionCells } from "../cautionCells";
import {
  number,
  text,
  type CellContent,
  type PlannedCell,
  type PlannedName,
  type SheetPlan,
} from "../../workbook/plan";
import { rowHeightsOf } from "../../workbook/rowHeights";

/** The defined name of the trims table. Takeoffs find the trims by it. */
export const TRIMS_NAME = "Trims";

/** Columns of the table, counted from 0. */
export const TRIMS_SHEET_COLUMNS = {
  label: 0,
  follows: 1,
  stockIn: 2,
  lapIn: 3,
  clippedEdges: 4,
  clipSpacingIn: 5,
  nailedEdges: 6,
  nailSpacingIn: 7,
  girthIn: 8,
  weightLb: 9,
  perPack: 10,
  price: 11,
  note: 12,
} as const;

/** Number of columns in the named range, which excludes the notes. */
export const TRIMS_TABLE_WIDTH = TRIMS_SHEET_COLUMNS.note;

const HEADINGS = [
  "Trim",
  "Follows",
  "Stock (in)",
  "Lap (in)",
  "Clipped edges",
  "Clip spacing (in)",
  "Nailed edges",
  "Nail spacing (in)",
  "Girth, flat (in)",
  "Each (lb), if known",
  "Per pack",
  "Price of a pack",
  "Usual values from",
];

/** Blank rows for the user's own trims. */
const SPARE_ROWS = 3;
export const USUAL_TRIMS: readonly TrimKind[] = Object.values(TRIM_KINDS);
export const TRIM_ROWS = USUAL_TRIMS.length + SPARE_ROWS;

const FIRST_ROW = 4;

/** The maker's and the supplier's figures for one trim. */
export interface TrimFigures {
  /** Flat width, for the weight if that isn't given. */
  readonly girthIn?: number;
  readonly weightLb?: number;
  readonly perPack?: number;
  readonly price?: number;
}

const optionalNumber = (value: number | undefined): CellContent | null =>
  value === undefined ? null : number(value);

const rowCells = (row: number, kind: TrimKind | undefined, figures: TrimFigures): PlannedCell[] => {
  const input = (column: number, content: CellContent | null): PlannedCell => ({
    row,
    column,
    content,
    style: "input",
  });
  return [
    input(TRIMS_SHEET_COLUMNS.label, kind ? text(kind.label) : null),
    { ...input(TRIMS_SHEET_COLUMNS.follows, kind ? text(kind.follows) : null), choices: TRIM_EDGES },
    input(TRIMS_SHEET_COLUMNS.stockIn, optionalNumber(kind?.stockIn)),
    input(TRIMS_SHEET_COLUMNS.lapIn, optionalNumber(kind?.lapIn)),
    input(TRIMS_SHEET_COLUMNS.clippedEdges, optionalNumber(kind?.clippedEdges)),
    input(TRIMS_SHEET_COLUMNS.clipSpacingIn, null),
    input(TRIMS_SHEET_COLUMNS.nailedEdges, optionalNumber(kind?.nailedEdges)),
    input(TRIMS_SHEET_COLUMNS.nailSpacingIn, optionalNumber(kind?.nailSpacingIn)),
    input(TRIMS_SHEET_COLUMNS.girthIn, optionalNumber(figures.girthIn)),
    input(TRIMS_SHEET_COLUMNS.weightLb, optionalNumber(figures.weightLb)),
    input(TRIMS_SHEET_COLUMNS.perPack, optionalNumber(figures.perPack)),
    { ...input(TRIMS_SHEET_COLUMNS.price, optionalNumber(figures.price)), numberFormat: "#,##0.00" },
    { row, column: TRIMS_SHEET_COLUMNS.note, content: kind ? text(kind.source) : null, style: "note" },
  ];
};

/** The Trims sheet: each trim, the edge that it follows, its stock, lap and fasteners. One table for the whole workbook. */
export const trimsSheet = (
  sheetName: string,
  figures: Readonly<Record<string, TrimFigures>>,
): { sheet: SheetPlan; names: readonly PlannedName[] } => {
  const lastRow = FIRST_ROW + TRIM_ROWS - 1;
  const rows = Array.from({ length: TRIM_ROWS }, (_, index) => index);
  const cells: PlannedCell[] = [
    { row: 0, column: 0, content: text("Trims"), style: "title" },
    {
      row: 1,
      column: 0,
      content: text(
        "Each trim covers every run of the edge that it follows. Leave stock, lap or spacing blank to use the panel sheet's value. Plain numbers are inches; or type text such as 10 ft.",
      ),
      style: "note",
    },
    {
      row: 2,
      column: 0,
      content: text(
        "All takeoffs in this workbook use these trims. Clear a name to leave that trim out of the order. Add your own in the blank rows; inserted rows aren't used. These are common values: the maker's guide and the local code govern.",
      ),
      style: "note",
    },
    ...HEADINGS.map((heading, column): PlannedCell => ({
      row: FIRST_ROW - 1,
      column,
      content: text(heading),
      style: "heading",
    })),
    ...rows.flatMap((index) =>
      rowCells(FIRST_ROW + index, USUAL_TRIMS[index], figures[USUAL_TRIMS[index]?.label ?? ""] ?? {}),
    ),
    ...cautionCells(lastRow + 2),
  ];
  const from = absoluteA1({ row: FIRST_ROW, column: TRIMS_SHEET_COLUMNS.label });
  const to = absoluteA1({ row: lastRow, column: TRIMS_SHEET_COLUMNS.price });
  return {
    sheet: {
      name: sheetName,
      frozenRows: FIRST_ROW,
      print: "one page wide, landscape",
      columnWidths: [130, 150, 80, 70, 80, 90, 80, 90, 90, 80, 70, 80, 420],
      rowHeights: rowHeightsOf(cells),
      cells,
    },
    names: [{ name: TRIMS_NAME, sheet: sheetName, range: `${from}:${to}` }],
  };
};
