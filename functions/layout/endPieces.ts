import type { Cell } from "../../shared/cell";
import { countOf, INCHES_RESULT, TEXT_RESULT } from "../../shared/result";
import { defineTable } from "../../shared/spec/spec";
import { layOut } from "./engine/layOut";
import { shapeText } from "./cutList";
import type { Layout, ListedCourse, ListedCut } from "./engine/layoutResult";
import { GABLE_4_BY_2, GABLE_PANEL } from "./layoutExamples";
import { LAYING_PARAMETERS, PLANE_PARAMETERS } from "./layoutParameters";

/** Pieces whose measurements all differ by less than this are cut alike. */
const ALIKE_IN = 1 / 64;

/** A piece that fills its course is bent at both ends. */
type End = "starter" | "closing" | "only piece";

interface EndPiece {
  readonly end: End;
  readonly cut: ListedCut;
  readonly course: number;
}

/** The cut pieces at the ends of a course. A whole panel there needs no work on the ground. */
const endsOf = ({ course, cuts, whole }: ListedCourse): EndPiece[] => {
  const last = whole + cuts.length;
  const at = (piece: number, end: End): EndPiece[] =>
    cuts.filter((cut) => cut.piece === piece).map((cut) => ({ end, cut, course }));
  return last === 1 ? at(1, "only piece") : [...at(1, "starter"), ...at(last, "closing")];
};

const distinct = (numbers: readonly number[]): number[] =>
  numbers.filter(
    (number, index) => numbers.findIndex((each) => Math.abs(each - number) < ALIKE_IN) === index,
  );

/** Whether a piece is a rectangle, so that its bend is a square line across. */
const isSquare = ({ rings }: ListedCut): boolean => {
  const corners = rings.flat();
  return (
    corners.length === 4 &&
    distinct(corners.map(({ xIn }) => xIn)).length === 2 &&
    distinct(corners.map(({ yIn }) => yIn)).length === 2
  );
};

/** How to mark a piece; a slanted one by its corners. */
const shapeOf = (cut: ListedCut): string => (isSquare(cut) ? "" : shapeText(cut.rings));

const areAlike = (a: EndPiece, b: EndPiece): boolean =>
  a.end === b.end &&
  Math.abs(a.cut.coverIn - b.cut.coverIn) < ALIKE_IN &&
  Math.abs(a.cut.blankIn - b.cut.blankIn) < ALIKE_IN &&
  shapeOf(a.cut) === shapeOf(b.cut);

const groupsOf = (pieces: readonly EndPiece[]): EndPiece[][] =>
  pieces.reduce<EndPiece[][]>((groups, piece) => {
    const alike = groups.find(([first]) => first && areAlike(first, piece));
    return alike
      ? groups.map((group) => (group === alike ? [...group, piece] : group))
      : [...groups, [piece]];
  }, []);

/** Where to mark the bend of a square end. A slant has none; a piece bent at both ends is marked on the job. */
const bendMark = ({ end, cut }: EndPiece): Cell => {
  const foldIn = cut.blankIn - cut.coverIn;
  return end !== "only piece" && isSquare(cut) && foldIn > ALIKE_IN ? foldIn : "";
};

const groupRow = ([first, ...others]: readonly EndPiece[]): Cell[] => {
  if (!first) return [];
  const { end, cut } = first;
  const courses = [first, ...others].map(({ course }) => course);
  return [end, cut.coverIn, bendMark(first), cut.blankIn, courses.length, courses.join(", "), shapeOf(cut)];
};

/** One row for each different starter and closing piece, starters first. */
const endPieceRows = ({ courses }: Layout): Cell[][] => {
  const pieces = courses.flatMap(endsOf);
  const ends: readonly End[] = ["starter", "closing", "only piece"];
  const rows = ends.flatMap((end) => groupsOf(pieces.filter((piece) => piece.end === end))).map(groupRow);
  return rows.length > 0 ? rows : [["no cuts", "", "", "", "", "", ""]];
};

export const endPiecesSpec = defineTable({
  id: "ENDPIECES",
  concept: "layout",
  summary: "The starters and closing pieces of a roof face, grouped: what to cut and bend on the ground.",
  parameters: [...PLANE_PARAMETERS, LAYING_PARAMETERS[0]],
  columns: [
    { heading: "end", result: TEXT_RESULT },
    { heading: "cover (in)", result: INCHES_RESULT },
    { heading: "bend mark from cut (in)", result: INCHES_RESULT },
    { heading: "blank to cut (in)", result: INCHES_RESULT },
    { heading: "pieces", result: countOf("pieces") },
    { heading: "courses", result: TEXT_RESULT },
    { heading: "shape where slanted (in)", result: TEXT_RESULT },
  ],
  formula:
    "the first and last pieces of every course; blank = cover + fold at a gable, + slant allowance at a hip or valley",
  source: "common practice, no published source",
  examples: [
    {
      args: [GABLE_4_BY_2, GABLE_PANEL],
      result: [
        [
          "end",
          "cover (in)",
          "bend mark from cut (in)",
          "blank to cut (in)",
          "pieces",
          "courses",
          "shape where slanted (in)",
        ],
        ["starter", 22.5, 2.5, 25, 1, "1", ""],
        ["starter", 10.5, 2.5, 13, 1, "2", ""],
        ["closing", 22.5, 2.5, 25, 1, "1", ""],
        ["closing", 10.5, 2.5, 13, 1, "2", ""],
      ],
      from: "two courses of 48 in: joints at 24 in, then at 12 and 36 in; setback 1 1/2 in, fold 2 1/2 in at both gables",
    },
  ],
  calculate: (outline, panel, openings = [], start) =>
    endPieceRows(layOut({ outline, openings }, panel, start, true)),
});
