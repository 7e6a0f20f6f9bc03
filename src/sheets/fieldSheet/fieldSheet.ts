import { endPiecesSpec } from "../../../functions/layout/endPieces";
import { layoutSpec } from "../../../functions/layout/layout";
import { outlineSpec } from "../../../functions/layout/outline";
import { panelCountSpec } from "../../../functions/layout/panelCount";
import { DEFAULT_START } from "../../../shared/layoutStart";
import { a1, a1Range } from "../../workbook/address";
import { call } from "../../workbook/formula";
import { PANEL_NAME } from "../panelSheet";
import { formula, text, type CellContent, type PlannedCell, type SheetPlan } from "../../workbook/plan";
import { rowHeightsOf } from "../../workbook/rowHeights";
import { cautionCells } from "../cautionCells";
import {
  CAPTION,
  CORNERS,
  END_PIECES_COLUMN,
  INPUT_LABELS,
  INPUT_ROWS,
  LABEL_COLUMN,
  OPENINGS,
  PICTURE,
  PICTURE_ROW_PX,
  TABLES_ROW,
  VALUE_COLUMN,
  type InputKey,
} from "./fieldSheetLayout";

export interface FieldSheetOptions {
  readonly sheetName: string;
  /** The plane's measurements: formulas that refer to a takeoff, or typed values. Others are left blank to fill in. */
  readonly inputs: Partial<Record<InputKey, CellContent>>;
  /** A formula, without "=", for the corners of a plane from the footprint; undefined: the measurements give them. */
  readonly outlineOf?: string;
  /** Number of courses to leave rows for. */
  readonly courses: number;
}

/** The columns of LAYOUT that the crew needs, by heading. */
const CHALK_COLUMNS = [
  "course",
  "line (tape)",
  "starter blank (tape)",
  "whole",
  "cut",
  "from off-cuts",
  "closing piece (tape)",
  "warnings",
];

/** Rows besides two end pieces per course: heading, total, and a longer slope. */
const SPARE_ROWS = 14;
const FEWEST_ROWS = 30;
const COLUMN_WIDTHS = [110, 100, 110, 62, 62, 92, 110, 92, 30, 70, 80, 100, 90, 60, 150];

const inputCell = (key: InputKey): string => a1({ row: INPUT_ROWS[key], column: VALUE_COLUMN });

const typedCorners = a1Range(CORNERS.from, CORNERS.to);

/** The typed corners; if none, those from the measurements. */
const corners = (outlineOf: string | undefined): string => {
  const measurements = (["shape", "eave", "slopeLength", "top", "lean"] as const).map(inputCell);
  return `IF(COUNTA(${typedCorners})=0,${outlineOf ?? call(outlineSpec, ...measurements)},${typedCorners})`;
};

const planeArguments = (outlineOf: string | undefined): readonly string[] => [
  corners(outlineOf),
  PANEL_NAME,
  a1Range(OPENINGS.from, OPENINGS.to),
];

const inputCells = (inputs: FieldSheetOptions["inputs"]): PlannedCell[] =>
  (Object.keys(INPUT_ROWS) as InputKey[]).flatMap((key) => [
    { row: INPUT_ROWS[key], column: LABEL_COLUMN, content: text(INPUT_LABELS[key]), style: "label" },
    {
      row: INPUT_ROWS[key],
      column: VALUE_COLUMN,
      content: inputs[key] ?? (key === "start" ? text(DEFAULT_START) : null),
      style: "input",
    },
  ]);

/** A block of two columns to type corners into. */
const cornerBlock = (title: string, { from, to }: typeof OPENINGS): PlannedCell[] => {
  const rows = Array.from({ length: to.row - from.row + 1 }, (_, index) => from.row + index);
  return [
    { row: from.row - 2, column: from.column, content: text(title), style: "section" },
    { row: from.row - 1, column: from.column, content: text("x (ft)"), style: "label" },
    { row: from.row - 1, column: to.column, content: text("y (ft)"), style: "label" },
    ...rows.flatMap((row) =>
      [from.column, to.column].map((column): PlannedCell => ({ row, column, content: null, style: "input" })),
    ),
  ];
};

/** The list of end pieces, with number formats as far down as it may spill. */
const endPieceCells = (list: string, rows: number): PlannedCell[] =>
  Array.from({ length: rows }, (_, down) =>
    (endPiecesSpec.columns ?? []).map(({ result }, across): PlannedCell => ({
      row: TABLES_ROW + 1 + down,
      column: END_PIECES_COLUMN + across,
      content: down === 0 && across === 0 ? formula(`=${list}`) : null,
      numberFormat: result.numberFormat,
    })),
  ).flat();

const tableCells = (planeArgs: readonly string[], rows: number): PlannedCell[] => {
  const start = inputCell("start");
  const laid = call(layoutSpec, ...planeArgs, start, "TRUE", "TRUE", "FALSE");
  const headings = layoutSpec.columns?.map(({ heading }) => heading) ?? [];
  return [
    { row: TABLES_ROW - 1, column: 0, content: text("Chalk lines, tape from the eave"), style: "section" },
    ...CHALK_COLUMNS.map((heading, column): PlannedCell => ({
      row: TABLES_ROW,
      column,
      content: text(heading),
      style: "heading",
    })),
    ...CHALK_COLUMNS.map((heading, column): PlannedCell => ({
      row: TABLES_ROW + 1,
      column,
      content: formula(`=INDEX(${laid},0,${headings.indexOf(heading) + 1})`),
      style: "label",
    })),
    {
      row: TABLES_ROW - 1,
      column: END_PIECES_COLUMN,
      content: text("Cut and bend on the ground"),
      style: "section",
    },
    ...(endPiecesSpec.columns ?? []).map(({ heading }, index): PlannedCell => ({
      row: TABLES_ROW,
      column: END_PIECES_COLUMN + index,
      content: text(heading),
      style: "heading",
    })),
    ...endPieceCells(call(endPiecesSpec, ...planeArgs, start, "FALSE"), rows),
  ];
};

const panelsToOpen = (planeArgs: readonly string[]): PlannedCell[] => {
  const row = INPUT_ROWS.start + 1;
  const count = call(panelCountSpec, ...planeArgs, inputCell("start"));
  return [
    { row, column: LABEL_COLUMN, content: text("Panels to open"), style: "total" },
    { row, column: VALUE_COLUMN, content: formula(`=${count}`), style: "total", numberFormat: "#,##0" },
  ];
};

const pictureRows = Object.fromEntries(
  Array.from({ length: CAPTION.row + 1 - PICTURE.row }, (_, index) => [PICTURE.row + index, PICTURE_ROW_PX]),
);

/** One page per plane for the crew: chalk lines, pieces to cut and bend on the ground, and room for the picture. */
export const fieldSheetPlan = ({ sheetName, inputs, courses, outlineOf }: FieldSheetOptions): SheetPlan => {
  const planeArgs = planeArguments(outlineOf);
  const footRow = TABLES_ROW + Math.max(FEWEST_ROWS, 2 * courses + SPARE_ROWS);
  const cells: PlannedCell[] = [
    { row: 0, column: 0, content: formula(`="Field sheet: "&${inputCell("plane")}`), style: "title" },
    {
      row: 1,
      column: 0,
      content: text(
        "For the crew. Openings: one row per corner, a blank row between two openings. Start: left or right, a shift in inches, a step.",
      ),
      style: "note",
    },
    ...inputCells(inputs),
    ...panelsToOpen(planeArgs),
    ...cornerBlock("Openings", OPENINGS),
    ...cornerBlock("Corners, if no shape fits", CORNERS),
    { ...CAPTION, content: null, style: "note" },
    ...tableCells(planeArgs, footRow - TABLES_ROW - 2),
    ...cautionCells(footRow),
  ];
  return {
    name: sheetName,
    columnWidths: COLUMN_WIDTHS,
    rowHeights: { ...pictureRows, ...rowHeightsOf(cells) },
    frozenRows: 1,
    print: "one page, landscape",
    cells,
  };
};
