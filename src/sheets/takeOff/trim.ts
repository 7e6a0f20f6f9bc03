import { feetSpec } from "../../../functions/measure/feet";
import { clipCountSpec } from "../../../functions/trim/clipCount";
import { nailCountSpec } from "../../../functions/trim/nailCount";
import { trimFeetSpec } from "../../../functions/trim/trimFeet";
import { trimPiecesSpec } from "../../../functions/trim/trimPieces";
import { a1, a1Range } from "../address";
import { call, unlessEmpty } from "../formula";
import { panelFieldName } from "../panelSheet";
import { formula, text, value, type PlannedCell } from "../plan";
import { RUN_KINDS, type TakeOffLayout, type RunKind } from "./layout";
import { TYPED_KINDS, type RunInput, type TypedKind } from "./options";
import { gableEdgesOf, planeCell } from "./planes";
import { overEdges } from "./roofPart";
import { rowsFrom, sectionHead } from "./section";

/** Columns of the table of trim runs. */
const RUN = { name: 0, kind: 1, length: 2, runs: 3, feet: 4, pieces: 5, clips: 6, nails: 7 } as const;
const HEADINGS = ["Run", "Trim", "Length (ft)", "Runs", "Feet, laps in", "Pieces", "Clips", "Nails"];

const QUANTITY_COLUMNS = ["feet", "pieces", "clips", "nails"] as const;
type QuantityColumn = (typeof QUANTITY_COLUMNS)[number];

const runCell = (row: number, column: keyof typeof RUN): string => a1({ row, column: RUN[column] });

/** Feet, pieces and fasteners of one run, times the runs that are alike. The eave is nailed, the rest is clipped. */
const quantities = (row: number, kind: RunKind): PlannedCell[] => {
  const length = runCell(row, "length");
  const runs = runCell(row, "runs");
  const lap = panelFieldName("trimLapIn");
  const stock = panelFieldName("trimStockIn");
  const each = (column: keyof typeof RUN, one: string, numberFormat: string): PlannedCell => ({
    row,
    column: RUN[column],
    content: formula(unlessEmpty(length, `${runs}*${one}`)),
    style: "result",
    numberFormat,
  });
  return [
    each("feet", call(trimFeetSpec, length, lap, stock), "#,##0.00"),
    each("pieces", call(trimPiecesSpec, length, stock, lap), "#,##0"),
    kind === "eave"
      ? each("nails", call(nailCountSpec, length, panelFieldName("eaveNailSpacingIn")), "#,##0")
      : each("clips", call(clipCountSpec, length, panelFieldName("trimClipSpacingIn")), "#,##0"),
  ];
};

/** How many runs are alike: there only where the run has a length, so that a spare row stays quiet. */
const runsCell = (row: number, runs: string): PlannedCell => ({
  row,
  column: RUN.runs,
  content: formula(unlessEmpty(runCell(row, "length"), runs)),
  style: "result",
  numberFormat: "0",
});

/** A run whose length comes from the plane table. */
const planeRun = (row: number, planeRow: number, kind: "eave" | "gable"): PlannedCell[] => {
  const name = planeCell(planeRow, "name");
  const eave = planeCell(planeRow, "eave");
  const gableEdges = gableEdgesOf(planeRow);
  const [length, runs] =
    kind === "eave"
      ? [unlessEmpty(eave, call(feetSpec, eave)), "1"]
      : [`=IF(${gableEdges}=0,"",${planeCell(planeRow, "slopeUsed")})`, gableEdges];
  return [
    {
      row,
      column: RUN.name,
      content: formula(unlessEmpty(runCell(row, "length"), `"${kind} "&${name}`)),
      style: "result",
    },
    { row, column: RUN.length, content: formula(length), style: "result", numberFormat: "#,##0.00" },
    {
      row,
      column: RUN.kind,
      content: formula(unlessEmpty(runCell(row, "length"), `"${kind}"`)),
      style: "result",
    },
    runsCell(row, runs),
    ...quantities(row, kind),
  ];
};

/** A run that is typed: its kind stands there before it has a length, so that a person knows where to type. */
const typedRun = (row: number, kind: TypedKind, run: RunInput | undefined): PlannedCell[] => [
  { row, column: RUN.name, content: run ? value(run.name) : null, style: "input" },
  { row, column: RUN.kind, content: text(kind), style: "result" },
  { row, column: RUN.length, content: run ? value(run.length) : null, style: "input" },
  runsCell(row, "1"),
  ...quantities(row, kind),
];

const isTyped = (kind: RunKind): kind is TypedKind => TYPED_KINDS.some((each) => each === kind);

/** How many rows the runs of a kind have; a pitch break comes from a footprint only. */
const rowCount = ({ handRows, typedRows }: TakeOffLayout, kind: RunKind): number =>
  isTyped(kind) ? typedRows[kind] : kind === "pitch break" ? 0 : handRows;

const firstRow = (layout: TakeOffLayout, kind: RunKind): number =>
  RUN_KINDS.slice(0, RUN_KINDS.indexOf(kind)).reduce(
    (row, each) => row + rowCount(layout, each),
    layout.trim,
  );

/** The row with the totals of one kind of trim. */
export const trimTotalCell = (
  layout: TakeOffLayout,
  kind: RunKind,
  column: "pieces" | "clips" | "nails",
): string => runCell(layout.trimTotals + RUN_KINDS.indexOf(kind), column);

/** What the roof's edges are called in its table, by the trim that they take. */
const edgeOf = (kind: RunKind): string => (kind === "gable" ? "rake" : kind);

/** A quantity of all runs that are given as a column of lengths. */
const quantityOf = (column: QuantityColumn, lengths: string): string => {
  const [lap, stock] = [panelFieldName("trimLapIn"), panelFieldName("trimStockIn")];
  switch (column) {
    case "feet":
      return call(trimFeetSpec, lengths, lap, stock);
    case "pieces":
      return `SUM(${call(trimPiecesSpec, lengths, stock, lap)})`;
    case "clips":
      return `SUM(${call(clipCountSpec, lengths, panelFieldName("trimClipSpacingIn"))})`;
    case "nails":
      return `SUM(${call(nailCountSpec, lengths, panelFieldName("eaveNailSpacingIn"))})`;
  }
};

/** The eave is nailed, the rest is clipped. */
const takes = (kind: RunKind, column: QuantityColumn): boolean =>
  column === "feet" || column === "pieces" || (column === "nails") === (kind === "eave");

const totalFormula = (layout: TakeOffLayout, kind: RunKind, column: QuantityColumn): string => {
  const rows = rowCount(layout, kind);
  const [first, last] = [firstRow(layout, kind), firstRow(layout, kind) + rows - 1];
  // Not SUMIFS by kind: it would pass over a row whose kind is an error, in silence.
  const byHand =
    rows === 0
      ? "0"
      : `SUM(${a1Range({ row: first, column: RUN[column] }, { row: last, column: RUN[column] })})`;
  const isFromRoof = layout.roofRows > 0 && takes(kind, column);
  return isFromRoof
    ? `=${byHand}+${overEdges(edgeOf(kind), (lengths) => quantityOf(column, lengths))}`
    : `=${byHand}`;
};

const totalRow = (layout: TakeOffLayout, kind: RunKind): PlannedCell[] => {
  const row = layout.trimTotals + RUN_KINDS.indexOf(kind);
  return [
    { row, column: RUN.name, content: text(`All ${kind}`), style: "total" },
    ...QUANTITY_COLUMNS.map((column): PlannedCell => ({
      row,
      column: RUN[column],
      content: formula(totalFormula(layout, kind, column)),
      style: "total",
      numberFormat: column === "feet" ? "#,##0.00" : "#,##0",
    })),
  ];
};

const runsOfKind = (layout: TakeOffLayout, kind: RunKind, runs: readonly RunInput[]): PlannedCell[] => {
  const rows = rowsFrom(firstRow(layout, kind), rowCount(layout, kind));
  if (isTyped(kind)) {
    const typed = runs.filter((run) => run.kind === kind);
    return rows.flatMap((row, index) => typedRun(row, kind, typed[index]));
  }
  if (kind === "pitch break") return [];
  return rows.flatMap((row, index) => planeRun(row, layout.planes + layout.roofRows + index, kind));
};

/** Every run of trim: eaves and gables of the planes measured by hand, others typed; a roof's own edges join the totals. */
export const trimSection = (layout: TakeOffLayout, runs: readonly RunInput[]): PlannedCell[] => [
  ...sectionHead(layout.trim, "3  Trim", HEADINGS),
  ...RUN_KINDS.flatMap((kind) => runsOfKind(layout, kind, runs)),
  ...RUN_KINDS.flatMap((kind) => totalRow(layout, kind)),
];
