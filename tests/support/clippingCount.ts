import * as clipping from "polygon-clipping";
import type { Outline } from "../../shared/outline";
import type { Counted, CountedPiece } from "./countedPiece";

type Spot = [number, number];
type Rings = Spot[][];

const NEAR_IN = 1e-6;
/** Places are taken a little smaller, so that parts which only touch in a point on a chalk line or a joint fall apart. */
const INSET_IN = 1e-5;

/** An outline and openings in inches, as a general polygon library takes them. */
export const regionOf = (outline: Outline, openings: readonly Outline[]): clipping.MultiPolygon => {
  const ring = (corners: Outline): Spot[] => corners.map(({ x, y }) => [x * 12, y * 12]);
  return clipping.difference([ring(outline)], ...openings.map((opening) => [ring(opening)]));
};

export const boxOf = (left: number, low: number, right: number, high: number): Rings => [
  [
    [left, low],
    [right, low],
    [right, high],
    [left, high],
    [left, low],
  ],
];

/** Each side of closed rings, with what is inside on its left. */
const sidesOf = (rings: Rings): [Spot, Spot][] =>
  rings.flatMap((ring) => ring.slice(1).map((to, index): [Spot, Spot] => [ring[index] as Spot, to]));

const areaOfRings = (rings: Rings): number =>
  sidesOf(rings).reduce((sum, [[ax, ay], [bx, by]]) => sum + (ax * by - bx * ay) / 2, 0);

export const areaOfRegion = (region: clipping.MultiPolygon): number =>
  region.reduce((sum, rings) => sum + areaOfRings(rings), 0);

/** Whether a place is inside: a line from it to the right crosses an odd number of sides. */
export const contains = (region: clipping.MultiPolygon, [x, y]: Spot): boolean =>
  region
    .flatMap(sidesOf)
    .filter(([[ax, ay], [bx, by]]) => ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax))
    .length %
    2 ===
  1;

const distanceTo = ([x, y]: Spot, [[ax, ay], [bx, by]]: [Spot, Spot]): number => {
  const [dx, dy] = [bx - ax, by - ay];
  const share = Math.min(1, Math.max(0, ((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy)));
  return Math.hypot(x - ax - share * dx, y - ay - share * dy);
};

interface ClippingPanel {
  readonly widthIn: number;
  readonly heightIn: number;
  readonly slantAllowanceIn: number;
}

/** A joint may be met along a part of it only, so it is tried all along. */
const SHARES = Array.from({ length: 24 }, (_, index) => (index + 0.47) / 24);

/** The joints at the left and at the right of a place. */
type Joints = readonly [number, number];

/**
 * Where a side meets the chalk line that its end was kept short of: on a side that hardly rises, the little in height
 * is much in length.
 */
const carriedOn = ([x, y]: Spot, [[ax, ay], [bx, by]]: [Spot, Spot], heightIn: number): number => {
  const lineIn = Math.round(y / heightIn) * heightIn;
  const isShort = Math.abs(y - lineIn) < 2 * INSET_IN;
  return isShort ? x + ((lineIn - y) * (bx - ax)) / (by - ay) : x;
};

/** How far out an end goes. Level sides don't count: on a chalk line the library may leave a spike without area. */
interface End {
  readonly keeps: boolean;
  readonly coverIn: number;
  readonly blankIn: number;
}

const endOf = (
  rings: Rings,
  side: 1 | -1,
  [nearIn, farIn]: Joints,
  region: clipping.MultiPolygon,
  slants: readonly [Spot, Spot][],
  { slantAllowanceIn, heightIn }: ClippingPanel,
): End => {
  const jointIn = side < 0 ? nearIn : farIn;
  const facing = sidesOf(rings).filter(([[, ay], [, by]]) => (by - ay) * side > NEAR_IN);
  const reaches = facing.map((facingSide) => {
    const [[ax, ay], [bx, by]] = facingSide;
    const isOnJoint = Math.abs(ax - jointIn) < 2 * INSET_IN && Math.abs(bx - jointIn) < 2 * INSET_IN;
    const isMet =
      isOnJoint && SHARES.some((share) => contains(region, [jointIn + side * 1e-5, ay + share * (by - ay)]));
    const middle: Spot = [(ax + bx) / 2, (ay + by) / 2];
    const isSlant = slants.some((slant) => distanceTo(middle, slant) < NEAR_IN);
    const ends = facingSide.map((end) =>
      Math.min(farIn, Math.max(nearIn, carriedOn(end, facingSide, heightIn))),
    );
    const coverIn = Math.max(...ends.map((end) => side * end));
    return { keeps: isMet, coverIn, blankIn: coverIn + (isSlant ? slantAllowanceIn : 0) };
  });
  const coverIn = Math.max(...reaches.map((reach) => reach.coverIn));
  const keeps = reaches.some((reach) => reach.keeps);
  return { keeps, coverIn, blankIn: keeps ? coverIn : Math.max(...reaches.map((reach) => reach.blankIn)) };
};

/** Lays a face with a general polygon library, from the left: every place for a panel is intersected with the region. */
export const clippingCount = (
  outline: Outline,
  openings: readonly Outline[],
  panel: ClippingPanel,
  firstJointIn: (course: number) => number,
): Counted => {
  const leftFt = Math.min(...outline.map(({ x }) => x));
  const eaveFt = Math.min(...outline.map(({ y }) => y));
  const moved = (corners: Outline): Outline => corners.map(({ x, y }) => ({ x: x - leftFt, y: y - eaveFt }));
  const region = regionOf(moved(outline), openings.map(moved));
  const corners = moved(outline).map(({ x, y }): Spot => [x * 12, y * 12]);
  const slants = corners
    .map((from, index): [Spot, Spot] => [from, corners[(index + 1) % corners.length] as Spot])
    .filter(([[ax], [bx]]) => Math.abs(ax - bx) > NEAR_IN);
  const [widthIn, heightIn] = [0, 1].map((axis) =>
    Math.max(...corners.map((corner) => corner[axis] as number)),
  ) as Spot;

  const wholeByCourse: number[] = [];
  const pieces: CountedPiece[] = [];
  for (let course = 1; (course - 1) * panel.heightIn < heightIn - NEAR_IN; course++) {
    wholeByCourse.push(0);
    const [low, high] = [(course - 1) * panel.heightIn, course * panel.heightIn];
    for (let left = firstJointIn(course) - panel.widthIn; left < widthIn; left += panel.widthIn) {
      const right = left + panel.widthIn;
      const place = boxOf(left + INSET_IN, low + INSET_IN, right - INSET_IN, high - INSET_IN);
      for (const rings of clipping.intersection(region, place)) {
        const areaSqIn = areaOfRings(rings);
        if (areaSqIn < NEAR_IN) continue;
        if (areaOfRings(place) - areaSqIn < 1e-9) {
          wholeByCourse[course - 1] = (wholeByCourse[course - 1] ?? 0) + 1;
          continue;
        }
        const near = endOf(rings, -1, [left, right], region, slants, panel);
        const far = endOf(rings, 1, [left, right], region, slants, panel);
        pieces.push({
          course,
          positionIn: -near.coverIn,
          coverIn: far.coverIn + near.coverIn,
          blankIn: far.blankIn + near.blankIn,
          areaSqIn,
          keepsLock: near.keeps ? (far.keeps ? "both" : "left") : far.keeps ? "right" : "none",
        });
      }
    }
  }
  return { wholeByCourse, pieces };
};
