import { feetSpec } from "../../../functions/measure/feet";
import { clipCountSpec } from "../../../functions/trim/clipCount";
import { nailCountSpec } from "../../../functions/trim/nailCount";
import { trimFeetSpec } from "../../../functions/trim/trimFeet";
import { trimPiecesSpec } from "../../../functions/trim/trimPieces";
import { a1, a1Range } from "../address";
import { call, unlessEmpty } from "../formula";
import { panelFieldName } from "../panelSheet";
import { formula, text, value, type PlannedCell } from "../plan";
import { TRIM_KINDS, type TakeOffLayout } from "./layout";
import type { RidgeInput } from "./options";
import { gableEdgesOf, planeCell } from "./planes";
import { rowsFrom, sectionHead } from "./section";

type TrimKind = (typeof TRIM_KINDS)[number];

/** Columns of the table of trim runs. */
const RUN = { name: 0, kind: 1, length: 2, runs: 3, feet: 4, pieces: 5, clips: 6, nails: 7 } as const;
const HEADINGS = ["Run", "Trim", "Length (ft)", "Runs", "Feet, laps in", "Pieces", "Clips", "Nails"];

const runCell = (row: number, column: keyof typeof RUN): string => a1({ row, column: RUN[column] });

/** Feet, pieces and fasteners of one run, times the runs that are alike. The eave is nailed, the rest is clipped. */
const quantities = (row: number, kind: TrimKind): PlannedCell[] => {
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

/** Kind and count of a run: there only where the run has a length, so that a spare row stays quiet. */
const kindAndRuns = (row: number, kind: TrimKind, runs: string): PlannedCell[] => {
  const length = runCell(row, "length");
  return [
    { row, column: RUN.kind, content: formula(unlessEmpty(length, `"${kind}"`)), style: "result" },
    {
      row,
      column: RUN.runs,
      content: formula(unlessEmpty(length, runs)),
      style: "result",
      numberFormat: "0",
    },
  ];
};

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
    ...kindAndRuns(row, kind, runs),
    ...quantities(row, kind),
  ];
};

const ridgeRun = (row: number, ridge: RidgeInput | undefined): PlannedCell[] => [
  { row, column: RUN.name, content: ridge ? value(ridge.name) : null, style: "input" },
  { row, column: RUN.length, content: ridge ? value(ridge.length) : null, style: "input" },
  ...kindAndRuns(row, "ridge", "1"),
  ...quantities(row, "ridge"),
];

/** The rows of one kind of trim, first and last. */
const rowsOfKind = (
  { trim, planeRows, ridgeRows }: TakeOffLayout,
  kind: TrimKind,
): readonly [number, number] => {
  const first = trim + planeRows * TRIM_KINDS.indexOf(kind);
  return [first, first + (kind === "ridge" ? ridgeRows : planeRows) - 1];
};

/** The row with the totals of one kind of trim. */
export const trimTotalCell = (
  layout: TakeOffLayout,
  kind: TrimKind,
  column: "pieces" | "clips" | "nails",
): string => runCell(layout.trimTotals + TRIM_KINDS.indexOf(kind), column);

const totalRow = (layout: TakeOffLayout, kind: TrimKind): PlannedCell[] => {
  const row = layout.trimTotals + TRIM_KINDS.indexOf(kind);
  const [first, last] = rowsOfKind(layout, kind);
  const sum = (column: keyof typeof RUN, numberFormat: string): PlannedCell => ({
    row,
    column: RUN[column],
    // Not SUMIFS by kind: it would pass over a row whose kind is an error, in silence.
    content: formula(
      `=SUM(${a1Range({ row: first, column: RUN[column] }, { row: last, column: RUN[column] })})`,
    ),
    style: "total",
    numberFormat,
  });
  return [
    { row, column: RUN.name, content: text(`All ${kind}`), style: "total" },
    sum("feet", "#,##0.00"),
    sum("pieces", "#,##0"),
    sum("clips", "#,##0"),
    sum("nails", "#,##0"),
  ];
};

/** Every run of trim: eaves and gables from the plane table, ridges typed. */
export const trimSection = (layout: TakeOffLayout, ridges: readonly RidgeInput[]): PlannedCell[] => {
  const { planeRows, planes, trim, ridgeRows } = layout;
  return [
    ...sectionHead(trim, "3  Trim", HEADINGS),
    ...rowsFrom(trim, planeRows).flatMap((row, index) => planeRun(row, planes + index, "eave")),
    ...rowsFrom(trim + planeRows, planeRows).flatMap((row, index) => planeRun(row, planes + index, "gable")),
    ...rowsFrom(trim + 2 * planeRows, ridgeRows).flatMap((row, index) => ridgeRun(row, ridges[index])),
    ...TRIM_KINDS.flatMap((kind) => totalRow(layout, kind)),
  ];
};
