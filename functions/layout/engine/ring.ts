import type { CoursePoint } from "./face";
import type { Trapezoid } from "./trapezoid";
import { HAIR_IN } from "./precision";

/** A directed side of a piece, with the piece on its left. */
interface Step {
  readonly from: CoursePoint;
  readonly to: CoursePoint;
}

const isSame = (a: CoursePoint, b: CoursePoint): boolean =>
  Math.abs(a.alongIn - b.alongIn) <= HAIR_IN && Math.abs(a.upIn - b.upIn) <= HAIR_IN;

const flankSteps = ({ lowIn, highIn, near, far }: Trapezoid): Step[] => [
  { from: { alongIn: far.atLowIn, upIn: lowIn }, to: { alongIn: far.atHighIn, upIn: highIn } },
  { from: { alongIn: near.atHighIn, upIn: highIn }, to: { alongIn: near.atLowIn, upIn: lowIn } },
];

type LevelSpan = readonly [fromIn: number, toIn: number];

const isCovered = (spans: readonly LevelSpan[], alongIn: number): boolean =>
  spans.some(([fromIn, toIn]) => fromIn < alongIn && alongIn < toIn);

/** The level sides at one height: where the piece is above and not below, or the reverse. */
const levelSteps = (shapes: readonly Trapezoid[], upIn: number): Step[] => {
  const above = shapes.filter(({ lowIn }) => Math.abs(lowIn - upIn) <= HAIR_IN);
  const below = shapes.filter(({ highIn }) => Math.abs(highIn - upIn) <= HAIR_IN);
  const spansAbove = above.map(({ near, far }): LevelSpan => [near.atLowIn, far.atLowIn]);
  const spansBelow = below.map(({ near, far }): LevelSpan => [near.atHighIn, far.atHighIn]);
  const ends = [...spansAbove, ...spansBelow].flat().sort((a, b) => a - b);
  return ends.slice(1).flatMap((toIn, index) => {
    const fromIn = ends[index] as number;
    if (toIn - fromIn <= HAIR_IN) return [];
    const middleIn = (fromIn + toIn) / 2;
    const [isAbove, isBelow] = [isCovered(spansAbove, middleIn), isCovered(spansBelow, middleIn)];
    if (isAbove === isBelow) return [];
    const [left, right] = [
      { alongIn: fromIn, upIn },
      { alongIn: toIn, upIn },
    ];
    return [isAbove ? { from: left, to: right } : { from: right, to: left }];
  });
};

const isStraight = (before: CoursePoint, corner: CoursePoint, after: CoursePoint): boolean => {
  const [ax, ay] = [corner.alongIn - before.alongIn, corner.upIn - before.upIn];
  const [bx, by] = [after.alongIn - corner.alongIn, after.upIn - corner.upIn];
  return Math.abs(ax * by - ay * bx) <= 1e-9 * Math.hypot(ax, ay) * Math.hypot(bx, by);
};

const dropStraight = (ring: readonly CoursePoint[]): CoursePoint[] =>
  ring.filter(
    (corner, index) =>
      !isStraight(ring.at(index - 1) as CoursePoint, corner, ring[(index + 1) % ring.length] as CoursePoint),
  );

/** The outline of a piece, counterclockwise from its lowest corner, and any holes in it, clockwise. */
export const ringsOf = (shapes: readonly Trapezoid[]): CoursePoint[][] => {
  const levels = [...new Set(shapes.flatMap(({ lowIn, highIn }) => [lowIn, highIn]))];
  const steps = [...shapes.flatMap(flankSteps), ...levels.flatMap((upIn) => levelSteps(shapes, upIn))].filter(
    ({ from, to }) => !isSame(from, to),
  );
  const rings: CoursePoint[][] = [];
  for (let first = steps.shift(); first; first = steps.shift()) {
    const ring = [first.from];
    for (let here = first.to; !isSame(here, first.from);) {
      ring.push(here);
      const next = steps.findIndex(({ from }) => isSame(from, here));
      if (next < 0) throw new Error("the sides of a piece don't close");
      here = (steps.splice(next, 1)[0] as Step).to;
    }
    rings.push(dropStraight(ring));
  }
  return rings;
};
