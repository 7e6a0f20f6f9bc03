import type { Cell, Matrix } from "../cell";
import { sideCount, type Footprint } from "../footprint";
import { InputError } from "../inputError";
import { cornerAfter, twiceSignedArea, type Outline, type Point } from "../outline";
import { segmentsMeet, sidesThatCross } from "../outlineCrossing";
import { isWithin } from "../outlineWithin";
import { notTaken } from "./bounds";
import type { RangeKind } from "./kind";
import { isBlank, isHeading, readCoordinate, samePlace } from "./outline";

const TAKES =
  "a range of two columns, x and y of the wall corners in ft, a row a corner; a courtyard's corners follow after a blank row";
const FEWEST_SIDES = 3;
const MOST_SIDES = 60;

/** Rows between blank rows, ring by ring. */
const ringsOfRows = (cells: Matrix): (readonly Cell[])[][] => {
  const rings: (readonly Cell[])[][] = [[]];
  for (const row of cells)
    if (!row.every(isBlank)) rings.at(-1)?.push(row);
    else if (rings.at(-1)?.length) rings.push([]);
  return rings.filter((ring) => ring.length > 0);
};

/** The corners of one ring as typed, a repeated first corner at the end left out. `first` is its first corner's number. */
const readRing = (rows: Matrix, first: number, label: string): Outline => {
  const corners = rows.map((row, index) => ({
    x: readCoordinate(row[0], `${label} x of corner ${first + index}`),
    y: readCoordinate(row[1], `${label} y of corner ${first + index}`),
  }));
  const [start, end] = [corners[0], corners.at(-1)];
  const ring = corners.length > 1 && start && end && samePlace(start, end) ? corners.slice(0, -1) : corners;
  if (ring.length < FEWEST_SIDES)
    throw new InputError(`${label} needs at least ${FEWEST_SIDES} corners in each ring, got ${ring.length}`);
  const twin = ring.findIndex((corner, index) => samePlace(corner, cornerAfter(ring, index)));
  if (twin >= 0)
    throw new InputError(`${label} has no length on side ${first + twin}: its two corners are one place`);
  return ring;
};

const checkRing = (ring: Outline, first: number, label: string): void => {
  const crossing = sidesThatCross(ring);
  if (crossing)
    throw new InputError(
      `${label} crosses itself: side ${first - 1 + crossing[0]} meets side ${first - 1 + crossing[1]}`,
    );
  if (!(Math.abs(twiceSignedArea(ring)) > 0)) throw new InputError(`${label} encloses no area`);
};

interface NumberedRing {
  readonly ring: Outline;
  readonly first: number;
}

/** Refuses a courtyard that meets another ring, stands outside the first, or within another courtyard. */
const checkCourtyards = (rings: readonly NumberedRing[], label: string): void => {
  rings.forEach(({ ring, first }, index) => {
    for (const other of rings.slice(0, index)) {
      const meeting = ringsMeet(ring, other.ring);
      if (meeting)
        throw new InputError(
          `${label} crosses itself: side ${other.first + meeting[1]} meets side ${first + meeting[0]}`,
        );
    }
    const around = rings
      .slice(1)
      .filter((other) => other.ring !== ring && isWithin(other.ring, ring[0] as Point));
    if (index > 0 && (around.length > 0 || !isWithin(rings[0]?.ring ?? [], ring[0] as Point)))
      throw new InputError(
        `${label} has a courtyard (sides ${first} to ${first + ring.length - 1}) that isn't inside the building`,
      );
  });
};

/** The first sides, counted from 0, of two rings that touch. */
const ringsMeet = (ring: Outline, other: Outline): readonly [number, number] | undefined => {
  for (const [i, a] of ring.entries())
    for (const [j, c] of other.entries())
      if (segmentsMeet(a, cornerAfter(ring, i), c, cornerAfter(other, j))) return [i, j];
  return undefined;
};

/** The building's wall lines. Corners in line stay corners, so that sides keep the numbers that a person counts. */
export const footprint: RangeKind<Footprint> = {
  shape: "range",
  takes: TAKES,
  read: (cells, label) => {
    const [first] = cells;
    if (!first || cells.some((row) => row.length !== 2)) throw notTaken(label, TAKES, first?.[0] ?? null);
    const rowRings = ringsOfRows(cells);
    const headed = rowRings[0]?.[0];
    const rows = headed && isHeading(headed) ? [rowRings[0]?.slice(1) ?? [], ...rowRings.slice(1)] : rowRings;
    let next = 1;
    const rings = rows.map((ringRows) => {
      const numbered = { ring: readRing(ringRows, next, label), first: next };
      checkRing(numbered.ring, numbered.first, label);
      next += numbered.ring.length;
      return numbered;
    });
    const result = rings.map(({ ring }) => ring);
    const sides = sideCount(result);
    if (sides > MOST_SIDES)
      throw new InputError(`${label} must have at most ${MOST_SIDES} sides, got ${sides}`);
    checkCourtyards(rings, label);
    return result;
  },
};
