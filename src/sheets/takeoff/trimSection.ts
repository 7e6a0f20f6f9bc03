import { inchesSpec } from "../../../functions/measure/inches";
import { clipCountSpec } from "../../../functions/trim/clipCount";
import { nailCountSpec } from "../../../functions/trim/nailCount";
import { sheetWeightSpec } from "../../../functions/trim/sheetWeight";
import { trimFeetSpec } from "../../../functions/trim/trimFeet";
import { trimStockSpec } from "../../../functions/trim/trimStock";
import type { TrimEdge } from "../../../shared/trimKinds";
import { SQ_INCHES_PER_SQ_FOOT } from "../../../shared/units";
import { call, isEmpty, unlessEmpty } from "../../workbook/formula";
import { panelFieldName } from "../panelSheet";
import { formula, type PlannedCell } from "../../workbook/plan";
import { TRIM_ROWS, TRIMS_SHEET_COLUMNS, TRIMS_NAME } from "./trimsSheet";
import type { TakeoffLayout } from "./takeoffLayout";
import { roofEdgeLengths, roofEdgeNames } from "./roofFormulas";
import { runColumn } from "./runSection";
import { rowsFrom, sectionHead } from "./sectionHead";
import { TRIM_COLUMNS, trimCell, type TrimColumn } from "./trimTable";

const HEADINGS = [
  "Trim",
  "Follows",
  "Stock (in)",
  "Lap (in)",
  "Runs",
  "Feet, laps in",
  "Stock lengths",
  "Clips",
  "Nails",
  "Each (lb)",
];

/**
 * The lengths or names of the runs along an edge, as a column with one row per run of the table, followed by the footprint's
 * edges; 0 for other runs. `there` is the sheet prefix if the formula is on another sheet.
 */
export const runsOfEdge = (
  layout: TakeoffLayout,
  column: "name" | "length",
  edge: string,
  there = "",
): string => {
  const [edges, cells] = [`${there}${runColumn(layout, "edge")}`, `${there}${runColumn(layout, column)}`];
  const table = `IF(${edges}=${edge},IF(${isEmpty(cells)},0,${cells}),0)`;
  if (layout.roofRows === 0) return table;
  return `VSTACK(${table},${column === "name" ? roofEdgeNames(edge) : roofEdgeLengths(edge)})`;
};

/** A value from the Trims sheet. */
export const trimSetting = (index: number, column: keyof typeof TRIMS_SHEET_COLUMNS): string =>
  `INDEX(${TRIMS_NAME},${index + 1},${TRIMS_SHEET_COLUMNS[column] + 1})`;

/** A cell's value in inches: a plain number is in inches; text has its own unit. */
const inches = (cell: string): string => `IF(ISNUMBER(${cell}),${cell},${call(inchesSpec, cell)})`;

/** How many edges of a trim are fastened: 0 if blank; an error if not 0, 1 or 2. */
const fastenedEdges = (cell: string): string => `IF(${isEmpty(cell)},0,MATCH(VALUE(${cell}),{0,1,2},0)-1)`;

const PIPE: TrimEdge = "pipe";

/** Kerf and shortest piece, from the panel sheet. */
export const CUTTING_ARGUMENTS = [panelFieldName("cutLossIn"), panelFieldName("shortestTrimIn")] as const;

const FORMATS: Partial<Record<TrimColumn, string>> = { feet: "#,##0.00", weightEach: "0.00" };
const COUNTED: readonly TrimColumn[] = ["runs", "stocks", "clips", "nails"];

const trimRow = (layout: TakeoffLayout, index: number): PlannedCell[] => {
  const row = layout.trim + index;
  const [label, stock, lap, runs] = (["label", "stock", "lap", "runs"] as const).map((column) =>
    trimCell(row, column),
  ) as [string, string, string, string];
  const follows = trimCell(row, "follows");
  const lengths = runsOfEdge(layout, "length", follows);
  const inInches = (column: keyof typeof TRIMS_SHEET_COLUMNS, otherwise: string): string =>
    `IF(${isEmpty(trimSetting(index, column))},${otherwise},${inches(trimSetting(index, column))})`;
  const ofRuns = (total: string): string => unlessEmpty(label, `IF(${runs}=0,0,${total})`);
  /** Fasteners along every run, one row per fastened edge. */
  const along = (
    edges: keyof typeof TRIMS_SHEET_COLUMNS,
    count: (spacing: string) => string,
    spacing: string,
  ): string =>
    ofRuns(
      `IF(${fastenedEdges(trimSetting(index, edges))}=0,0,${fastenedEdges(trimSetting(index, edges))}*SUM(${count(spacing)}))`,
    );
  const contents: Record<TrimColumn, string> = {
    label: `=IF(${isEmpty(trimSetting(index, "label"))},"",${trimSetting(index, "label")})`,
    follows: unlessEmpty(
      label,
      `IF(${isEmpty(trimSetting(index, "follows"))},"",${trimSetting(index, "follows")})`,
    ),
    stock: unlessEmpty(label, inInches("stockIn", panelFieldName("trimStockIn"))),
    lap: unlessEmpty(label, inInches("lapIn", panelFieldName("trimLapIn"))),
    runs: unlessEmpty(label, `SUMPRODUCT((${lengths}<>0)*1)`),
    feet: ofRuns(call(trimFeetSpec, lengths, lap, stock)),
    // Each pipe gets its own flashing.
    stocks: ofRuns(
      `IF(${follows}="${PIPE}",${runs},${call(trimStockSpec, lengths, stock, lap, ...CUTTING_ARGUMENTS)})`,
    ),
    clips: along(
      "clippedEdges",
      (spacing) => call(clipCountSpec, lengths, spacing),
      inInches("clipSpacingIn", panelFieldName("trimClipSpacingIn")),
    ),
    nails: along(
      "nailedEdges",
      (spacing) => call(nailCountSpec, lengths, spacing),
      inInches("nailSpacingIn", panelFieldName("eaveNailSpacingIn")),
    ),
    weightEach: weightEach(label, index, stock),
  };
  return (Object.keys(TRIM_COLUMNS) as TrimColumn[]).map((column) => ({
    row,
    column: TRIM_COLUMNS[column],
    content: formula(contents[column]),
    style: "result",
    numberFormat: FORMATS[column] ?? (COUNTED.includes(column) ? "#,##0" : "General"),
  }));
};

/** Weight of one stock length: as typed, or from the flat width (girth); blank if that or the thickness is unknown. */
const weightEach = (label: string, index: number, stock: string): string => {
  const [typed, girth] = [trimSetting(index, "weightLb"), trimSetting(index, "girthIn")];
  const thickness = panelFieldName("trimThicknessIn");
  const perSquareFoot = call(sheetWeightSpec, panelFieldName("trimMetal"), thickness);
  const weight = `${inches(girth)}*${stock}/${SQ_INCHES_PER_SQ_FOOT}*${perSquareFoot}`;
  const fromGirth = `IF(OR(${isEmpty(girth)},${thickness}=0),"",${weight})`;
  return unlessEmpty(label, `IF(${isEmpty(typed)},${fromGirth},${typed})`);
};

/** Section 5: every trim of the Trims sheet with the runs along its edge, cut from the fewest stock lengths. */
export const trimSection = (layout: TakeoffLayout): PlannedCell[] => [
  ...sectionHead(layout.trim, "5  Trim and its fasteners", HEADINGS),
  ...rowsFrom(0, TRIM_ROWS).flatMap((index) => trimRow(layout, index)),
];
