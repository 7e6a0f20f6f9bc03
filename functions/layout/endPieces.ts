import type { Cell } from "../../shared/cell";
import { countOf, INCHES_RESULT, TEXT_RESULT } from "../../shared/result";
import { defineTable } from "../../shared/spec";
import { layOut } from "./engine/layOut";
import type { Layout, ListedCourse, ListedEnd } from "./engine/listing";
import { GABLE_4_BY_2, GABLE_PANEL } from "./layoutExamples";
import { LAYING_PARAMETERS, PLANE_PARAMETERS } from "./layoutParameters";

const ENDS = ["starter", "closing"] as const;
type End = (typeof ENDS)[number];

/** Pieces closer than this in every measure are marked and cut alike. */
const ALIKE_IN = 1 / 64;

interface AlikePieces {
  readonly end: End;
  readonly measures: ListedEnd;
  readonly courses: readonly number[];
}

const areAlike = (a: ListedEnd, b: ListedEnd): boolean =>
  Math.abs(a.coverIn - b.coverIn) < ALIKE_IN && Math.abs(a.blankIn - b.blankIn) < ALIKE_IN;

const addPiece = (
  groups: readonly AlikePieces[],
  end: End,
  course: number,
  piece: ListedEnd,
): AlikePieces[] => {
  const index = groups.findIndex((group) => areAlike(group.measures, piece));
  return index < 0
    ? [...groups, { end, measures: piece, courses: [course] }]
    : groups.map((group, at) => (at === index ? { ...group, courses: [...group.courses, course] } : group));
};

const groupsOf = (courses: readonly ListedCourse[], end: End): AlikePieces[] =>
  courses.reduce<AlikePieces[]>((groups, course) => {
    const piece = course[end];
    return piece ? addPiece(groups, end, course.course, piece) : groups;
  }, []);

/** A row for each starter and each closing piece that differs from the others, in the order in which it is met. */
export const endPieceRows = ({ courses }: Layout): Cell[][] =>
  ENDS.flatMap((end) => groupsOf(courses, end)).map(
    ({ end, measures: { coverIn, blankIn }, courses: numbers }) => [
      end,
      coverIn,
      blankIn - coverIn,
      blankIn,
      numbers.length,
      numbers.join(", "),
    ],
  );

export const endPiecesSpec = defineTable({
  id: "ENDPIECES",
  concept: "layout",
  summary:
    "The starters and closing pieces of a roof face, alike ones together: what to cut and bend on the ground.",
  parameters: [...PLANE_PARAMETERS, LAYING_PARAMETERS[0]],
  columns: [
    { heading: "end", result: TEXT_RESULT },
    { heading: "cover (in)", result: INCHES_RESULT },
    { heading: "bend mark from cut (in)", result: INCHES_RESULT },
    { heading: "blank to cut (in)", result: INCHES_RESULT },
    { heading: "pieces", result: countOf("pieces") },
    { heading: "courses", result: TEXT_RESULT },
  ],
  formula:
    "the first and the last piece of every course; blank = cover + fold at a gable, + slant allowance at a hip or valley",
  source: "common practice, no published source",
  examples: [
    {
      args: [GABLE_4_BY_2, GABLE_PANEL],
      result: [
        ["end", "cover (in)", "bend mark from cut (in)", "blank to cut (in)", "pieces", "courses"],
        ["starter", 22.5, 2.5, 25, 1, "1"],
        ["starter", 10.5, 2.5, 13, 1, "2"],
        ["closing", 22.5, 2.5, 25, 1, "1"],
        ["closing", 10.5, 2.5, 13, 1, "2"],
      ],
      from: "two courses of 48 in: joints at 24 in, then at 12 and 36 in; setback 1 1/2 in, fold 2 1/2 in at both gables",
    },
  ],
  calculate: (outline, panel, openings = [], start) =>
    endPieceRows(layOut({ outline, openings }, panel, start, true)),
});
