import { outlineSpec } from "../../../functions/layout/outline";
import { outlineAreaSpec } from "../../../functions/layout/outlineArea";
import { feetSpec } from "../../../functions/measure/feet";
import { squaresSpec } from "../../../functions/orders/squares";
import { rafterLengthSpec } from "../../../functions/slope/rafterLength";
import { slopeCheckSpec } from "../../../functions/slope/slopeCheck";
import { a1, a1Range } from "../../workbook/address";
import { call, isEmpty, unlessEmpty } from "../../workbook/formula";
import { panelFieldName } from "../panelSheet";
import { formula, text, value, type CellContent, type PlannedCell } from "../../workbook/plan";
import type { TakeoffLayout } from "./takeoffLayout";
import type { PlaneInput } from "./takeoffOptions";
import { ifRoofHasPlane, missingPlanesWarning, roofPlaneValue, roofPlaneRakes } from "./roofFormulas";
import { rowsFrom, sectionHead } from "./sectionHead";

/** Columns of the plane table. */
export const PLANE_COLUMNS = {
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

export const PLANE_HEADINGS = [
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
  "Check",
];

/** Label of the totals row. */
export const ALL_PLANES = "All planes";

const SHAPES = ["rectangle", "triangle", "trapezoid"];
const GABLE_EDGES = ["0", "1", "2"];

/** The name of a plane from the footprint is this word and its number. */
const ROOF_PLANE = "Plane";
export const roofPlaneName = (plane: number): string => `${ROOF_PLANE} ${plane}`;
/** The plane's number, from its name. */
export const numberOfRoofPlane = (name: string): number => Number(name.slice(ROOF_PLANE.length));

/** The shape of a plane from the footprint. */
export const ROOF_SHAPE = "from footprint";

/** A cell of the plane table, as a reference on the same sheet. */
export const planeCell = (row: number, column: keyof typeof PLANE_COLUMNS): string =>
  a1({ row, column: PLANE_COLUMNS[column] });

/** A plane's number of gable edges: 0 if blank; 0, 1 or 2 as number or text; otherwise an error. */
export const gableEdgeCount = (row: number): string => {
  const cell = planeCell(row, "gableEdges");
  return `IF(${isEmpty(cell)},0,MATCH(VALUE(${cell}),{0,1,2},0)-1)`;
};

const input = (
  row: number,
  column: keyof typeof PLANE_COLUMNS,
  typed: string | number | undefined,
  choices?: string[],
): PlannedCell => ({
  row,
  column: PLANE_COLUMNS[column],
  content: typed === undefined ? null : value(typed),
  style: "input",
  ...(choices && { choices }),
});

const result = (
  row: number,
  column: keyof typeof PLANE_COLUMNS,
  content: string,
  numberFormat: string,
): PlannedCell => ({
  row,
  column: PLANE_COLUMNS[column],
  content: formula(content),
  style: "result",
  numberFormat,
});

/** The measured slope length, or rafter length plus tail; blank until a slope length or a run is typed. */
const slopeUsed = (row: number): string => {
  const [measured, run, pitch, tail] = (["slopeLength", "run", "pitch", "tail"] as const).map((column) =>
    planeCell(row, column),
  ) as [string, string, string, string];
  const rafter = `${call(rafterLengthSpec, run, pitch)}+IF(${isEmpty(tail)},0,${call(feetSpec, tail)})`;
  const measuredFirst = `IF(${isEmpty(measured)},${rafter},${call(feetSpec, measured)})`;
  return `=IF(AND(${isEmpty(measured)},${isEmpty(run)}),"",${measuredFirst})`;
};

/** A column of the plane table as a range, for totals and lookups. */
export const planeColumn = (
  layout: TakeoffLayout,
  column: keyof typeof PLANE_COLUMNS,
  firstRow = layout.planes,
): string =>
  a1Range(
    { row: firstRow, column: PLANE_COLUMNS[column] },
    { row: layout.planeTotal - 1, column: PLANE_COLUMNS[column] },
  );

/** The corners of a plane measured by hand. */
export const planeOutline = (row: number): string =>
  call(
    outlineSpec,
    ...(["shape", "eave", "slopeUsed", "top"] as const).map((column) => planeCell(row, column)),
  );

/** A row's check: duplicate name or wrong gable edges; otherwise whether the pitch is steep enough. */
const check = (layout: TakeoffLayout, row: number): string => {
  const [name, pitch] = [planeCell(row, "name"), planeCell(row, "pitch")];
  const steepness = `IF(${isEmpty(pitch)},"",${call(slopeCheckSpec, pitch, panelFieldName("minimumPitch"))})`;
  const edges = `IF(ISERROR(${gableEdgeCount(row)}),"gable edges must be 0, 1 or 2",${steepness})`;
  return unlessEmpty(
    name,
    `IF(COUNTIF(${planeColumn(layout, "name")},${name})>1,"another plane has this name",${edges})`,
  );
};

const planeRow = (layout: TakeoffLayout, row: number, plane: PlaneInput | undefined): PlannedCell[] => {
  const area = planeCell(row, "area");
  // A plane with some measurements must show an error, not a blank.
  const ifMeasured = (then: string): string =>
    `=IF(COUNTA(${planeCell(row, "eave")}:${planeCell(row, "tail")})=0,"",${then})`;
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
    result(row, "area", ifMeasured(call(outlineAreaSpec, planeOutline(row))), "#,##0.0"),
    result(row, "squares", ifMeasured(call(squaresSpec, area)), "0.00"),
    result(row, "check", check(layout, row), "General"),
  ];
};

/** A row for a plane from the footprint; blank if the roof has fewer planes. */
const roofPlaneRow = (row: number, plane: number): PlannedCell[] => {
  const name = planeCell(row, "name");
  const from = (heading: string): string => unlessEmpty(name, roofPlaneValue(plane, heading));
  const pitch = planeCell(row, "pitch");
  return [
    result(row, "name", ifRoofHasPlane(plane, `"${roofPlaneName(plane)}"`), "General"),
    result(row, "shape", unlessEmpty(name, `"${ROOF_SHAPE}"`), "General"),
    result(row, "eave", from("eave (ft)"), "0.00"),
    result(row, "pitch", from("pitch (in 12)"), "General"),
    result(row, "gableEdges", unlessEmpty(name, roofPlaneRakes(plane)), "0"),
    result(row, "slopeUsed", from("slope length (ft)"), "0.00"),
    result(row, "area", from("sloped area (sq ft)"), "#,##0.0"),
    result(row, "squares", from("squares"), "0.00"),
    result(
      row,
      "check",
      unlessEmpty(name, call(slopeCheckSpec, pitch, panelFieldName("minimumPitch"))),
      "General",
    ),
  ];
};

/** A total below the plane table. */
export const planeTotalCell = (layout: TakeoffLayout, column: "area" | "squares"): string =>
  planeCell(layout.planeTotal, column);

const totalContent = (layout: TakeoffLayout, column: number): CellContent | null => {
  if (column === PLANE_COLUMNS.name) return text(ALL_PLANES);
  if (column === PLANE_COLUMNS.area) return formula(`=SUM(${planeColumn(layout, "area")})`);
  if (column === PLANE_COLUMNS.squares) return formula(`=SUM(${planeColumn(layout, "squares")})`);
  return null;
};

const totalCell = (layout: TakeoffLayout, column: number): PlannedCell => ({
  row: layout.planeTotal,
  column,
  content: totalContent(layout, column),
  style: "total",
  numberFormat: column === PLANE_COLUMNS.squares ? "0.00" : "#,##0.0",
});

/** Section 1: the plane table, one row per roof plane. All other sections use it. */
export const planeSection = (layout: TakeoffLayout, planes: readonly PlaneInput[]): PlannedCell[] => [
  ...sectionHead(layout.planes, "1  Roof planes", PLANE_HEADINGS),
  ...rowsFrom(layout.planes, layout.roofRows).flatMap((row, index) => roofPlaneRow(row, index + 1)),
  ...rowsFrom(layout.planes + layout.roofRows, layout.handRows).flatMap((row, index) =>
    planeRow(layout, row, planes[index]),
  ),
  ...rowsFrom(0, PLANE_COLUMNS.check).map((column) => totalCell(layout, column)),
  ...(layout.roofRows > 0
    ? [result(layout.planeTotal, "check", missingPlanesWarning(layout.roofRows), "General")]
    : []),
];
