import { feetSpec } from "../../../functions/measure/feet";
import { chimneyTrimSpec } from "../../../functions/trim/chimneyTrim";
import { TRIM_EDGES, type TrimEdge } from "../../../shared/trimKinds";
import { a1, a1Range } from "../../workbook/address";
import { call, isEmpty, unlessEmpty } from "../../workbook/formula";
import { formula, text, value, type PlannedCell } from "../../workbook/plan";
import { RUNS_OF_PENETRATION, RUNS_OF_PLANE, type TakeoffLayout } from "./takeoffLayout";
import type { RunInput } from "./takeoffOptions";
import { penetrationCell } from "./penetrationSection";
import { gableEdgeCount, planeCell } from "./planeSection";
import { rowsFrom, sectionHead } from "./sectionHead";
import { trimColumn } from "./trimTable";

/** Columns of the table of runs. */
const RUN_COLUMNS = { name: 0, edge: 1, length: 2 } as const;
export type RunColumn = keyof typeof RUN_COLUMNS;
const HEADINGS = ["Run", "Edge", "Length (ft)"];

/** Edges that get a row in advance, besides the blank rows. */
const READY: readonly TrimEdge[] = ["ridge", "hip", "valley", "side wall", "head wall"];

const runCell = (row: number, column: RunColumn): string => a1({ row, column: RUN_COLUMNS[column] });

/** A column of the table of runs. */
export const runColumn = (layout: TakeoffLayout, column: RunColumn): string =>
  a1Range(
    { row: layout.runs, column: RUN_COLUMNS[column] },
    { row: layout.firstTypedRun + layout.typedRunRows - 1, column: RUN_COLUMNS[column] },
  );

const result = (row: number, column: RunColumn, content: string): PlannedCell => ({
  row,
  column: RUN_COLUMNS[column],
  content: formula(content),
  style: "result",
  ...(column === "length" && { numberFormat: "#,##0.00" }),
});

/**
 * A calculated run: its name and edge show once it has a length. If the length is an error, the edge still shows, so the error
 * reaches the trim that follows this edge and no other.
 */
const calculatedRun = (row: number, name: string, edge: string, length: string): PlannedCell[] => [
  result(row, "name", unlessEmpty(runCell(row, "length"), name)),
  result(
    row,
    "edge",
    `=IF(ISERROR(${runCell(row, "length")}),${edge},IF(${isEmpty(runCell(row, "length"))},"",${edge}))`,
  ),
  result(row, "length", length),
];

/** The eave and the gable edges of a plane measured by hand. */
const planeRuns = (firstRow: number, planeRow: number): PlannedCell[] => {
  const eave = planeCell(planeRow, "eave");
  return RUNS_OF_PLANE.flatMap((edge, index) =>
    calculatedRun(
      firstRow + index,
      `"${edge} "&${planeCell(planeRow, "name")}`,
      `"${edge}"`,
      edge === "eave"
        ? unlessEmpty(eave, call(feetSpec, eave))
        : `=IF(${gableEdgeCount(planeRow)}<${index},"",${planeCell(planeRow, "slopeUsed")})`,
    ),
  );
};

/** The four sides of a chimney, or the flashing of a pipe. A pipe's run is one stock length long, so each pipe gets one piece. */
const penetrationRuns = (layout: TakeoffLayout, firstRow: number, penetrationRow: number): PlannedCell[] => {
  const [typedName, kind, width, depth, pitch] = (["name", "kind", "width", "depth", "pitch"] as const).map(
    (column) => penetrationCell(penetrationRow, column),
  ) as [string, string, string, string, string];
  const sides = call(chimneyTrimSpec, width, depth, pitch, "FALSE");
  const name = `IF(${isEmpty(typedName)},${kind},${typedName})`;
  const pipe: TrimEdge = "pipe";
  const flashing = `INDEX(${trimColumn(layout, "stock")},MATCH("${pipe}",${trimColumn(layout, "follows")},0))`;
  // The table has both sides in one row. The edges are text here, so a chimney without a pitch gives an error only in the
  // chimney trims.
  const sidesOfChimney: readonly { edge: TrimEdge; rowInTable: number }[] = [
    { edge: "chimney front", rowInTable: 1 },
    { edge: "chimney side", rowInTable: 2 },
    { edge: "chimney side", rowInTable: 2 },
    { edge: "chimney back", rowInTable: 3 },
  ];
  return sidesOfChimney.flatMap(({ edge: side, rowInTable }, index) => {
    const lengthOfSide = `INDEX(${sides},${rowInTable},2)`;
    const ofPipe = index === 0 ? `IF(${kind}="${pipe}",${flashing}/12,"")` : `""`;
    const edge = index === 0 ? `IF(${kind}="${pipe}","${pipe}","${side}")` : `"${side}"`;
    return calculatedRun(
      firstRow + index,
      name,
      edge,
      unlessEmpty(kind, `IF(${kind}="chimney",${lengthOfSide},${ofPipe})`),
    );
  });
};

/** A typed run. Its edge shows before it has a length, so the user knows where to type. */
const typedRun = (row: number, run: Partial<RunInput>): PlannedCell[] => [
  { row, column: RUN_COLUMNS.name, content: run.name === undefined ? null : value(run.name), style: "input" },
  {
    row,
    column: RUN_COLUMNS.edge,
    content: run.edge === undefined ? null : text(run.edge),
    style: "input",
    choices: TRIM_EDGES,
  },
  {
    row,
    column: RUN_COLUMNS.length,
    content: run.length === undefined ? null : value(run.length),
    style: "input",
  },
];

const withReadyRows = (runs: readonly RunInput[]): readonly Partial<RunInput>[] => [
  ...runs,
  ...READY.filter((edge) => !runs.some((run) => run.edge === edge)).map((edge) => ({ edge })),
];

/** Section 4: every run that trim follows, except the edges of a roof from a footprint (see `runsOfEdge`). */
export const runSection = (layout: TakeoffLayout, runs: readonly RunInput[]): PlannedCell[] => {
  const typed = withReadyRows(runs);
  return [
    ...sectionHead(layout.runs, "4  Runs that trim follows", HEADINGS),
    ...rowsFrom(0, layout.handRows).flatMap((index) =>
      planeRuns(layout.runs + index * RUNS_OF_PLANE.length, layout.planes + layout.roofRows + index),
    ),
    ...rowsFrom(0, layout.penetrationRows).flatMap((index) =>
      penetrationRuns(
        layout,
        layout.penetrationRuns + index * RUNS_OF_PENETRATION,
        layout.penetrations + index,
      ),
    ),
    ...rowsFrom(0, layout.typedRunRows).flatMap((index) =>
      typedRun(layout.firstTypedRun + index, typed[index] ?? {}),
    ),
  ];
};

/** 1 if a run has a length or an error, otherwise 0. An error must not count as no run. */
export const hasLength = (lengths: string): string => `IF(ISERROR(${lengths}),1,IF(${isEmpty(lengths)},0,1))`;
