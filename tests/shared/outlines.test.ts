import fc from "fast-check";
import type { Outline, Point } from "../../shared/outline";
import { segmentsMeet, sidesThatCross, areCollinear } from "../../shared/outlineCrossing";
import { isWithin } from "../../shared/outlineWithin";
import { distanceToSegment } from "../../shared/segment";

const at = (x: number, y: number): Point => ({ x, y });
const point = fc.record({ x: fc.integer({ min: -4, max: 4 }), y: fc.integer({ min: -4, max: 4 }) });
const outlineOf = (...corners: readonly (readonly [number, number])[]): Outline =>
  corners.map(([x, y]) => at(x, y));
/** The same corners, starting from a different one. */
const turned = <T>(corners: readonly T[], by: number): T[] => [...corners.slice(by), ...corners.slice(0, by)];
const swapped = (outline: Outline): Outline => outline.map(({ x, y }) => at(y, x));

describe("two segments", () => {
  /** Whether two ranges of whole numbers overlap. */
  const overlap = (a: number, b: number, c: number, d: number): boolean =>
    Math.max(Math.min(a, b), Math.min(c, d)) <= Math.min(Math.max(a, b), Math.max(c, d));

  /** Where the lines cross, as a fraction of each segment; exact, because it uses whole numbers. */
  const meetOnGrid = (a: Point, b: Point, c: Point, d: Point): boolean => {
    const [u, v, w] = [at(b.x - a.x, b.y - a.y), at(d.x - c.x, d.y - c.y), at(c.x - a.x, c.y - a.y)];
    const determinant = u.x * v.y - u.y * v.x;
    const shares = [w.x * v.y - w.y * v.x, w.x * u.y - w.y * u.x];
    if (determinant !== 0)
      return shares.every(
        (share) => share * Math.sign(determinant) >= 0 && Math.abs(share) <= Math.abs(determinant),
      );
    return shares.every((share) => share === 0) && overlap(a.x, b.x, c.x, d.x) && overlap(a.y, b.y, c.y, d.y);
  };

  it("meet exactly when solving for a shared point finds one", () => {
    const isSegment = ([from, to]: readonly [Point, Point]): boolean => from.x !== to.x || from.y !== to.y;
    const segment = fc.tuple(point, point).filter(isSegment);
    fc.assert(
      fc.property(segment, segment, ([a, b], [c, d]) => {
        expect(segmentsMeet(a, b, c, d)).toBe(meetOnGrid(a, b, c, d));
      }),
      { numRuns: 1000 },
    );
  });

  it("a segment of zero length is as far from a point as its end is", () => {
    expect(distanceToSegment(at(3, 4), at(0, 0), at(0, 0))).toBe(5);
    expect(distanceToSegment(at(3, 4), at(0, 0), at(10, 0))).toBe(4);
    expect(distanceToSegment(at(13, 4), at(0, 0), at(10, 0))).toBe(5);
  });
});

describe("collinear corners", () => {
  it("are recognized in spite of floating-point error", () => {
    for (const [x, y] of [
      [0.1, 0.3],
      [1 / 3, -0.7],
      [0, 1],
      [1, 0],
    ] as const)
      expect(areCollinear([1, 3000, 7000, 2].map((times) => at(x * times, y * times)))).toBe(true);
  });

  it.each([
    ["a right angle", outlineOf([0, 0], [1, 0], [0, 1])],
    ["one given twice", outlineOf([0, 0], [0, 0], [1, 0], [0, 1])],
    // A ten-thousandth off the line, far away from the point of reference.
    ["a sliver whose second corner is near", outlineOf([30_000, 0], [30_000.0001, 0], [30_001, 1e-4])],
    ["a sliver whose third corner is near", outlineOf([30_000, 0], [30_001, 1e-4], [30_000.0001, 0])],
  ])("don't include those of %s", (_, corners) => {
    expect(areCollinear(corners)).toBe(false);
    expect(areCollinear(swapped(corners))).toBe(false);
  });

  it("include any set of fewer than three distinct points", () => {
    const few = [[], [at(1, 2)], [at(1, 2), at(3, 5)], [at(1, 2), at(1, 2), at(1, 2)]];
    expect(few.map(areCollinear)).toEqual([true, true, true, true]);
  });
});

describe("an outline that crosses itself", () => {
  it.each<[string, Outline, readonly [number, number]]>([
    ["a bow tie", outlineOf([0, 0], [10, 10], [10, 0], [0, 10]), [1, 3]],
    // The third corner is off the first side only by the last digit of 0.1 + 0.2.
    ["a side that turns straight back", outlineOf([0.3, 0], [0.3, 10], [0.1 + 0.2, 5], [5, 5]), [1, 2]],
  ])("%s: the two crossing sides are named, whichever corner comes first", (_, corners, sides) => {
    const count = corners.length;
    for (const by of corners.keys()) {
      const numbered = sides.map((side) => ((side - 1 - by + count) % count) + 1).sort((a, b) => a - b);
      for (const outline of [corners, swapped(corners)])
        expect([...(sidesThatCross(turned(outline, by)) ?? [])].sort((a, b) => a - b)).toEqual(numbered);
    }
  });

  it("is found where a side crosses the side next to the last", () => {
    const pierced = outlineOf([0, 0], [10, 0], [10, 10], [5, -5], [0, 10]);
    expect(sidesThatCross(pierced)).toEqual([1, 3]);
    for (const by of pierced.keys()) expect(sidesThatCross(turned(pierced, by))).toBeDefined();
    // The second of five sides and the last.
    expect(sidesThatCross(outlineOf([0, 0], [10, 0], [-5, 5], [-5, 10], [0, 10]))).toEqual([2, 5]);
  });

  it("isn't reported when sides meet only at their shared corners", () => {
    const sound = outlineOf([0, 0], [10, 0], [10, 10], [5, 2], [0, 10]);
    for (const by of sound.keys()) expect(sidesThatCross(turned(sound, by))).toBeUndefined();
    expect(sidesThatCross(outlineOf([0, 0], [5, 0], [10, 0], [5, 5]))).toBeUndefined();
  });
});

describe("a point inside an outline", () => {
  const cross = (a: Point, b: Point, c: Point): number =>
    (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);

  it("is on the same side of all three edges of a triangle", () => {
    fc.assert(
      fc.property(point, point, point, point, (a, b, c, p) => {
        const hands = [cross(a, b, p), cross(b, c, p), cross(c, a, p)].map(Math.sign);
        fc.pre(hands.every((hand) => hand !== 0));
        expect(isWithin([a, b, c], p)).toBe(hands.every((hand) => hand === hands[0]));
      }),
      { numRuns: 1000 },
    );
  });

  it("may be level with a corner", () => {
    const diamond = outlineOf([0, -5], [5, 0], [0, 5], [-5, 0]);
    expect([at(0, 0), at(-6, 0), at(6, 0)].map((each) => isWithin(diamond, each))).toEqual([
      true,
      false,
      false,
    ]);
  });

  it("can't be in the notch of an L", () => {
    const ell = outlineOf([0, 0], [10, 0], [10, 4], [4, 4], [4, 10], [0, 10]);
    expect([at(8, 2), at(2, 8), at(8, 8), at(-1, 2)].map((each) => isWithin(ell, each))).toEqual([
      true,
      true,
      false,
      false,
    ]);
  });
});
