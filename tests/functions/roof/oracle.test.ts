import { planAreaSqFt } from "../../../functions/roof/roofMeasures";
import { roofOver } from "../../../functions/roof/roof";
import { around, distance } from "../../../functions/roof/skeleton/planVectors";
import { twiceSignedArea, type Outline, type Point } from "../../../shared/outline";
import { loadOracle, type Oracle, type OracleNode } from "../../support/skeletonOracle";
import { randomFrom, wholeBetween } from "../../support/random";
import { equalPitches } from "../../support/randomRoofs";
import { courtRings, steppedRing } from "../../support/randomBuildings";
import { starRing, tangledRing } from "../../support/randomRings";
import { rectangle, ringOf, type Pairs } from "../../support/roofs";

/** The oracle reckons in 32-bit floats: 60 ft to about 4e-6 ft, and worse where lines cross at a small angle. */
const NODE_FT = 1e-3;
const AREA_SQ_FT = 2e-2;

const turned = (ring: Outline, counterclockwise: boolean): Outline =>
  twiceSignedArea(ring) > 0 === counterclockwise ? ring : [...ring].reverse();

const isNear = (a: Point, b: Point): boolean => distance(a, b) < NODE_FT;

/** The oracle's face that stands on the side between two corners. */
const faceOn = (faces: readonly (readonly OracleNode[])[], from: Point, to: Point): readonly OracleNode[] => {
  const face = faces.find((nodes) =>
    nodes.some((node, index) => {
      const next = around(nodes, index + 1);
      return (isNear(node, from) && isNear(next, to)) || (isNear(node, to) && isNear(next, from));
    }),
  );
  if (!face) throw new Error("the oracle has no face on this side");
  return face;
};

/** Our roof's faces and nodes against the oracle's, at 12 in 12, where a height is the distance from the side. */
const expectAgreement = (oracle: Oracle, rings: readonly Outline[]): void => {
  const oriented = rings.map((ring, index) => turned(ring, index === 0));
  const faces = oracle.skeleton(oriented);
  if (!faces) throw new Error("the oracle has no answer");
  const roof = roofOver(oriented, equalPitches(oriented.flat(), 12));
  const nodes = faces.flat();
  for (const plane of roof.planes) {
    const sides = roof.sides.filter(({ number }) => plane.sideNumbers.includes(number));
    const theirs = sides
      .map(({ from, to }) => Math.abs(twiceSignedArea(faceOn(faces, from, to))) / 2)
      .reduce((sum, area) => sum + area, 0);
    expect(Math.abs(planAreaSqFt(plane) - theirs)).toBeLessThan(AREA_SQ_FT);
    const lost = plane.corners.filter(
      (corner) => !nodes.some((node) => isNear(node, corner) && Math.abs(node.distance - corner.z) < NODE_FT),
    );
    expect(lost).toEqual([]);
  }
};

const AWKWARD: Readonly<Record<string, readonly Pairs[]>> = {
  rectangle: [rectangle(40, 24)],
  square: [rectangle(30, 30)],
  "L of two spans": [
    [[0, 0], [40, 0], [40, 24], [20, 24], [20, 44], [0, 44]],
  ],
  "cross whose valleys all meet": [
    [[10, 0], [20, 0], [20, 10], [30, 10], [30, 20], [20, 20], [20, 30], [10, 30], [10, 20], [0, 20], [0, 10], [10, 10]],
  ],
  "H with equal courts": [
    [[0, 0], [20, 0], [20, 20], [40, 20], [40, 0], [60, 0], [60, 60], [40, 60], [40, 40], [20, 40], [20, 60], [0, 60]],
  ],
  comb: [
    [[0, 0], [70, 0], [70, 30], [60, 30], [60, 10], [50, 10], [50, 30], [40, 30], [40, 10], [30, 10], [30, 30], [20, 30], [20, 10], [10, 10], [10, 30], [0, 30]],
  ],
  "saw teeth": [
    [[0, 0], [60, 0], [60, 20], [50, 30], [50, 20], [40, 30], [40, 20], [30, 30], [30, 20], [20, 30], [20, 20], [10, 30], [10, 20], [0, 30]],
  ],
  "spiral": [
    [[0, 0], [60, 0], [60, 60], [10, 60], [10, 20], [40, 20], [40, 40], [30, 40], [30, 30], [20, 30], [20, 50], [50, 50], [50, 10], [0, 10]],
  ],
  "needle-sharp corner": [
    [[0, 0], [60, 1], [60, 20], [0, 20.5]],
  ],
  "arrow head": [
    [[0, 0], [30, 10], [60, 0], [30, 50]],
  ],
  "courtyard in the middle": [rectangle(60, 60), [[20, 20], [40, 20], [40, 40], [20, 40]]],
  "courtyard off the middle": [rectangle(70, 50), [[12, 30], [30, 33], [28, 41], [10, 40]]],
  "two courtyards": [rectangle(80, 40), [[10, 10], [30, 10], [30, 30], [10, 30]], [[50, 10], [70, 10], [70, 30], [50, 30]]],
  "courtyard in the bay of another": [rectangle(120, 100), [[20, 20], [100, 20], [100, 44], [92, 44], [92, 30], [30, 30], [30, 70], [92, 70], [92, 56], [100, 56], [100, 80], [20, 80]], [[55, 46], [65, 46], [65, 54], [55, 54]]],
  "courtyard of C shape": [rectangle(80, 60), [[20, 15], [60, 15], [60, 25], [30, 25], [30, 35], [60, 35], [60, 45], [20, 45]]],
}; // prettier-ignore

describe("against an independent straight skeleton", () => {
  let oracle: Oracle;
  beforeAll(async () => {
    oracle = await loadOracle();
  });

  it.each(Object.entries(AWKWARD))("%s", (_, rings) => {
    expectAgreement(oracle, rings.map(ringOf));
  });

  it.each([
    ["stars", starRing],
    ["rings of corners anywhere", tangledRing],
    ["stepped rings", steppedRing],
  ] as const)("200 %s of 3 to 30 sides", (_, shape) => {
    for (let seed = 1; seed <= 200; seed++) {
      const random = randomFrom(seed);
      expectAgreement(oracle, [shape(random, wholeBetween(random, 3, 30))]);
    }
  });

  it("60 rings with a courtyard aslant, and 100 rectangles with courtyards on a grid", () => {
    for (let seed = 1; seed <= 60; seed++) {
      const random = randomFrom(seed);
      const outer = starRing(random, wholeBetween(random, 5, 16)).map(({ x, y }) => ({ x: 3 * x, y: 3 * y }));
      const court = starRing(random, wholeBetween(random, 3, 8)).map(({ x, y }) => ({ x: x / 4, y: y / 4 }));
      expectAgreement(oracle, [outer, court]);
    }
    for (let seed = 1; seed <= 100; seed++) expectAgreement(oracle, courtRings(randomFrom(seed)));
  });
});
