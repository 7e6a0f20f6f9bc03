import { isBlank, type Matrix } from "../cell";
import { sideCount, type Footprint } from "../footprint";
import { InputError } from "../inputError";
import { cornerAfter, type Outline, type Point } from "../outline";
import { sidesThatCross, areCollinear } from "../outlineCrossing";
import { blocksOf } from "./blocks";
import { notTaken } from "./bounds";
import { checkCourtyards, type NumberedRing } from "./courtyards";
import type { RangeKind } from "./kind";
import { isHeading, readCoordinate, samePlace } from "./outline";

const TAKES =
  "a range of two columns, x and y of the wall corners in ft, a row a corner; a courtyard's corners follow after a blank row";
const FEWEST_SIDES = 3;
const MOST_SIDES = 60;

/** The corners of one ring as typed, a repeated first corner at the end left out. `first` is its first corner's number. */
const readRing = (rows: Matrix, first: number, label: string): Outline => {
  const corners = rows.map((row, index) => ({
    x: readCoordinate(row[0], `${label} x of corner ${first + index}`),
    y: readCoordinate(row[1], `${label} y of corner ${first + index}`),
  }));
  const isClosed = corners.length > 1 && samePlace(corners[0] as Point, corners.at(-1) as Point);
  const ring = isClosed ? corners.slice(0, -1) : corners;
  if (ring.length < FEWEST_SIDES)
    throw new InputError(`${label} needs at least ${FEWEST_SIDES} corners in each ring, got ${ring.length}`);
  const twin = ring.findIndex((corner, index) => samePlace(corner, cornerAfter(ring, index)));
  if (twin >= 0)
    throw new InputError(`${label} has no length on side ${first + twin}: its two corners are one place`);
  return ring;
};

const checkRing = ({ ring, first }: NumberedRing, label: string): void => {
  if (areCollinear(ring)) throw new InputError(`${label} encloses no area: its corners are in one line`);
  const crossing = sidesThatCross(ring);
  if (crossing)
    throw new InputError(
      `${label} crosses itself: side ${first - 1 + crossing[0]} meets side ${first - 1 + crossing[1]}`,
    );
};

/** The rings with their sides numbered on from one to the next. */
const readRings = (rowRings: readonly Matrix[], label: string): NumberedRing[] => {
  const rings: NumberedRing[] = [];
  let first = 1;
  for (const rows of rowRings) {
    const ring = readRing(rows, first, label);
    rings.push({ ring, first });
    first += ring.length;
  }
  return rings;
};

/** The building's wall lines. Corners in line stay corners, so that sides keep the numbers that a person counts. */
export const footprint: RangeKind<Footprint> = {
  shape: "range",
  takes: TAKES,
  read: (cells, label) => {
    const [top] = cells;
    if (!top || cells.some((row) => row.length !== 2)) throw notTaken(label, TAKES, top?.[0] ?? null);
    const headed = cells.findIndex((row) => !row.every(isBlank));
    const heading = cells[headed];
    const rings = readRings(blocksOf(heading && isHeading(heading) ? cells.slice(headed + 1) : cells), label);
    const result = rings.map(({ ring }) => ring);
    const sides = sideCount(result);
    if (sides < FEWEST_SIDES)
      throw new InputError(`${label} needs at least ${FEWEST_SIDES} corners, got none`);
    if (sides > MOST_SIDES)
      throw new InputError(`${label} must have at most ${MOST_SIDES} sides, got ${sides}`);
    for (const ring of rings) checkRing(ring, label);
    checkCourtyards(rings, label);
    return result;
  },
};
