import { isBlank, type Cell, type Matrix } from "../cell";
import { counted } from "../describe";
import { InputError } from "../inputError";
import { cornerAfter, twiceSignedArea, type Outline, type Point } from "../outline";
import { sidesThatCross, areCollinear } from "../outlineCrossing";
import { notTaken } from "./bounds";
import type { RangeKind } from "./kind";
import { placeInFeet } from "./length";

const TAKES = "a range of two columns, x and y in ft on the sloped face, a row a corner";
const MOST_CORNERS = 500;
/** Corners nearer than this are one corner. */
const SAME_PLACE_FT = 1e-9;

export const isHeading = (row: readonly Cell[]): boolean =>
  row.every((cell) => typeof cell === "string" && /^\s*[a-z]/i.test(cell));

export const samePlace = (a: Point, b: Point): boolean =>
  Math.abs(a.x - b.x) <= SAME_PLACE_FT && Math.abs(a.y - b.y) <= SAME_PLACE_FT;

export const readCoordinate = (cell: Cell | undefined, label: string): number => {
  if (isBlank(cell)) throw new InputError(`${label} is missing`);
  return placeInFeet.read(cell, label);
};

/** Rows of x and y, without heading, closing corner and corners given twice in a row. */
const readCorners = (rows: Matrix, label: string): Point[] => {
  const corners = rows.map((row, index) => ({
    x: readCoordinate(row[0], `${label} x of corner ${index + 1}`),
    y: readCoordinate(row[1], `${label} y of corner ${index + 1}`),
  }));
  return corners.filter(
    (corner, index) => !samePlace(corner, cornerAfter(corners, index)) || corners.length === 1,
  );
};

/** The corners of one face, checked: at least three, no sides that cross, an area. */
const readOutline = (rows: Matrix, label: string): Outline => {
  if (rows.some((row) => row.length !== 2))
    throw new InputError(`${label} takes ${TAKES}, got ${counted(rows[0]?.length ?? 0, "column")}`);
  if (rows.length > MOST_CORNERS)
    throw new InputError(`${label} must have at most ${MOST_CORNERS} corners, got ${rows.length}`);
  const corners = readCorners(rows, label);
  if (corners.length < 3) throw new InputError(`${label} needs at least 3 corners, got ${corners.length}`);
  if (areCollinear(corners)) throw new InputError(`${label} encloses no area: its corners are in one line`);
  const crossing = sidesThatCross(corners);
  if (crossing)
    throw new InputError(`${label} crosses itself: side ${crossing[0]} meets side ${crossing[1]}`);
  if (!(Math.abs(twiceSignedArea(corners)) > SAME_PLACE_FT))
    throw new InputError(`${label} encloses no area`);
  return corners;
};

/** One face from rows none of which is blank, with or without a heading row. */
export const readFace = (rows: Matrix, label: string): Outline => {
  const [first] = rows;
  if (!first) throw notTaken(label, TAKES, null);
  return readOutline(isHeading(first) ? rows.slice(1) : rows, label);
};

/** One face: a heading row, blank rows around it and a repeated first corner at the end are passed over. */
export const outline: RangeKind<Outline> = {
  shape: "range",
  takes: TAKES,
  read: (cells, label) =>
    readFace(
      cells.filter((row) => !row.every(isBlank)),
      label,
    ),
};
