import { trimCutsSpec } from "../../../functions/trim/trimCuts";
import { a1, sheetPrefix } from "../../workbook/address";
import { cautionCells } from "../cautionCells";
import { call, isEmpty } from "../../workbook/formula";
import { formula, text, type PlannedCell, type SheetPlan } from "../../workbook/plan";
import { rowHeightsOf } from "../../workbook/rowHeights";
import { CAUTIONS } from "../safety";
import type { TakeoffLayout } from "./takeoffLayout";
import { CUTTING_ARGUMENTS, runsOfEdge } from "./trimSection";
import { absoluteTrimColumn } from "./trimTable";
import { TRIM_KINDS } from "../../../shared/trimKinds";
import { USUAL_TRIMS } from "./trimsSheet";

const FIRST_CAUTION_ROW = 2;
const PICK_ROW = FIRST_CAUTION_ROW + CAUTIONS.length + 1;
const HEADING_ROW = PICK_ROW + 2;
const PICKED = a1({ row: PICK_ROW, column: 1 });

/** Without prices, the table has no price column. The runs are to the right of it, so both can spill down. */
const CUTS = (trimCutsSpec.columns ?? []).filter(({ heading }) => heading !== "price");
const RUNS_COLUMN = CUTS.length + 1;
const RUN_HEADINGS = ["Run", "Name", "Length (ft)"];
/** Rows that get number formats before anything spills into them. */
const FORMATTED_ROWS = 60;

const headingCells = (headings: readonly string[], from: number): PlannedCell[] =>
  headings.map((heading, column) => ({
    row: HEADING_ROW,
    column: from + column,
    content: text(heading),
    style: "heading",
  }));

/** The Trim cuts sheet: what to cut from each stock length of the picked trim. The cautions are at the top, above the spills. */
export const cutsSheet = (sheetName: string, takeoffSheet: string, layout: TakeoffLayout): SheetPlan => {
  const there = sheetPrefix(takeoffSheet);
  const column = (of: Parameters<typeof absoluteTrimColumn>[1]): string =>
    `${there}${absoluteTrimColumn(layout, of)}`;
  const found = `MATCH(${PICKED},${column("label")},0)`;
  const ofTrim = (of: Parameters<typeof absoluteTrimColumn>[1]): string => `INDEX(${column(of)},${found})`;
  const ifThere = (then: string): string =>
    `=IF(${isEmpty(PICKED)},"",IF(ISNA(${found}),"no trim has this name",IF(${ofTrim("runs")}=0,"no run uses it",${then})))`;
  const taken = (of: "name" | "length"): string => runsOfEdge(layout, of, ofTrim("follows"), there);
  const cuts = call(
    trimCutsSpec,
    taken("length"),
    ofTrim("stock"),
    ofTrim("lap"),
    ...CUTTING_ARGUMENTS,
    "",
    "",
    "FALSE",
  );
  const spill = (from: number, content: string): PlannedCell => ({
    row: HEADING_ROW + 1,
    column: from,
    content: formula(content),
  });
  const numberFormats = [...CUTS.map(({ result }) => result.numberFormat), undefined, "0", "General", "0.00"];
  const formats = Array.from({ length: FORMATTED_ROWS }, (_, down) =>
    numberFormats.flatMap((numberFormat, across): PlannedCell[] =>
      numberFormat === undefined
        ? []
        : [{ row: HEADING_ROW + 1 + down, column: across, content: null, numberFormat }],
    ),
  ).flat();
  const lengths = taken("length");
  const ofRuns = (what: string): string => ifThere(`FILTER(${what},${lengths}<>0)`);
  const spills = [
    spill(0, ifThere(cuts)),
    spill(RUNS_COLUMN, ofRuns(`SEQUENCE(ROWS(${lengths}))`)),
    spill(RUNS_COLUMN + 1, ofRuns(taken("name"))),
    spill(RUNS_COLUMN + 2, ofRuns(lengths)),
  ];
  const cells: PlannedCell[] = [
    { row: 0, column: 0, content: text("Trim cuts"), style: "title" },
    {
      row: 1,
      column: 0,
      content: text(
        "Pick a trim to see what to cut from each stock length, longest first, and whether fewer could be enough. Run numbers refer to the list on the right.",
      ),
      style: "note",
    },
    ...cautionCells(FIRST_CAUTION_ROW),
    { row: PICK_ROW, column: 0, content: text("Trim"), style: "label" },
    {
      row: PICK_ROW,
      column: 1,
      content: text(TRIM_KINDS.eaveStarter.label),
      style: "input",
      choices: USUAL_TRIMS.map(({ label }) => label),
    },
    ...headingCells(
      CUTS.map(({ heading }) => heading),
      0,
    ),
    ...headingCells(RUN_HEADINGS, RUNS_COLUMN),
    ...formats.filter(
      (cell) => !spills.some((other) => other.row === cell.row && other.column === cell.column),
    ),
    ...spills.map((cell) => ({ ...cell, numberFormat: numberFormats[cell.column] ?? "General" })),
  ];
  return {
    name: sheetName,
    frozenRows: HEADING_ROW + 1,
    print: "one page wide, portrait",
    columnWidths: [70, 130, 330, 90, 30, 60, 160, 90],
    rowHeights: rowHeightsOf(cells),
    cells,
  };
};
