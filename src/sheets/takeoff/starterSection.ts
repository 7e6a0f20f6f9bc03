import { starterListSpec } from "../../../functions/stagger/starterList";
import { a1 } from "../../workbook/address";
import { call, isEmpty } from "../../workbook/formula";
import { panelFieldName } from "../panelSheet";
import { formula, text, type PlannedCell } from "../../workbook/plan";
import type { TakeoffLayout } from "./takeoffLayout";
import type { PlaneInput } from "./takeoffOptions";
import { planeColumn, roofPlaneName } from "./planeSection";
import { rowsFrom } from "./sectionHead";

/** Rows with borders for the starters: a few more than common stagger patterns have. */
const FRAMED_ROWS = 6;

const [LABEL, PICKED] = [0, 1];
const COLUMNS = starterListSpec.columns ?? [];

const headings = (row: number): PlannedCell[] =>
  COLUMNS.map(({ heading }, column) => ({ row, column, content: text(heading), style: "heading" }));

/** The list, or the reason why there is none. */
const listFormula = (layout: TakeoffLayout, pickedCell: string): string => {
  const found = `MATCH(${pickedCell},${planeColumn(layout, "name")},0)`;
  const slope = `INDEX(${planeColumn(layout, "slopeUsed")},${found})`;
  const fields = (
    ["exposedHeightIn", "exposedWidthIn", "gableSetbackIn", "gableFoldIn", "staggerPattern"] as const
  ).map(panelFieldName);
  const list = call(starterListSpec, slope, ...fields, "FALSE");
  return `=IF(${isEmpty(pickedCell)},"",IF(ISNA(${found}),"no plane has this name",${list}))`;
};

/** Section 7: the starters for one gable edge of the picked plane. */
export const starterSection = (layout: TakeoffLayout, planes: readonly PlaneInput[]): PlannedCell[] => {
  const pickRow = layout.starters - 2;
  const pickedCell = a1({ row: pickRow, column: PICKED });
  const first = planes.find(({ gableEdges }) => gableEdges !== undefined && gableEdges > 0) ?? planes[0];
  const picked = first?.name ?? (layout.roofRows > 0 ? roofPlaneName(1) : undefined);
  const frame = rowsFrom(layout.starters, FRAMED_ROWS).flatMap((row) =>
    COLUMNS.map(({ result }, column): PlannedCell => ({
      row,
      column,
      content: row === layout.starters && column === 0 ? formula(listFormula(layout, pickedCell)) : null,
      style: "result",
      numberFormat: result.numberFormat,
    })),
  );
  return [
    {
      row: pickRow - 1,
      column: LABEL,
      content: text("7  Starters for one gable edge, to cut and bend on the ground"),
      style: "section",
    },
    { row: pickRow, column: LABEL, content: text("Plane"), style: "label" },
    { row: pickRow, column: PICKED, content: picked === undefined ? null : text(picked), style: "input" },
    ...headings(layout.starters - 1),
    ...frame,
  ];
};
