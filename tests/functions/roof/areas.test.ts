import { openAreas } from "../../../functions/roof/skeleton/areas";
import type { WavefrontEdge, Wavefront } from "../../../functions/roof/skeleton/wavefront";
import type { Point } from "../../../shared/outline";
import { numberedSide } from "../../support/roofs";

/** Rings are sorted by their corners alone: whichever side stands there. */
const SIDE = numberedSide(1);

/** A ring whose corners move by `move` for each foot of height. */
const ring = (corners: readonly Point[], move: Point = { x: 0, y: 0 }): Wavefront =>
  corners.map(({ x, y }): WavefrontEdge => ({ side: SIDE, start: { born: { x, y, z: 0 }, move } }));

const rectangle = (x: number, y: number, width: number, height = width): Point[] => [
  { x, y },
  { x: x + width, y },
  { x: x + width, y: y + height },
  { x, y: y + height },
];

const diamond = (x: number, y: number, reach: number): Point[] => [
  { x: x + reach, y },
  { x, y: y + reach },
  { x: x - reach, y },
  { x, y: y - reach },
];

const hole = (corners: readonly Point[], move?: Point): Wavefront => ring([...corners].reverse(), move);

describe("rings sorted into areas", () => {
  it("nothing is no area; a ring is one, with its courtyards", () => {
    expect(openAreas([], 0)).toEqual([]);
    const building = [ring(rectangle(0, 0, 40)), hole(rectangle(5, 5, 5)), hole(rectangle(20, 20, 5))];
    expect(openAreas(building, 0)).toEqual([building]);
  });

  it("each courtyard goes to the area around it, the smallest area first", () => {
    const [large, small] = [ring(rectangle(0, 0, 40)), ring(rectangle(100, 0, 20))];
    const [inLarge, inSmall] = [hole(rectangle(30, 30, 6)), hole(rectangle(105, 5, 6))];
    expect(openAreas([large, inLarge, inSmall, small], 0)).toEqual([
      [small, inSmall],
      [large, inLarge],
    ]);
  });

  it("a courtyard on an island in a courtyard is the island's", () => {
    const [land, lake] = [ring(rectangle(0, 0, 100)), hole(rectangle(10, 10, 80))];
    const [island, pond] = [ring(rectangle(30, 30, 40)), hole(rectangle(45, 45, 10))];
    expect(openAreas([pond, land, island, lake], 0)).toEqual([
      [island, pond],
      [land, lake],
    ]);
  });

  it("a courtyard with every corner on the ring around it is known by its sides' middles", () => {
    const [land, lake] = [ring(rectangle(0, 0, 100)), hole(rectangle(10, 10, 80))];
    const [island, pond] = [ring(rectangle(30, 30, 40)), hole(diamond(50, 50, 20))];
    expect(openAreas([land, lake, island, pond], 0)).toEqual([
      [island, pond],
      [land, lake],
    ]);
  });

  it("a courtyard along a side that two areas share is that of the area in which it lies", () => {
    const [large, small] = [ring(rectangle(0, 0, 40)), ring(rectangle(40, 0, 10, 40))];
    const court = hole(rectangle(34, 10, 6, 20));
    expect(openAreas([small, large, court], 0)).toEqual([[small], [large, court]]);
  });

  it("a courtyard as large as its area is that area's, though it lies within none", () => {
    const [far, near] = [ring(rectangle(0, 0, 10)), ring(rectangle(20, 0, 15))];
    const whole = hole(rectangle(20, 0, 15));
    expect(openAreas([far, near, whole], 0)).toEqual([[far], [near, whole]]);
  });

  it("a courtyard that floating point has put outside every area is the nearest one's", () => {
    const [far, near] = [ring(rectangle(0, 0, 10)), ring(rectangle(20, 0, 15))];
    const beside = hole(rectangle(35.001, 5, 2));
    expect(openAreas([far, near, beside], 0)).toEqual([[far], [near, beside]]);
  });

  it("the rings are taken as they stand at the height", () => {
    const [left, right] = [ring(rectangle(0, 0, 10)), ring(rectangle(20, 0, 11))];
    const court = hole(rectangle(2, 2, 3), { x: 10, y: 0 });
    expect(openAreas([left, right, court], 0)).toEqual([[left, court], [right]]);
    expect(openAreas([left, right, court], 2)).toEqual([[left], [right, court]]);
  });
});
