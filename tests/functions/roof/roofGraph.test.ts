import { planeCorners } from "../../../functions/roof/planeCorners";
import type { GraphEdge } from "../../../functions/roof/roofGraph";
import type { RoofPoint } from "../../../functions/roof/skeleton/planVectors";
import type { RoofSide } from "../../../functions/roof/skeleton/roofSide";
import { mergeCollinear } from "../../../functions/roof/mergeCollinear";
import { numberedSide } from "../../support/roofs";

const [ONE, TWO, THREE] = [numberedSide(1), numberedSide(2), numberedSide(3)];

const spot = (x: number, y: number): RoofPoint => ({ x, y, z: 0 });

const edge = (left: RoofSide, right: RoofSide | undefined, from: RoofPoint, to: RoofPoint): GraphEdge => ({
  left,
  right,
  from,
  to,
  isAlongGable: false,
});

/** A plane's edges along places in order, the plane on their left. */
const path = (plane: RoofSide, ...spots: readonly RoofPoint[]): GraphEdge[] =>
  spots.slice(1).map((to, index) => edge(plane, undefined, spots[index] as RoofPoint, to));

const inPlan = (spots: readonly RoofPoint[]): string => spots.map(({ x, y }) => `${x},${y}`).join(" ");

describe("the corners around a plane", () => {
  const [a, b, c, d] = [spot(0, 0), spot(10, 0), spot(10, 10), spot(0, 10)];

  it("chains its edges end to end, whichever side of them it lies on", () => {
    const edges = [edge(ONE, TWO, c, d), edge(ONE, TWO, a, b), edge(TWO, ONE, c, b), edge(TWO, ONE, a, d)];
    expect(inPlan(planeCorners(edges, ONE))).toBe("10,10 0,10 0,0 10,0");
  });

  it("where it touches itself, one ring comes round both parts", () => {
    const [e, f, g] = [spot(20, 10), spot(20, 20), spot(10, 20)];
    const both = "0,0 10,0 10,10 20,10 20,20 10,20 10,10 0,10";
    const square = path(ONE, a, b, c, d, a);
    expect(inPlan(planeCorners([...square, ...path(ONE, c, e, f, g, c)], ONE))).toBe(both);
    const otherFirst = [...path(ONE, a, b, c), ...path(ONE, c, e, f, g, c), ...path(ONE, c, d, a)];
    expect(inPlan(planeCorners(otherFirst, ONE))).toBe(both);
  });

  it("refuses a plane without edges, one that doesn't close, and one with a hole", () => {
    expect(() => planeCorners(path(TWO, a, b, c, a), ONE)).toThrow(
      "the plane of side 1 comes to nothing between its neighbors",
    );
    expect(() => planeCorners(path(ONE, a, b, c, d), ONE)).toThrow("the plane of side 1 doesn't close");
    const hole = [spot(4, 4), spot(4, 6), spot(6, 6)];
    expect(() =>
      planeCorners([...path(ONE, a, b, c, d, a), ...path(ONE, ...hole, hole[0] as RoofPoint)], ONE),
    ).toThrow("the plane of side 1 would run all round other planes, as round a hole");
  });
});

describe("pieces of one straight edge", () => {
  const places = [spot(0, 0), spot(4, 0), spot(10, 0), spot(11, 0)];
  const [a, b, c, d] = places as [RoofPoint, RoofPoint, RoofPoint, RoofPoint];
  const joined = (...edges: readonly GraphEdge[]): string[] =>
    mergeCollinear(edges, 0.001).map(({ from, to }) => inPlan([from, to]));

  it("become one, in whatever order and direction they come", () => {
    expect(joined(edge(ONE, TWO, a, b), edge(ONE, TWO, b, c), edge(ONE, TWO, c, d))).toEqual(["0,0 11,0"]);
    expect(joined(edge(ONE, TWO, c, d), edge(ONE, TWO, b, c), edge(ONE, TWO, a, b))).toEqual(["0,0 11,0"]);
    expect(joined(edge(ONE, TWO, b, c), edge(TWO, ONE, b, a), edge(TWO, ONE, d, c))).toEqual(["0,0 11,0"]);
  });

  it("stay apart where another edge meets them, or another plane begins", () => {
    expect(joined(edge(ONE, TWO, a, b), edge(ONE, TWO, b, c), edge(ONE, THREE, b, spot(4, 9)))).toHaveLength(
      3,
    );
    expect(joined(edge(ONE, TWO, a, b), edge(ONE, THREE, b, c))).toHaveLength(2);
    expect(joined(edge(ONE, THREE, a, b), edge(TWO, THREE, b, c))).toHaveLength(2);
  });

  it("stay apart where they bend, or turn back", () => {
    expect(joined(edge(ONE, TWO, a, b), edge(ONE, TWO, b, spot(10, 0.01)))).toHaveLength(2);
    expect(joined(edge(ONE, TWO, a, b), edge(ONE, TWO, b, spot(10, 0.0001)))).toHaveLength(1);
    expect(joined(edge(ONE, TWO, a, b), edge(ONE, TWO, b, spot(2, 0)))).toHaveLength(2);
    // The bend counts as the feet that the corner lies off the straight line, however long the pieces are.
    const far = spot(1000, 0);
    expect(joined(edge(ONE, TWO, a, far), edge(ONE, TWO, far, spot(2000, 0.01)))).toHaveLength(2);
    expect(joined(edge(ONE, TWO, a, far), edge(ONE, TWO, far, spot(2000, 0.001)))).toHaveLength(1);
  });

  it("a ring of three straight pieces loses none of its other edges", () => {
    const top = spot(5, 5);
    const triangle = [edge(ONE, undefined, c, top), edge(ONE, undefined, top, a), edge(ONE, undefined, a, b)];
    expect(joined(...triangle, edge(ONE, undefined, b, c))).toEqual(["10,0 5,5", "5,5 0,0", "0,0 10,0"]);
  });
});
