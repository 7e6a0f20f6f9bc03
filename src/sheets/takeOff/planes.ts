import { outlineSpec } from "../../../functions/layout/outline";
import { outlineAreaSpec } from "../../../functions/layout/outlineArea";
import { feetSpec } from "../../../functions/measure/feet";
import { squaresSpec } from "../../../functions/orders/squares";
import { rafterLengthSpec } from "../../../functions/slope/rafterLength";
import { slopeCheckSpec } from "../../../functions/slope/slopeCheck";
import { a1, a1Range } from "../address";
import { call, unlessBlank } from "../formula";
import { panelFieldName } from "../panelSheet";
import { formula, text, value, type Content, type PlannedCell } from "../plan";
import type { TakeOffLayout } from "./layout";
import type { PlaneInput } from "./options";
import { rowsFrom, sectionHead } from "./section";

/** Columns of the plane table. */
export const PLANE = {
  name: 0,
  shape: 1,
  eave: 2,
  top: 3,
  slopeLength: 4,
  run: 5,
  pitch: 6,
  tail: 7,
  gableEdges: 8,
  slopeUsed: 9,
  area: 10,
  squares: 11,
  check: 12,
} as const;

const HEADINGS = [
  "Plane",
  "Shape",
  "Eave (ft)",
  "Top (ft)",
  "Slope, if taped (ft)",
  "or run (ft)",
  "and pitch",
  "and tail, sloped (ft)",
  "Gable edges",
  "Slope used (ft)",
  "Area (sq ft)",
  "Squares",
  "Pitch check",
];

const SHAPES = ["rectangle", "triangle", "trapezoid"];
const GABLE_EDGES = ["0", "1", "2"];

/** A cell of the plane table, as a formula on the same sheet calls it. */
export const planeCell = (row: number, column: keyof typeof PLANE): string =>
  a1({ row, column: PLANE[column] });

/** The gable edges of a plane as a number: 0 where blank, and a drop-down's "2" counts as 2. */
export const gableEdgesOf = (row: number): string => {
  const cell = planeCell(row, "gableEdges");
  return `IF(${cell}="",0,VALUE(${cell}))`;
};

const input = (
  row: number,
  column: keyof typeof PLANE,
  typed: string | number | undefined,
  choices?: string[],
): PlannedCell => ({
  row,
  column: PLANE[column],
  content: typed === undefined ? null : value(typed),
  style: "input",
  ...(choices && { choices }),
});

const result = (
  row: number,
  column: keyof typeof PLANE,
  content: string,
  numberFormat: string,
): PlannedCell => ({
  row,
  column: PLANE[column],
  content: formula(content),
  style: "result",
  numberFormat,
});

/** The measured slope length, or the rafter over the run and its tail; quiet until one of them is there. */
const slopeUsed = (row: number): string => {
  const [eave, measured, run, pitch, tail] = (["eave", "slopeLength", "run", "pitch", "tail"] as const).map(
    (column) => planeCell(row, column),
  ) as [string, string, string, string, string];
  const rafter = `${call(rafterLengthSpec, run, pitch)}+IF(${tail}="",0,${call(feetSpec, tail)})`;
  const measuredFirst = `IF(${measured}<>"",${call(feetSpec, measured)},${rafter})`;
  return `=IF(OR(${eave}="",AND(${measured}="",${run}="")),"",${measuredFirst})`;
};

const planeRow = (row: number, plane: PlaneInput | undefined): PlannedCell[] => {
  const [shape, eave, slope, top, area, pitch] = (
    ["shape", "eave", "slopeUsed", "top", "area", "pitch"] as const
  ).map((column) => planeCell(row, column)) as [string, string, string, string, string, string];
  return [
    input(row, "name", plane?.name),
    input(row, "shape", plane?.shape, SHAPES),
    input(row, "eave", plane?.eave),
    input(row, "top", plane?.top),
    input(row, "slopeLength", plane?.slopeLength),
    input(row, "run", plane?.run),
    input(row, "pitch", plane?.pitch),
    input(row, "tail", plane?.tail),
    input(row, "gableEdges", plane?.gableEdges, GABLE_EDGES),
    result(row, "slopeUsed", slopeUsed(row), "0.00"),
    result(
      row,
      "area",
      unlessBlank(eave, call(outlineAreaSpec, call(outlineSpec, shape, eave, slope, top))),
      "#,##0.0",
    ),
    result(row, "squares", unlessBlank(eave, call(squaresSpec, area)), "0.00"),
    result(
      row,
      "check",
      unlessBlank(pitch, call(slopeCheckSpec, pitch, panelFieldName("minimumPitch"))),
      "@",
    ),
  ];
};

/** A column of the plane table as a range, for totals and look-ups. */
export const planeColumn = (layout: TakeOffLayout, column: keyof typeof PLANE): string =>
  a1Range(
    { row: layout.planes, column: PLANE[column] },
    { row: layout.planeTotal - 1, column: PLANE[column] },
  );

const totalContent = (layout: TakeOffLayout, column: number): Content | null => {
  if (column === PLANE.name) return text("All planes");
  if (column === PLANE.area) return formula(`=SUM(${planeColumn(layout, "area")})`);
  if (column === PLANE.squares) return formula(`=SUM(${planeColumn(layout, "squares")})`);
  return null;
};

const totalCell = (layout: TakeOffLayout, column: number): PlannedCell => ({
  row: layout.planeTotal,
  column,
  content: totalContent(layout, column),
  style: "total",
  numberFormat: column === PLANE.squares ? "0.00" : "#,##0.0",
});

/** The table that everything else reads: one roof plane a row. */
export const planeSection = (layout: TakeOffLayout, planes: readonly PlaneInput[]): PlannedCell[] => [
  ...sectionHead(layout.planes, "1  Roof planes", HEADINGS),
  ...rowsFrom(layout.planes, layout.planeRows).flatMap((row, index) => planeRow(row, planes[index])),
  ...rowsFrom(0, PLANE.check).map((column) => totalCell(layout, column)),
];
