import type { Cell } from "../../shared/cell";
import { writeInches } from "../../shared/lengthText";
import { countOf, INCHES_RESULT, TEXT_RESULT } from "../../shared/result";
import { defineTable } from "../../shared/spec/spec";
import { layOut } from "./engine/layOut";
import type { Layout, ListedCut, Ring } from "./engine/layoutResult";
import { GABLE_4_BY_2, PLAIN_PANEL } from "./layoutExamples";
import { LAYING_PARAMETERS, PLANE_PARAMETERS, TAPE_PARAMETER } from "./layoutParameters";
import { tapeText } from "./tapeText";

/** The corners in order around the piece, in inches right and up from the lower left of its bounding box. */
export const shapeText = (rings: readonly Ring[]): string => {
  const corners = rings.flat();
  const leftIn = Math.min(...corners.map(({ xIn }) => xIn));
  const lowIn = Math.min(...corners.map(({ yIn }) => yIn));
  const cornerText = (xIn: number, yIn: number): string =>
    `(${writeInches(xIn - leftIn, 16)}, ${writeInches(yIn - lowIn, 16)})`;
  return rings.map((ring) => ring.map(({ xIn, yIn }) => cornerText(xIn, yIn)).join(" ")).join("; hole ");
};

const sourceText = ({ panelNumber, isOffcut }: ListedCut): string =>
  isOffcut ? `off-cut of panel ${panelNumber}` : `panel ${panelNumber}`;

const cutRow = (course: number, cut: ListedCut, tape: boolean): Cell[] => [
  course,
  cut.piece,
  cut.positionIn,
  cut.coverIn,
  cut.blankIn,
  shapeText(cut.rings),
  cut.keepsLock,
  sourceText(cut),
  ...(tape ? [cut.positionIn, cut.coverIn, cut.blankIn].map(tapeText) : []),
];

/** One row per cut piece, in the order of laying. A plane with none has one row that says so. */
const cutRows = ({ courses }: Layout, tape: boolean): Cell[][] => {
  const rows = courses.flatMap(({ course, cuts }) => cuts.map((cut) => cutRow(course, cut, tape)));
  if (rows.length > 0) return rows;
  return [["no cuts", ...Array.from({ length: tape ? 10 : 7 }, () => "")]];
};

export const cutListSpec = defineTable({
  id: "CUTLIST",
  concept: "layout",
  summary:
    "Every piece of a roof face that isn't a whole panel: where it goes, how to mark it, and what to cut it from.",
  parameters: [...PLANE_PARAMETERS, ...LAYING_PARAMETERS, TAPE_PARAMETER],
  columns: [
    { heading: "course", result: countOf("course") },
    { heading: "piece", result: countOf("piece") },
    { heading: "position (in)", result: INCHES_RESULT },
    { heading: "cover (in)", result: INCHES_RESULT },
    { heading: "width to cut (in)", result: INCHES_RESULT },
    { heading: "shape on the face (in)", result: TEXT_RESULT },
    { heading: "keeps lock", result: TEXT_RESULT },
    { heading: "cut from", result: TEXT_RESULT },
    { heading: "position (tape)", result: TEXT_RESULT },
    { heading: "cover (tape)", result: TEXT_RESULT },
    { heading: "width to cut (tape)", result: TEXT_RESULT },
  ],
  formula:
    "position from the start side; width to cut = cover + fold at a gable, + slant allowance at a hip or valley; " +
    "two pieces of one panel: one keeps its left lock, one its right, widths + cut loss + lock loss ≤ panel width",
  source: "common practice, no published source",
  examples: [
    {
      args: [GABLE_4_BY_2, PLAIN_PANEL],
      result: [
        [
          "course",
          "piece",
          "position (in)",
          "cover (in)",
          "width to cut (in)",
          "shape on the face (in)",
          "keeps lock",
          "cut from",
        ],
        [2, 1, 0, 12, 12, "(0, 0) (12, 0) (12, 12) (0, 12)", "right", "panel 1"],
        [2, 3, 36, 12, 12, "(0, 0) (12, 0) (12, 12) (0, 12)", "left", "off-cut of panel 1"],
      ],
      from: "course 1 is two whole panels; course 2 begins and ends with half of one",
    },
  ],
  calculate: (outline, panel, openings = [], start, reuse, tape) =>
    cutRows(layOut({ outline, openings }, panel, start, reuse), tape),
});
