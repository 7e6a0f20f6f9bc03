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

/** The table's name: takeoffs find the trims by it, and functions that take a range can too. */
export const TRIMS_NAME = "Trims";

/** Columns of the table, counted from 0 inside the name's range. */
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

/** Columns inside the name's range: the notes aren't. */
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

/** Rows for trims of a person's own. */
const SPARE_ROWS = 3;
export const USUAL_TRIMS: readonly TrimKind[] = Object.values(TRIM_KINDS);
export const TRIM_ROWS = USUAL_TRIMS.length + SPARE_ROWS;

const FIRST_ROW = 4;

/** Figures of the maker's and the supplier's for one trim. */
export interface TrimFigures {
  /** Flat width, for its weight where that isn't known. */
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

/** Every kind of trim: what it follows, its stock, lap and fasteners. One table for the whole workbook. */
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
        "A trim takes every run of what it follows. A blank stock, lap or spacing is as the panel sheet says; a bare number is in inches, or type text such as 10 ft.",
      ),
      style: "note",
    },
    {
      row: 2,
      column: 0,
      content: text(
        "Every takeoff here reads these trims; one whose name is cleared isn't ordered. The values are usual ones: the maker's guide and the local code govern. Your own go into the blank rows; an inserted row isn't read.",
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
