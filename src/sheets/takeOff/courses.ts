import { coursesSpec } from "../../../functions/courses/courses";
import { topCourseSpec } from "../../../functions/courses/topCourse";
import { starterSetsSpec } from "../../../functions/stagger/starterSets";
import { a1 } from "../address";
import { call, isEmpty, unlessEmpty } from "../formula";
import { panelFieldName } from "../panelSheet";
import { formula, type PlannedCell } from "../plan";
import type { TakeOffLayout } from "./layout";
import { gableEdgesOf, planeCell } from "./planes";
import { rowsFrom, sectionHead } from "./section";

const HEADINGS = ["Plane", "Courses", "Top course (in)", "Sets, one gable", "Starter sets, all gables"];

const courseRow = (row: number, planeRow: number): PlannedCell[] => {
  const name = planeCell(planeRow, "name");
  const slope = planeCell(planeRow, "slopeUsed");
  const gableEdges = gableEdgesOf(planeRow);
  const height = panelFieldName("exposedHeightIn");
  const setsOfOneEdge = call(starterSetsSpec, slope, height, panelFieldName("staggerPattern"));
  const contents: [string, string][] = [
    [unlessEmpty(name, name), "General"],
    [unlessEmpty(slope, call(coursesSpec, slope, height)), "#,##0"],
    [unlessEmpty(slope, call(topCourseSpec, slope, height)), "0.00"],
    [`=IF(OR(${isEmpty(slope)},${gableEdges}=0),"",${setsOfOneEdge})`, "#,##0"],
    [unlessEmpty(a1({ row, column: 3 }), `${a1({ row, column: 3 })}*${gableEdges}`), "#,##0"],
  ];
  return contents.map(([content, numberFormat], column) => ({
    row,
    column,
    content: formula(content),
    style: "result",
    numberFormat,
  }));
};

/** Courses and starters of every plane, in the plane table's order. */
export const courseSection = (layout: TakeOffLayout): PlannedCell[] => [
  ...sectionHead(layout.courses, "2  Courses and starters", HEADINGS),
  ...rowsFrom(layout.courses, layout.planeRows).flatMap((row, index) =>
    courseRow(row, layout.planes + index),
  ),
];
