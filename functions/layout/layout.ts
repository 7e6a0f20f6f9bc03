import type { Cell } from "../../shared/cell";
import { countOf, FEET_RESULT, INCHES_RESULT, TEXT_RESULT } from "../../shared/result";
import { defineTable } from "../../shared/spec/spec";
import { inchesToFeet } from "../../shared/units";
import { layOut } from "./engine/layOut";
import type { Layout, ListedCourse } from "./engine/layoutResult";
import { GABLE_4_BY_2, GABLE_PANEL } from "./layoutExamples";
import { LAYING_PARAMETERS, PLANE_PARAMETERS, TAPE_PARAMETER } from "./layoutParameters";
import { tapeText } from "./tapeText";

const tapeCells = ({ lineIn, starter, closing }: ListedCourse): string[] =>
  [lineIn, starter?.coverIn, starter?.blankIn, closing?.blankIn].map(tapeText);

const courseRow = (course: ListedCourse, tape: boolean): Cell[] => [
  course.course,
  inchesToFeet(course.lineIn),
  course.starter?.coverIn ?? "",
  course.starter?.blankIn ?? "",
  course.whole,
  course.cuts.length,
  course.cuts.filter(({ isOffcut }) => isOffcut).length,
  course.closing?.blankIn ?? "",
  course.warnings.join("; "),
  ...(tape ? tapeCells(course) : []),
];

const totalRow = ({ courses, whole, cut, fromOffcuts }: Layout, tape: boolean): Cell[] => {
  const warnings = courses.reduce((sum, course) => sum + course.warnings.length, 0);
  const inWords = warnings === 0 ? "" : `${warnings} ${warnings === 1 ? "warning" : "warnings"}`;
  return ["total", "", "", "", whole, cut, fromOffcuts, "", inWords, ...(tape ? ["", "", "", ""] : [])];
};

/** One row per course from the eave up, then the totals. */
const layoutRows = (layout: Layout, tape: boolean): Cell[][] => [
  ...layout.courses.map((course) => courseRow(course, tape)),
  totalRow(layout, tape),
];

export const layoutSpec = defineTable({
  id: "LAYOUT",
  concept: "layout",
  summary:
    "Every course of a roof face: chalk line, starter, whole and cut panels, closing piece and warnings.",
  parameters: [...PLANE_PARAMETERS, ...LAYING_PARAMETERS, TAPE_PARAMETER],
  columns: [
    { heading: "course", result: countOf("course") },
    { heading: "line (ft)", result: FEET_RESULT },
    { heading: "starter cover (in)", result: INCHES_RESULT },
    { heading: "starter blank (in)", result: INCHES_RESULT },
    { heading: "whole", result: countOf("panels") },
    { heading: "cut", result: countOf("pieces") },
    { heading: "from off-cuts", result: countOf("pieces") },
    { heading: "closing piece (in)", result: INCHES_RESULT },
    { heading: "warnings", result: TEXT_RESULT },
    { heading: "line (tape)", result: TEXT_RESULT },
    { heading: "starter cover (tape)", result: TEXT_RESULT },
    { heading: "starter blank (tape)", result: TEXT_RESULT },
    { heading: "closing piece (tape)", result: TEXT_RESULT },
  ],
  formula:
    "course by course: first joint = fraction of the step × panel width + shift, then a joint at every panel width; " +
    "blank = cover + fold at a gable, + slant allowance at a hip or valley",
  source: "common practice, no published source",
  examples: [
    {
      args: [GABLE_4_BY_2, GABLE_PANEL],
      result: [
        [
          "course",
          "line (ft)",
          "starter cover (in)",
          "starter blank (in)",
          "whole",
          "cut",
          "from off-cuts",
          "closing piece (in)",
          "warnings",
        ],
        [1, 0, 22.5, 25, 0, 2, 0, 25, ""],
        [2, 1, 10.5, 13, 1, 2, 0, 13, ""],
        ["total", "", "", "", 1, 4, 0, "", ""],
      ],
      from: "cover 24 − 1 1/2 and 12 − 1 1/2, blank 2 1/2 more, at both gables; 13 + 13 in are more than one panel",
    },
  ],
  calculate: (outline, panel, openings = [], start, reuse, tape) =>
    layoutRows(layOut({ outline, openings }, panel, start, reuse), tape),
});
