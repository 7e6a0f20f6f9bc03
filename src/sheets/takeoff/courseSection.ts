import { coursesSpec } from "../../../functions/courses/courses";
import { topCourseSpec } from "../../../functions/courses/topCourse";
import { iceBarrierSpec } from "../../../functions/deck/iceBarrier";
import { panelCountSpec } from "../../../functions/layout/panelCount";
import { starterSetsSpec } from "../../../functions/stagger/starterSets";
import { trimPiecesSpec } from "../../../functions/trim/trimPieces";
import { INCHES_PER_FOOT } from "../../../shared/units";
import { feetSpec } from "../../../functions/measure/feet";
import { a1, a1Range } from "../../workbook/address";
import { call, isEmpty, unlessEmpty } from "../../workbook/formula";
import { PANEL_NAME, panelFieldName } from "../panelSheet";
import { formula, text, type PlannedCell } from "../../workbook/plan";
import { deckCell, orPanelValue } from "./deckCells";
import type { TakeoffLayout } from "./takeoffLayout";
import { gableEdgeCount, planeOutline, planeCell } from "./planeSection";
import { roofPlaneOutline } from "./roofFormulas";
import { rowsFrom, sectionHead } from "./sectionHead";

const HEADINGS = [
  "Plane",
  "Courses",
  "Top course (in)",
  "Sets, one gable",
  "Starter sets, all gables",
  "Panels, laid",
  "Underlayment (ft)",
  "Ice barrier (ft)",
];
const [SETS_OF_ONE, PANELS, UNDERLAYMENT, ICE_BARRIER] = [3, 5, 6, 7];

const totalCell = (layout: TakeoffLayout, column: number): string =>
  a1({ row: layout.courses + layout.planeRows, column });

/** The cell with the total number of panels, each one laid out. */
export const panelsLaidCell = (layout: TakeoffLayout): string => totalCell(layout, PANELS);

/** The cell with the total feet of underlayment. Rolls are rounded up once, for the whole roof. */
export const underlaymentFeetCell = (layout: TakeoffLayout): string => totalCell(layout, UNDERLAYMENT);

/** The cell with the total feet of ice barrier along all eaves. */
export const iceBarrierFeetCell = (layout: TakeoffLayout): string => totalCell(layout, ICE_BARRIER);

/** Feet of ice barrier along one plane's eave, all courses added; blank if no overhang is given. */
const iceBarrierFeet = (layout: TakeoffLayout, planeRow: number): string => {
  const overhang = deckCell(layout, "overhang");
  const courses = call(
    iceBarrierSpec,
    planeCell(planeRow, "pitch"),
    overhang,
    `IF(${isEmpty(deckCell(layout, "wall"))},0,${deckCell(layout, "wall")})`,
    orPanelValue(deckCell(layout, "iceWidth"), "rollWidthIn"),
    panelFieldName("headLapIn"),
  );
  return `=IF(OR(${isEmpty(planeCell(planeRow, "slopeUsed"))},${isEmpty(overhang)}),"",${courses}*${call(feetSpec, planeCell(planeRow, "eave"))})`;
};

/**
 * Feet of underlayment for one plane, all courses added and wrapped over every edge. On a plane that narrows evenly, a course
 * is as long as the plane is wide at the course's lower edge. Together that is the mean width for each course, plus once the
 * difference between the eave and the mean.
 */
const underlaymentFeet = (planeRow: number): string => {
  const [area, slope, eave] = (["area", "slopeUsed", "eave"] as const).map((column) =>
    planeCell(planeRow, column),
  ) as [string, string, string];
  const wraps = `2*${panelFieldName("edgeWrapIn")}/${INCHES_PER_FOOT}`;
  const courses = call(
    trimPiecesSpec,
    `${slope}+${wraps}`,
    panelFieldName("rollWidthIn"),
    panelFieldName("headLapIn"),
  );
  const mean = `${area}/${slope}`;
  return `${courses}*(${mean}+${wraps})+MAX(0,${call(feetSpec, eave)}-${mean})`;
};

const courseRow = (
  layout: TakeoffLayout,
  row: number,
  planeRow: number,
  gableEdges: string,
  outline: string,
): PlannedCell[] => {
  const name = planeCell(planeRow, "name");
  const slope = planeCell(planeRow, "slopeUsed");
  const area = planeCell(planeRow, "area");
  const height = panelFieldName("exposedHeightIn");
  const setsOfOneEdge = call(starterSetsSpec, slope, height, panelFieldName("staggerPattern"));
  const setsOfOne = a1({ row, column: SETS_OF_ONE });
  const contents: [string, string][] = [
    [unlessEmpty(name, name), "General"],
    [unlessEmpty(slope, call(coursesSpec, slope, height)), "#,##0"],
    [unlessEmpty(slope, call(topCourseSpec, slope, height)), "0.00"],
    [`=IF(OR(${isEmpty(slope)},${gableEdges}=0),"",${setsOfOneEdge})`, "#,##0"],
    [unlessEmpty(setsOfOne, `${setsOfOne}*${gableEdges}`), "#,##0"],
    [unlessEmpty(area, call(panelCountSpec, outline, PANEL_NAME)), "#,##0"],
    [unlessEmpty(area, underlaymentFeet(planeRow)), "#,##0.00"],
    [iceBarrierFeet(layout, planeRow), "#,##0.00"],
  ];
  return contents.map(([content, numberFormat], column) => ({
    row,
    column,
    content: formula(content),
    style: "result",
    numberFormat,
  }));
};

/** A plane from the footprint has one gable edge per rake; a plane measured by hand has as many as were typed. */
const rowOfPlane = (layout: TakeoffLayout, index: number): PlannedCell[] => {
  const planeRow = layout.planes + index;
  const isFromRoof = index < layout.roofRows;
  return courseRow(
    layout,
    layout.courses + index,
    planeRow,
    isFromRoof ? `N(${planeCell(planeRow, "gableEdges")})` : gableEdgeCount(planeRow),
    isFromRoof ? roofPlaneOutline(index + 1) : planeOutline(planeRow),
  );
};

const totalRow = (layout: TakeoffLayout): PlannedCell[] => {
  const row = layout.courses + layout.planeRows;
  const sum = (column: number): string =>
    `=SUM(${a1Range({ row: layout.courses, column }, { row: row - 1, column })})`;
  return HEADINGS.map((_, column) => ({
    row,
    column,
    content: column === 0 ? text("All planes") : column >= PANELS ? formula(sum(column)) : null,
    style: "total",
    numberFormat: column >= UNDERLAYMENT ? "#,##0.00" : "#,##0",
  }));
};

/** Section 2: courses, starters and panels of every plane, in the order of the plane table. */
export const courseSection = (layout: TakeoffLayout): PlannedCell[] => [
  ...sectionHead(layout.courses, "2  Courses, starters and panels", HEADINGS),
  ...rowsFrom(0, layout.planeRows).flatMap((index) => rowOfPlane(layout, index)),
  ...totalRow(layout),
];
