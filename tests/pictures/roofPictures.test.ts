/** @jest-environment jsdom */
import { EDGE_KINDS } from "../../functions/roof/roofParts";
import type { Roof } from "../../functions/roof/roofParts";
import { roofPlanPicture } from "../../src/pictures/roof/roofPlanPicture";
import { roofViewPicture } from "../../src/pictures/roof/roofViewPicture";
import { PAPER_PALETTE, SCREEN_PALETTE } from "../../src/pictures/palette";
import { planScale } from "../../src/pictures/roof/planScale";
import { viewFaces } from "../../src/pictures/roof/viewFaces";
import { facesViewer, project, type ProjectedPoint } from "../../src/pictures/roof/projection";
import { isWithin } from "../../shared/outlineWithin";
import { distanceToSegment } from "../../shared/segment";
import { oneOf, randomFrom } from "../support/random";
import { rectangle, roofFrom, type Pairs } from "../support/roofs";

const L: Pairs = [
  [0, 0],
  [40, 0],
  [40, 24],
  [20, 24],
  [20, 44],
  [0, 44],
];
const JOGGED: Pairs = [
  [0, 0],
  [20, 0],
  [20, 10],
  [40, 10],
  [40, 60],
  [0, 60],
];

const ROOFS: Readonly<Record<string, Roof>> = {
  hip: roofFrom(rectangle(40, 24), { pitch: 6, overhangFt: 1 }),
  gable: roofFrom(rectangle(40, 24), { pitch: 12, gables: [2, 4], overhangFt: 1 }),
  "L with a gable": roofFrom(L, { pitch: 6, gables: [5], overhangFt: 1 }),
  courtyard: roofFrom([rectangle(60, 60), [[20, 20], [40, 20], [40, 40], [20, 40]]], { pitch: 6 }),
  "pitch break": roofFrom(JOGGED, { pitch: [3, 12, 12, 12, 12, 12] }),
  "unequal pitches": roofFrom(rectangle(40, 24), { pitch: [6, 12, 4, 12], overhangFt: 2 }),
}; // prettier-ignore
const NAMES = Object.keys(ROOFS);
const roofNamed = (name: string): Roof => ROOFS[name] as Roof;

const parsed = (svg: string): Document => new DOMParser().parseFromString(svg, "image/svg+xml");
const texts = (picture: Document): string[] =>
  [...picture.querySelectorAll("text")].map((text) => text.textContent);

const options = { title: `Smith's <"house"> & barn`, id: "house", palette: SCREEN_PALETTE };
const planOf = (roof: Roof): string => roofPlanPicture(roof, options);
const viewOf = (roof: Roof, turnDegrees: number): string => roofViewPicture(roof, turnDegrees, options);

describe.each([
  ["plan", planOf],
  ["view", (roof: Roof) => viewOf(roof, 30)],
])("the %s", (_, draw) => {
  it.each(NAMES)(
    "of a roof (%s) is valid XML without NaN, with a name and description for screen readers",
    (name) => {
      const svg = draw(roofNamed(name));
      const picture = parsed(svg);
      expect(picture.querySelector("parsererror")).toBeNull();
      expect(svg).not.toMatch(/NaN|Infinity|undefined/);
      const root = picture.documentElement;
      expect(root.getAttribute("role")).toBe("img");
      const labels = (root.getAttribute("aria-labelledby") ?? "").split(" ");
      expect(labels).toHaveLength(2);
      for (const id of labels) expect(picture.getElementById(id)?.textContent).toBeTruthy();
      expect(picture.querySelector("title")?.textContent).toBe(options.title);
      expect(picture.querySelector("desc")?.textContent).toContain(`${roofNamed(name).planes.length} planes`);
    },
  );

  it.each(NAMES)("of a roof (%s) stays within its frame", (name) => {
    const picture = parsed(draw(roofNamed(name)));
    const [, , width = 0, height = 0] = (picture.documentElement.getAttribute("viewBox") ?? "")
      .split(" ")
      .map(Number);
    const places = [...picture.querySelectorAll("[points]")].flatMap((shape) =>
      (shape.getAttribute("points") ?? "").split(" ").map((pair) => pair.split(",").map(Number)),
    );
    expect(places.length).toBeGreaterThan(0);
    for (const [x = NaN, y = NaN] of places) {
      expect(x).toBeGreaterThanOrEqual(0);
      expect(x).toBeLessThanOrEqual(width);
      expect(y).toBeGreaterThanOrEqual(0);
      expect(y).toBeLessThanOrEqual(height);
    }
  });

  it("is dark in dark mode and light on paper", () => {
    expect(draw(roofNamed("hip"))).toContain("@media screen and (prefers-color-scheme:dark)");
    expect(roofPlanPicture(roofNamed("hip"), { ...options, palette: PAPER_PALETTE })).not.toMatch(
      /var\(|@media/,
    );
  });
});

describe("the plan", () => {
  it.each(NAMES)("of a roof (%s) draws one line per edge by kind, and one in the legend", (name) => {
    const roof = roofNamed(name);
    const picture = parsed(planOf(roof));
    for (const kind of EDGE_KINDS) {
      const edges = roof.edges.filter((edge) => edge.kind === kind).length;
      const lines = picture.querySelectorAll(`.roof-${kind.replace(" ", "-")}`);
      expect(lines).toHaveLength(edges === 0 ? 0 : edges + 1);
    }
  });

  it("tells the kinds apart without color: no two share both width and dashes", () => {
    const style = parsed(planOf(roofNamed("hip"))).querySelector("style")?.textContent ?? "";
    const strokes = EDGE_KINDS.map(
      (kind) => new RegExp(`\\.roof-${kind.replace(" ", "-")}\\{(stroke-width[^}]*)\\}`).exec(style)?.[1],
    );
    expect(new Set(strokes).size).toBe(EDGE_KINDS.length);
    expect(strokes).not.toContain(undefined);
  });

  it("labels numbers, pitches, sides and true lengths in feet and inches", () => {
    const labels = texts(parsed(planOf(roofNamed("hip"))));
    expect(labels).toEqual(expect.arrayContaining(["1", "2", "3", "4", "6:12", "side 1", "side 4"]));
    expect(labels).toEqual(expect.arrayContaining([`eave 42' 0"`, `ridge 16' 0"`, `hip 19' 6"`]));
    expect(labels).toEqual(expect.arrayContaining([`hip 78' 0", 4 edges`, `ridge 16' 0", 1 edge`]));
    expect(texts(parsed(planOf(roofNamed("gable"))))).toContain("side 2, gable");
  });
});

describe("the view", () => {
  const numbers = (roof: Roof, turn: number): string[] =>
    texts(parsed(viewOf(roof, turn))).filter((label) => label !== options.title);

  it("numbers only the planes in view as a steep gable roof turns", () => {
    expect(numbers(roofNamed("gable"), 0)).toEqual(["1"]);
    expect(numbers(roofNamed("gable"), 180)).toEqual(["2"]);
    expect(numbers(roofNamed("gable"), 90).sort()).toEqual(["1", "2"]);
  });

  /** The depth of a face behind a point of the picture: the plane through three of its corners. */
  const depthAt = (corners: readonly ProjectedPoint[], x: number, y: number): number => {
    const [a, b, c] = corners as [ProjectedPoint, ProjectedPoint, ProjectedPoint];
    const [p, q] = [
      { x: b.x - a.x, y: b.y - a.y, z: b.depth - a.depth },
      { x: c.x - a.x, y: c.y - a.y, z: c.depth - a.depth },
    ];
    const turn = p.x * q.y - p.y * q.x;
    const [dx, dy] = [x - a.x, y - a.y];
    return a.depth + (p.z * (dx * q.y - dy * q.x) + q.z * (p.x * dy - p.y * dx)) / turn;
  };

  it.each(NAMES)("of a roof (%s) paints at every point the face nearest to the viewer", (name) => {
    const roof = roofNamed(name);
    const random = randomFrom(7);
    let places = 0;
    for (const turn of [0, 30, 75, 140, 200, 290]) {
      const faces = viewFaces(roof)
        .map(({ corners, className }) => ({
          className,
          points: corners.map((corner) => project(corner, turn)),
        }))
        .filter(({ points }) => facesViewer(points));
      const scale = planScale(faces.flatMap(({ points }) => points));
      const painted = [...parsed(viewOf(roof, turn)).querySelectorAll("polygon")].map((polygon) => ({
        className: polygon.getAttribute("class"),
        outline: (polygon.getAttribute("points") ?? "").split(" ").map((pair) => {
          const [x = NaN, y = NaN] = pair.split(",").map(Number);
          return { x, y };
        }),
      }));
      for (let tries = 0; tries < 60; tries++) {
        const corners = oneOf(random, faces).points;
        const [one, other] = [oneOf(random, corners), oneOf(random, corners)];
        const share = random();
        const place = {
          x: one.x + (other.x - one.x) * share,
          y: one.y + (other.y - one.y) * share + random() - 0.5,
        };
        const found = faces
          .filter(({ points }) => isWithin(points, place))
          .map(({ className, points }) => ({ className, depth: depthAt(points, place.x, place.y) }))
          .sort((a, b) => a.depth - b.depth);
        const [nearest, next] = found;
        const isEdge = found.length > 1 && (next?.depth ?? 0) - (nearest?.depth ?? 0) < 0.1;
        const pixel = scale.toPixel(place);
        const isNearEdge = faces.some(({ points }) =>
          points.some((point, index) => {
            const after = points[(index + 1) % points.length] ?? point;
            return distanceToSegment(place, point, after) < 0.1;
          }),
        );
        if (!nearest || isEdge || isNearEdge) continue;
        places++;
        expect(painted.findLast(({ outline }) => isWithin(outline, pixel))?.className).toBe(
          nearest.className,
        );
      }
    }
    expect(places).toBeGreaterThan(50);
  });
});
