import {
  bendDegrees,
  faceOutline,
  planAreaSqFt,
  slopedAreaSqFt,
  slopeLengthFt,
} from "../../../functions/roof/roofMeasures";
import { edgesOf, expectNumbers, lengthsOf, rectangle, roofFrom, type Pairs } from "../../support/roofs";

const PITCHES = [1, 3, 6, 9, 12, 24];
const factor = (pitch: number): number => Math.hypot(1, pitch / 12);
const hipFactor = (pitch: number): number => Math.sqrt(2 + (pitch / 12) ** 2);
const degrees = (radians: number): number => (radians * 180) / Math.PI;

describe("hip roof over a rectangle", () => {
  const sizes = [
    [40, 24],
    [24.5, 24],
    [100, 7.25],
  ] as const;
  const cases = sizes.flatMap(([length, width]) => PITCHES.map((pitch) => [length, width, pitch] as const));

  it.each(cases)("%d x %d at %d in 12: ridge L - W, hips W/2 √(2 + m²), faces", (length, width, pitch) => {
    const roof = roofFrom(rectangle(length, width), { pitch });
    expectNumbers(lengthsOf(roof, "ridge"), [length - width]);
    expectNumbers(
      lengthsOf(roof, "hip"),
      Array.from({ length: 4 }, () => (width / 2) * hipFactor(pitch)),
    );
    expectNumbers(lengthsOf(roof, "eave"), [width, width, length, length]);
    const [long, end] = [((2 * length - width) / 2) * (width / 2), (width / 2) ** 2];
    expectNumbers(roof.planes.map(planAreaSqFt), [long, end, long, end], 1e-9 * length * width);
    expectNumbers(
      roof.planes.map(slopedAreaSqFt),
      [long, end, long, end].map((area) => area * factor(pitch)),
      1e-9 * length * width,
    );
    expectNumbers(
      roof.planes.map(slopeLengthFt),
      Array.from({ length: 4 }, () => (width / 2) * factor(pitch)),
    );
  });

  it("bends by twice the pitch over the ridge, and by acos(cos² pitch) over a hip", () => {
    for (const pitch of PITCHES) {
      const [a, b, c] = roofFrom(rectangle(40, 24), { pitch }).planes;
      if (!a || !b || !c) throw new Error("four planes");
      const angle = Math.atan(pitch / 12);
      expectNumbers(
        [bendDegrees(a, c), bendDegrees(a, b)],
        [2 * degrees(angle), degrees(Math.acos(Math.cos(angle) ** 2))],
      );
    }
  });

  it("bends at a corner of any angle by acos((mn cos turn + 1) / (√(1 + m²) √(1 + n²)))", () => {
    const ring: Pairs = [[0, 0], [40, 0], [48, 21], [17, 33], [-6, 18]]; // prettier-ignore
    const pitches = [3, 5, 8, 12, 20];
    const planes = roofFrom(ring, { pitch: pitches }).planes;
    const bearings = ring.map(([x, y], index) => {
      const [nextX, nextY] = ring[(index + 1) % ring.length] ?? [NaN, NaN];
      return Math.atan2(nextY - y, nextX - x);
    });
    planes.forEach((plane, one) => {
      planes.forEach((other, two) => {
        const [m, n] = [one, two].map((index) => (pitches[index] ?? NaN) / 12) as [number, number];
        const turn = (bearings[two] ?? NaN) - (bearings[one] ?? NaN);
        const cosine = (m * n * Math.cos(turn) + 1) / (Math.hypot(1, m) * Math.hypot(1, n));
        expectNumbers([bendDegrees(plane, other)], [degrees(Math.acos(Math.min(1, cosine)))], 1e-5);
      });
    });
  });

  it("with an overhang all round is the hip roof over the grown rectangle", () => {
    const roof = roofFrom(rectangle(40, 24), { pitch: 6, overhangFt: 1.5 });
    expectNumbers(lengthsOf(roof, "ridge"), [16]);
    expectNumbers(
      lengthsOf(roof, "hip"),
      Array.from({ length: 4 }, () => 13.5 * 1.5),
    );
    expectNumbers(lengthsOf(roof, "eave"), [27, 27, 43, 43]);
  });
});

describe("pyramid", () => {
  it.each(PITCHES)("over a 30 ft square at %d in 12: four equal planes, hips to one peak", (pitch) => {
    const roof = roofFrom(rectangle(30, 30), { pitch });
    expectNumbers(roof.planes.map(planAreaSqFt), [225, 225, 225, 225]);
    expectNumbers(
      lengthsOf(roof, "hip"),
      Array.from({ length: 4 }, () => 15 * hipFactor(pitch)),
    );
    expect(edgesOf(roof, "ridge")).toEqual([]);
  });

  it.each([3, 5, 6, 8, 12])("over a regular ring of %d sides: hips all meet over the middle", (sides) => {
    const ring = Array.from({ length: sides }, (_, index): [number, number] => {
      const angle = (2 * Math.PI * index) / sides;
      return [20 * Math.cos(angle), 20 * Math.sin(angle)];
    });
    const roof = roofFrom(ring, { pitch: 6 });
    const middleFt = 20 * Math.cos(Math.PI / sides);
    expectNumbers(
      lengthsOf(roof, "hip"),
      Array.from({ length: sides }, () => Math.hypot(20, middleFt / 2)),
    );
    expect(roof.edges).toHaveLength(2 * sides);
  });
});

describe("gable roof over a rectangle", () => {
  it.each(PITCHES)("at %d in 12, 1 ft over the eaves and 2 ft over the rakes", (pitch) => {
    const roof = roofFrom(rectangle(40, 24), { pitch, gables: [2, 4], overhangFt: 1, rakeOverhangFt: 2 });
    expectNumbers(lengthsOf(roof, "ridge"), [44]);
    expectNumbers(lengthsOf(roof, "eave"), [44, 44]);
    expectNumbers(
      lengthsOf(roof, "rake"),
      Array.from({ length: 4 }, () => 13 * factor(pitch)),
    );
    expectNumbers(roof.planes.map(slopedAreaSqFt), [44 * 13 * factor(pitch), 44 * 13 * factor(pitch)]);
    expect(edgesOf(roof, "hip")).toEqual([]);
  });

  it.each([
    [4, 12],
    [6, 7],
    [24, 0.25],
  ])("pitches %d and %d: one ridge, level, the wall's width parted as the other pitch to both", (p, q) => {
    const roof = roofFrom(rectangle(40, 24), { pitch: [p, 1, q, 1], gables: [2, 4] });
    const runFt = (24 * q) / (p + q);
    expectNumbers(roof.planes.map(planAreaSqFt), [40 * runFt, 40 * (24 - runFt)]);
    expectNumbers(lengthsOf(roof, "ridge"), [40]);
    expectNumbers(
      edgesOf(roof, "ridge").flatMap(({ from, to }) => [from.z, to.z]),
      [(runFt * p) / 12, (runFt * p) / 12],
    );
  });

  it("with three gables is a shed, its top a ridge of one plane", () => {
    const roof = roofFrom(rectangle(30, 18), { pitch: 4, gables: [2, 3, 4], overhangFt: 1 });
    expectNumbers(roof.planes.map(planAreaSqFt), [32 * 20]);
    expectNumbers(lengthsOf(roof, "ridge"), [32]);
    expectNumbers(lengthsOf(roof, "rake"), [20 * factor(4), 20 * factor(4)]);
    expect(edgesOf(roof, "ridge")[0]?.otherPlane).toBeUndefined();
  });
});

describe("wings of equal span", () => {
  const L: Pairs = [
    [0, 0],
    [44, 0],
    [44, 24],
    [24, 24],
    [24, 50],
    [0, 50],
  ];
  it("an L: one valley and one hip through the corner, the ridges meeting", () => {
    const roof = roofFrom(L, { pitch: 6 });
    expectNumbers(lengthsOf(roof, "valley"), [12 * 1.5]);
    expectNumbers(lengthsOf(roof, "ridge"), [20, 26]);
    expectNumbers(
      lengthsOf(roof, "hip"),
      Array.from({ length: 5 }, () => 18),
    );
  });

  const T: Pairs = [
    [0, 0],
    [60, 0],
    [60, 20],
    [40, 20],
    [40, 35],
    [20, 35],
    [20, 20],
    [0, 20],
  ];
  it("a T with gables: two valleys to the main ridge, the stem's ridge running into it", () => {
    const roof = roofFrom(T, { pitch: 8, gables: [2, 5, 8] });
    expectNumbers(lengthsOf(roof, "valley"), [10 * hipFactor(8), 10 * hipFactor(8)]);
    expectNumbers(lengthsOf(roof, "ridge"), [25, 30, 30]);
    expect(roof.planes.map(({ sideNumbers }) => sideNumbers)).toEqual([[1], [3], [4], [6], [7]]);
  });

  it("a lower stem's valleys stop short of the main ridge, and the planes beside it are one", () => {
    const stem: Pairs = T.map(([x, y]): [number, number] => [x === 40 ? 36 : x === 20 ? 24 : x, y]);
    const roof = roofFrom(stem, { pitch: 8, gables: [2, 5, 8] });
    expectNumbers(lengthsOf(roof, "valley"), [6 * hipFactor(8), 6 * hipFactor(8)]);
    expectNumbers(lengthsOf(roof, "ridge"), [21, 60]);
    expect(roof.planes.map(({ sideNumbers }) => sideNumbers)).toEqual([[1], [3, 7], [4], [6]]);
    expectNumbers(roof.planes.map(planAreaSqFt), [600, 600 - 36, 6 * 15 + 18, 6 * 15 + 18]);
  });

  it("a cross of equal spans: four valleys to one peak", () => {
    const cross: Pairs = [
      [20, 0], [40, 0], [40, 20], [60, 20], [60, 40], [40, 40],
      [40, 60], [20, 60], [20, 40], [0, 40], [0, 20], [20, 20],
    ]; // prettier-ignore
    const roof = roofFrom(cross, { pitch: 12, gables: [1, 4, 7, 10] });
    expectNumbers(
      lengthsOf(roof, "valley"),
      Array.from({ length: 4 }, () => 10 * Math.sqrt(3)),
    );
    expectNumbers(lengthsOf(roof, "ridge"), [30, 30, 30, 30]);
  });

  it("a U and an H: ridges, hips and valleys by the same rule", () => {
    const U: Pairs = [
      [0, 0],
      [60, 0],
      [60, 40],
      [40, 40],
      [40, 20],
      [20, 20],
      [20, 40],
      [0, 40],
    ];
    const u = roofFrom(U, { pitch: 6 });
    expectNumbers(lengthsOf(u, "valley"), [15, 15]);
    expectNumbers(lengthsOf(u, "ridge"), [20, 20, 40]);
    expectNumbers(
      lengthsOf(u, "hip"),
      Array.from({ length: 6 }, () => 15),
    );
    const H: Pairs = [
      [0, 0], [20, 0], [20, 20], [40, 20], [40, 0], [60, 0],
      [60, 60], [40, 60], [40, 40], [20, 40], [20, 60], [0, 60],
    ]; // prettier-ignore
    const h = roofFrom(H, { pitch: 6 });
    expectNumbers(lengthsOf(h, "valley"), [15, 15, 15, 15]);
    expectNumbers(
      lengthsOf(h, "hip"),
      Array.from({ length: 8 }, () => 15),
    );
    expectNumbers(lengthsOf(h, "ridge"), [20, 20, 20, 20, 40]);
  });
});

describe("courtyard", () => {
  const rings = [
    rectangle(60, 60),
    [
      [20, 20],
      [40, 20],
      [40, 40],
      [20, 40],
    ] as Pairs,
  ];
  it.each([6, 12])(
    "a square ring at %d in 12: ridges around it, hips outside and valleys inside",
    (pitch) => {
      const roof = roofFrom(rings, { pitch });
      expectNumbers(lengthsOf(roof, "ridge"), [40, 40, 40, 40]);
      expectNumbers(
        lengthsOf(roof, "hip"),
        Array.from({ length: 4 }, () => 10 * hipFactor(pitch)),
      );
      expectNumbers(
        lengthsOf(roof, "valley"),
        Array.from({ length: 4 }, () => 10 * hipFactor(pitch)),
      );
      expectNumbers(roof.planes.map(planAreaSqFt), [500, 500, 500, 500, 300, 300, 300, 300]);
    },
  );

  it("has eaves with an overhang too, into the court", () => {
    const roof = roofFrom(rings, { pitch: 6, overhangFt: 2 });
    expectNumbers(lengthsOf(roof, "eave"), [16, 16, 16, 16, 64, 64, 64, 64]);
  });
});

describe("unequal pitches over a rectangle", () => {
  it("hips run by the two pitches, √(1 + (p/q)² + p²) for each ft of the first's run", () => {
    const roof = roofFrom(rectangle(40, 24), { pitch: [6, 12, 6, 12] });
    const [p, q] = [0.5, 1];
    expectNumbers(
      lengthsOf(roof, "hip"),
      Array.from({ length: 4 }, () => 12 * Math.sqrt(1 + (p / q) ** 2 + p ** 2)),
    );
    expectNumbers(lengthsOf(roof, "ridge"), [40 - 2 * 6]);
  });

  it("planes stand at one height over the wall lines, so the steeper eave hangs lower and the hip ends short of it", () => {
    const roof = roofFrom(rectangle(40, 24), { pitch: [6, 12, 6, 12], overhangFt: 1 });
    const eaveHeights = roof.planes.map(({ corners }) => Math.min(...corners.map(({ z }) => z)));
    expectNumbers(eaveHeights, [-0.5, -1, -0.5, -1]);
    expectNumbers(lengthsOf(roof, "eave"), [26, 26, 41, 41]);
    // Over the wall's corner the hip stands at height 0: from there it runs 1 ft out beyond the flatter side.
    expectNumbers(
      lengthsOf(roof, "hip"),
      Array.from({ length: 4 }, () => 13 * Math.sqrt(1 + 0.25 + 0.25)),
    );
    expectNumbers(
      lengthsOf(roof, "eave step"),
      Array.from({ length: 4 }, () => Math.SQRT1_2),
    );
    expect(roof.planes.map(planAreaSqFt).reduce((sum, area) => sum + area, 0)).toBeCloseTo(42 * 26, 9);
  });

  it("overhangs of unequal depth at one pitch: the hip is still over the wall's corner", () => {
    const roof = roofFrom(rectangle(40, 24), { pitch: 12, overhangFt: [1, 2, 1, 2] });
    expectNumbers(
      lengthsOf(roof, "hip"),
      Array.from({ length: 4 }, () => 13 * Math.sqrt(3)),
    );
    expectNumbers(lengthsOf(roof, "eave"), [26, 26, 42, 42]);
    expectNumbers(
      lengthsOf(roof, "eave step"),
      Array.from({ length: 4 }, () => Math.SQRT2),
    );
  });

  it("at an inner corner the valley runs on to the lower eave", () => {
    const L: Pairs = [
      [0, 0],
      [40, 0],
      [40, 24],
      [20, 24],
      [20, 44],
      [0, 44],
    ];
    const roof = roofFrom(L, { pitch: 12, overhangFt: [1, 1, 1, 2, 1, 1] });
    const [valley] = edgesOf(roof, "valley");
    const low = [valley?.from, valley?.to].find((spot) => spot && spot.z < 0);
    expect(low).toEqual({ x: 22, y: 26, z: -2 });
    expect(roof.planes.map(planAreaSqFt).reduce((sum, area) => sum + area, 0)).toBeCloseTo(
      42 * 26 + 23 * 20,
      9,
    );
  });

  it("a flatter side that overtakes a steeper one in line runs on above it: a level pitch break", () => {
    const jogged: Pairs = [
      [0, 0],
      [20, 0],
      [20, 10],
      [40, 10],
      [40, 60],
      [0, 60],
    ];
    const roof = roofFrom(jogged, { pitch: [3, 12, 12, 12, 12, 12] });
    // They meet where 4h = 10 + h; the steep side's front has moved in at both ends alike, so it is 20 ft long yet.
    expectNumbers(lengthsOf(roof, "pitch break"), [20]);
    const [edge] = edgesOf(roof, "pitch break");
    expectNumbers([edge?.from.z ?? NaN, edge?.to.z ?? NaN, edge?.from.y ?? NaN], [10 / 3, 10 / 3, 40 / 3]);
    expect([edge?.plane.side.number, edge?.otherPlane?.side.number]).toEqual([1, 3]);
  });
});

describe("sides in line", () => {
  it("carry one plane, with one eave, and keep their numbers", () => {
    const ring: Pairs = [
      [0, 0],
      [15, 0],
      [40, 0],
      [40, 24],
      [30, 24],
      [0, 24],
    ];
    const roof = roofFrom(ring, { pitch: 6 });
    expect(roof.planes.map(({ sideNumbers }) => sideNumbers)).toEqual([[1, 2], [3], [4, 5], [6]]);
    expectNumbers(lengthsOf(roof, "eave"), [24, 24, 40, 40]);
    expectNumbers(lengthsOf(roof, "ridge"), [16]);
  });

  it("may reach out unequally: the eave steps", () => {
    const ring: Pairs = [
      [0, 0],
      [20, 0],
      [40, 0],
      [40, 24],
      [0, 24],
    ];
    const roof = roofFrom(ring, { pitch: 12, gables: [3, 5], overhangFt: [1, 3, 0, 1, 0] });
    expectNumbers(roof.planes.map(planAreaSqFt), [40 * 12 + 20 + 60, 40 * 13]);
    expectNumbers(lengthsOf(roof, "eave"), [20, 20, 40]);
  });
});

describe("the plane's own outline", () => {
  it("lies with its eave on y = 0, counterclockwise from the eave's left end", () => {
    const [front, end] = roofFrom(rectangle(40, 24), { pitch: 9 }).planes.map(faceOutline);
    expect(front).toEqual([
      { x: 0, y: 0 },
      { x: 40, y: 0 },
      { x: 28, y: 15 },
      { x: 12, y: 15 },
    ]);
    expect(end).toEqual([
      { x: 0, y: 0 },
      { x: 24, y: 0 },
      { x: 12, y: 15 },
    ]);
  });
});
