import fc from "fast-check";
import {
  faceOutline,
  planAreaSqFt,
  slopedAreaSqFt,
  trueLengthFt,
} from "../../../functions/roof/roofMeasures";
import { roofOver } from "../../../functions/roof/roof";
import type { Roof } from "../../../functions/roof/roofParts";
import type { SideBuild } from "../../../functions/roof/roofSides";
import { around, distance, type RoofPoint } from "../../../functions/roof/skeleton/planVectors";
import { insideFt } from "../../../functions/roof/skeleton/roofSide";
import { twiceSignedArea, type Outline, type Point } from "../../../shared/outline";
import { isWithin } from "../../../shared/outlineWithin";
import { randomFrom } from "../../support/random";
import { randomRoof } from "../../support/randomRun";

const seed = fc.integer({ min: 1, max: 1_000_000 });
const RUNS = { numRuns: 100 };

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
const areaOf = (ring: Outline): number => Math.abs(twiceSignedArea(ring)) / 2;

const forRoofs = (check: (roof: Roof, ring: Outline, builds: readonly SideBuild[]) => void): void => {
  fc.assert(
    fc.property(seed, (value) => {
      const { ring, builds } = randomRoof(value);
      check(roofOver([ring], builds), ring, builds);
    }),
    RUNS,
  );
};

describe("laws of every roof", () => {
  it("plan areas add up to the footprint's, and each sloped area is its plan area by the rafter factor", () => {
    forRoofs(({ planes }, ring) => {
      expect(Math.abs(sum(planes.map(planAreaSqFt)) - areaOf(ring))).toBeLessThan(1e-4);
      for (const plane of planes) {
        const slopedSqFt = areaOf(faceOutline(plane));
        expect(Math.abs(slopedSqFt - slopedAreaSqFt(plane))).toBeLessThan(1e-6 * (1 + slopedSqFt));
        expect(slopedSqFt / planAreaSqFt(plane)).toBeCloseTo(Math.hypot(1, plane.side.pitch / 12), 5);
      }
    });
  });

  it("heights agree along every edge, on both its planes, and no edge lies below the walls' top", () => {
    forRoofs(({ edges }) => {
      for (const { plane, otherPlane, from, to } of edges)
        for (const spot of [from, to]) {
          expect(spot.z).toBeGreaterThan(-1e-6);
          for (const { side } of otherPlane ? [plane, otherPlane] : [plane])
            expect(Math.abs((insideFt(side, spot) * side.pitch) / 12 - spot.z)).toBeLessThan(1e-4);
        }
    });
  });

  it("every inner edge belongs to two planes, every eave to one, and each plane's edges go once around it", () => {
    forRoofs(({ planes, edges }) => {
      for (const { kind, otherPlane } of edges)
        if (kind === "eave" || kind === "rake" || kind === "eave step") expect(otherPlane).toBeUndefined();
        else if (kind !== "ridge") expect(otherPlane).toBeDefined();
      for (const plane of planes) {
        const aroundFt = sum(
          edges
            .filter((edge) => edge.plane === plane || edge.otherPlane === plane)
            .map(({ from, to }) => distance(from, to)),
        );
        const ringFt = sum(plane.corners.map((spot, i) => distance(spot, around(plane.corners, i + 1))));
        expect(Math.abs(aroundFt - ringFt)).toBeLessThan(1e-6 * (1 + ringFt));
      }
    });
  });

  it("nodes less edges plus planes make 1 (Euler)", () => {
    forRoofs(({ planes, edges }) => {
      const nodes = new Set<RoofPoint>(edges.flatMap(({ from, to }) => [from, to]));
      expect(nodes.size - edges.length + planes.length).toBe(1);
    });
  });

  it("one plane, and no other, covers each spot of the footprint", () => {
    fc.assert(
      fc.property(seed, (value) => {
        const { ring, builds } = randomRoof(value);
        const { planes } = roofOver([ring], builds);
        const random = randomFrom(value);
        const [xs, ys] = [ring.map(({ x }) => x), ring.map(({ y }) => y)];
        const within = (values: number[]): number =>
          Math.min(...values) + random() * (Math.max(...values) - Math.min(...values));
        for (let tries = 0; tries < 30; tries++) {
          const point: Point = { x: within(xs), y: within(ys) };
          const covers = planes.filter(({ corners }) => isWithin(corners, point)).length;
          expect(covers).toBe(isWithin(ring, point) ? 1 : 0);
        }
      }),
      RUNS,
    );
  });

  it("hips and valleys bisect where the pitches are equal", () => {
    forRoofs(({ edges }) => {
      for (const { plane, otherPlane, from, to } of edges)
        if (otherPlane && otherPlane.side.pitch === plane.side.pitch)
          for (const spot of [from, to])
            expect(Math.abs(insideFt(plane.side, spot) - insideFt(otherPlane.side, spot))).toBeLessThan(1e-4);
    });
  });
});

/** What a roof comes to, side by side, for comparing it with the same roof seen otherwise. */
const measures = ({ planes, edges }: Roof): { areas: Map<string, number>; feet: number } => ({
  areas: new Map(planes.map((plane) => [plane.sideNumbers.join(), planAreaSqFt(plane)])),
  feet: sum(edges.map(trueLengthFt)),
});

const expectSame = (one: Roof, other: Roof, scale = 1): void => {
  const [first, second] = [measures(one), measures(other)];
  expect([...second.areas.keys()].sort()).toEqual([...first.areas.keys()].sort());
  for (const [side, area] of first.areas)
    expect(Math.abs((second.areas.get(side) ?? NaN) - area * scale * scale)).toBeLessThan(
      1e-3 * scale * scale,
    );
  expect(Math.abs(second.feet - first.feet * scale)).toBeLessThan(1e-3 * scale);
};

describe("the same roof, seen otherwise", () => {
  it("turned and moved", () => {
    forRoofs((roof, ring, builds) => {
      const turn = ring.length;
      const turned = ring.map(({ x, y }) => ({
        x: 300 + x * Math.cos(turn) - y * Math.sin(turn),
        y: -70 + x * Math.sin(turn) + y * Math.cos(turn),
      }));
      expectSame(roof, roofOver([turned], builds));
    });
  });

  it("mirrored, which also turns the ring the other way", () => {
    forRoofs((roof, ring, builds) => {
      expectSame(roof, roofOver([ring.map(({ x, y }) => ({ x: -x, y }))], builds));
    });
  });

  it("three times as large", () => {
    forRoofs((roof, ring, builds) => {
      expectSame(roof, roofOver([ring.map(({ x, y }) => ({ x: 3 * x, y: 3 * y }))], builds), 3);
    });
  });

  it("counted from another corner", () => {
    forRoofs(({ planes }, ring, builds) => {
      const shift = Math.floor(ring.length / 2);
      const from = <T>(items: readonly T[]): T[] => [...items.slice(shift), ...items.slice(0, shift)];
      const restarted = roofOver([from(ring)], from(builds));
      const areas = (list: Roof["planes"]): number[] => list.map(planAreaSqFt).sort((a, b) => a - b);
      areas(restarted.planes).forEach((area, index) => {
        expect(Math.abs(area - (areas(planes)[index] ?? NaN))).toBeLessThan(1e-3);
      });
    });
  });

  it("walked round the other way", () => {
    forRoofs(({ planes }, ring, builds) => {
      // Side i of the ring reversed is side n - 1 - i of the ring; the last one stays the last.
      const back = [...builds.slice(0, -1).reverse(), ...builds.slice(-1)];
      const reversed = roofOver([[...ring].reverse()], back);
      const areas = (list: Roof["planes"]): number[] => list.map(planAreaSqFt).sort((a, b) => a - b);
      areas(reversed.planes).forEach((area, index) => {
        expect(Math.abs(area - (areas(planes)[index] ?? NaN))).toBeLessThan(1e-3);
      });
    });
  });
});

describe("overhangs", () => {
  /** Area of a ring moved outward: it grows by its length, and at each corner by the tangent of half its turn. */
  const grownArea = (ring: Outline, reachFt: number): number => {
    const counterclockwise = twiceSignedArea(ring) > 0 ? ring : [...ring].reverse();
    const perimeterFt = sum(
      counterclockwise.map((corner, i) => distance(corner, around(counterclockwise, i + 1))),
    );
    const corners = counterclockwise.map((corner, i) => {
      const [before, after] = [around(counterclockwise, i - 1), around(counterclockwise, i + 1)];
      const [a, b] = [
        { x: corner.x - before.x, y: corner.y - before.y },
        { x: after.x - corner.x, y: after.y - corner.y },
      ];
      return Math.tan(Math.atan2(a.x * b.y - a.y * b.x, a.x * b.x + a.y * b.y) / 2);
    });
    return areaOf(ring) + reachFt * perimeterFt + reachFt * reachFt * sum(corners);
  };

  /** Overhangs of a spike run far beyond its corner: such roofs are refused, by the sides' numbers. */
  const roofUnlessRefused = (ring: Outline, builds: readonly SideBuild[]): Roof | undefined => {
    try {
      return roofOver([ring], builds);
    } catch (refusal) {
      expect(String(refusal)).toMatch(/sides? \d+/);
      return undefined;
    }
  };

  it("plan areas add up to the grown footprint's, whatever the pitches", () => {
    const refused = Array.from({ length: 300 }, (_, index) => index + 1).filter((value) => {
      const { ring, builds } = randomRoof(value);
      const roof = roofUnlessRefused(
        ring,
        builds.map((build) => ({ ...build, overhangFt: 0.25 })),
      );
      if (!roof) return true;
      expect(Math.abs(sum(roof.planes.map(planAreaSqFt)) - grownArea(ring, 0.25))).toBeLessThan(1e-3);
      return false;
    });
    expect(refused.length).toBeLessThan(40);
  });

  it("leave what stands over the walls as it is, at one pitch all round", () => {
    forRoofs((roof, ring, builds) => {
      if (!builds.every(({ pitch }) => pitch === 6)) return;
      const reaching = roofUnlessRefused(
        ring,
        builds.map((build) => ({ ...build, overhangFt: 0.1 })),
      );
      if (!reaching) return;
      const high = (each: Roof): number[] =>
        [...new Set(each.edges.flatMap(({ from, to }) => [from.z, to.z]))]
          .filter((z) => z > 1e-3)
          .sort((a, b) => a - b);
      high(roof).forEach((z, index) => {
        expect(Math.abs((high(reaching)[index] ?? NaN) - z)).toBeLessThan(1e-4);
      });
    });
  });

  it("every eave of a side hangs as far below the walls as its overhang and pitch make", () => {
    forRoofs((_, ring, builds) => {
      const reaching = roofUnlessRefused(
        ring,
        builds.map((build, index) => ({ ...build, overhangFt: 0.05 * (1 + (index % 3)) })),
      );
      for (const plane of reaching?.planes.filter(({ sideNumbers }) => sideNumbers.length === 1) ?? []) {
        const eaves = reaching?.edges.filter((edge) => edge.kind === "eave" && edge.plane === plane) ?? [];
        const lowestFt = Math.min(...eaves.map(({ from }) => from.z));
        expect(Math.abs(lowestFt - plane.side.eaveHeightFt)).toBeLessThan(1e-6);
      }
    });
  });
});
