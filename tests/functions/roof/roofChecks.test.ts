import { checkRoof } from "../../../functions/roof/roofChecks";
import { roofOf } from "../../../functions/roof/roofParameters";
import type { Roof, RoofPlane } from "../../../functions/roof/roofParts";
import type { RoofPoint } from "../../../functions/roof/skeleton/planVectors";

const TOLERANCE_FT = 0.001;
/** A hip roof of 40 by 24 ft; the first plane is the trapezoid between (0, 0), (40, 0), (28, 12) and (12, 12). */
const roof = roofOf(
  [
    [
      { x: 0, y: 0 },
      { x: 40, y: 0 },
      { x: 40, y: 24 },
      { x: 0, y: 24 },
    ],
  ],
  [9],
  undefined,
  [0],
  undefined,
);

const withFirstPlane = (change: (corners: readonly RoofPoint[]) => readonly RoofPoint[]): Roof => {
  const [first, ...others] = roof.planes as [RoofPlane, ...RoofPlane[]];
  return { ...roof, planes: [{ ...first, corners: change(first.corners) }, ...others] };
};
/** The corners of the first plane at the ridge, moved. */
const ridgeMoved = (along: number, up: number): Roof =>
  withFirstPlane((corners) =>
    corners.map(({ x, y, z }) => (z > 1 ? { x: x + along * (x < 20 ? 1 : 0), y, z: z + up } : { x, y, z })),
  );
const check = (changed: Roof) => (): void => {
  checkRoof(changed, TOLERANCE_FT);
};

describe("a roof is given out only where", () => {
  it("it holds to the laws, give or take the tolerance", () => {
    expect(check(roof)).not.toThrow();
    // A steep plane is off in height by its pitch more than it is on plan.
    expect(check(ridgeMoved(0, 0.005))).not.toThrow();
    expect(check(ridgeMoved(0.005, 0))).not.toThrow();
    const edges = roof.edges.map((edge) =>
      edge.kind === "eave" && edge.plane.number === 1
        ? { ...edge, to: { ...edge.to, x: edge.to.x - 0.005 } }
        : edge,
    );
    expect(check({ ...roof, edges })).not.toThrow();
  });

  it("every plane is flat", () => {
    expect(check(ridgeMoved(0, 0.02))).toThrow("the plane of side 1 does not meet its neighbors");
  });

  it("every plane lies the right way up, and is more than a line", () => {
    const sentence = "the plane of side 1 comes to nothing between its neighbors";
    expect(check(withFirstPlane((corners) => [...corners].reverse()))).toThrow(sentence);
    expect(check(withFirstPlane(([a, b]) => [a, b, a] as RoofPoint[]))).toThrow(sentence);
  });

  it("no plane crosses itself", () => {
    expect(check(withFirstPlane((corners) => [...corners].sort((a, b) => a.y - b.y || a.x - b.x)))).toThrow(
      "the plane of side 1 crosses itself",
    );
  });

  it("no plane ends in mid-roof", () => {
    const edges = roof.edges.map((edge) =>
      edge.kind === "ridge" ? { ...edge, otherPlane: undefined } : edge,
    );
    expect(check({ ...roof, edges })).toThrow(
      "the plane of side 1 would end in mid-roof, with a wall above or below it",
    );
  });

  it("the planes cover the footprint once, and its outline", () => {
    const short = roof.planes.filter(({ number }) => number !== 2);
    expect(check({ ...roof, planes: short })).toThrow(
      "the planes of sides 1, 3, 4 don't cover the footprint once",
    );
    const open = roof.edges.filter(({ kind, plane }) => kind !== "eave" || plane.number !== 2);
    expect(check({ ...roof, edges: open })).toThrow(
      "the planes of sides 1, 2, 3, 4 don't cover the footprint once",
    );
  });
});
