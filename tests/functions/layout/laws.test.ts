import fc from "fast-check";
import { layOut } from "../../../functions/layout/engine/layOut";
import type { Layout } from "../../../functions/layout/engine/layoutResult";
import { outlineArea } from "../../../functions/layout/outlineArea";
import type { Point } from "../../../shared/outline";
import { cornersOf, LEFT, mirrored, panelOf, rectangle, RIGHT } from "../../support/layouts";
import { steppedFaces, type SteppedFace } from "../../support/steppedFaces";

const FULL_PANEL = panelOf({
  "gable setback": 1.5,
  "gable fold": 2.5,
  "lock flange gain": 1,
  "slant allowance": 1,
  "cut loss": 0.125,
  "shortest piece": 3,
});

const counts = ({ whole, cut, fromOffcuts, panels, courses }: Layout): unknown => ({
  whole,
  cut,
  fromOffcuts,
  panels,
  warnings: courses.map(({ warnings }) => warnings.length),
  blanks: courses.map(({ cuts }) => cuts.map(({ blankIn }) => blankIn.toFixed(6))),
});

const scaled = ({ outline, openings, squares }: SteppedFace): SteppedFace => ({
  squares,
  outline: outline.map(({ x, y }) => ({ x: x * 4, y: y * 4 })),
  openings: openings.map((ring) => ring.map(({ x, y }) => ({ x: x * 4, y: y * 4 }))),
});

const faces = steppedFaces.map(scaled);
const shifts = fc.integer({ min: 0, max: 95 }).map((quarters) => quarters / 4);

describe("laws of a layout", () => {
  it("is the same when mirrored and laid from the other side", () => {
    fc.assert(
      fc.property(faces, shifts, ({ outline, openings }, shiftIn) => {
        const left = layOut({ outline, openings }, FULL_PANEL, { ...LEFT, shiftIn }, true);
        const mirror = { outline: mirrored(outline), openings: openings.map(mirrored) };
        expect(counts(layOut(mirror, FULL_PANEL, { ...RIGHT, shiftIn }, true))).toEqual(counts(left));
      }),
      { numRuns: 300 },
    );
  });

  it("doesn't depend on the outline's position, winding or first corner", () => {
    fc.assert(
      fc.property(
        faces,
        fc.integer({ min: -50, max: 50 }),
        fc.nat(9),
        ({ outline, openings }, move, turn) => {
          const expected = counts(layOut({ outline, openings }, FULL_PANEL, LEFT, true));
          const moved = (ring: readonly Point[]): Point[] =>
            ring.map(({ x, y }) => ({ x: x + move, y: y - move }));
          const first = turn % outline.length;
          const turned = [...outline.slice(first), ...outline.slice(0, first)].reverse();
          const plane = { outline: moved(turned), openings: openings.map(moved) };
          expect(counts(layOut(plane, FULL_PANEL, LEFT, true))).toEqual(expected);
        },
      ),
      { numRuns: 200 },
    );
  });

  it("opens no fewer panels than the area needs", () => {
    fc.assert(
      fc.property(faces, shifts, ({ outline, openings }, shiftIn) => {
        const area = outlineArea(outline) - openings.reduce((sum, ring) => sum + outlineArea(ring), 0);
        const { panels } = layOut({ outline, openings }, panelOf(), { ...LEFT, shiftIn }, true);
        expect(panels).toBeGreaterThanOrEqual(area / 2 - 1e-9);
      }),
      { numRuns: 300 },
    );
  });

  it("reuse lowers the count by the pieces that come from offcuts, and changes no piece", () => {
    fc.assert(
      fc.property(faces, ({ outline, openings }) => {
        const plane = { outline, openings };
        const [reused, opened] = [true, false].map((reuse) => layOut(plane, panelOf(), LEFT, reuse)) as [
          Layout,
          Layout,
        ];
        expect(opened.fromOffcuts).toBe(0);
        expect(opened.panels).toBe(opened.whole + opened.cut);
        expect([reused.whole, reused.cut]).toEqual([opened.whole, opened.cut]);
        expect(reused.panels).toBe(opened.panels - reused.fromOffcuts);
      }),
      { numRuns: 200 },
    );
  });

  it("openings only lower the count of whole panels", () => {
    fc.assert(
      fc.property(faces, ({ outline, openings }) => {
        const open = layOut({ outline, openings }, FULL_PANEL, LEFT, true);
        const closed = layOut({ outline, openings: [] }, FULL_PANEL, LEFT, true);
        open.courses.forEach(({ whole }, index) => {
          expect(whole).toBeLessThanOrEqual(closed.courses[index]?.whole ?? -1);
        });
      }),
      { numRuns: 200 },
    );
  });

  it("counts whole multiples of the panel exactly", () => {
    const panel = panelOf({ "stagger pattern": "1", "exposed width": "1/10 ft", "exposed height": "0.7 in" });
    for (const across of [1, 3, 7, 30])
      for (const up of [1, 3, 7, 49]) {
        const plane = { outline: rectangle(0.3, 0.1, across / 10, (up * 0.7) / 12), openings: [] };
        const { whole, cut } = layOut(plane, panel, LEFT, true);
        expect([whole, cut]).toEqual([across * up, 0]);
      }
  });
});

describe("a plane split at joints has the same count as the whole plane, without reuse", () => {
  const total = (...layouts: Layout[]): number => layouts.reduce((sum, { panels }) => sum + panels, 0);

  it("where every course has the same joints", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 12 }),
        fc.integer({ min: 1, max: 90 }),
        fc.integer({ min: 1, max: 40 }),
        (joint, more, up) => {
          const panel = panelOf({ "stagger pattern": "1" });
          const [at, width, height] = [joint * 2, joint * 2 + more / 6, up / 4];
          const parts = [rectangle(0, 0, at, height), rectangle(at, 0, width - at, height)];
          const lay = (outline: Point[]): Layout => layOut({ outline, openings: [] }, panel, LEFT, false);
          expect(total(...parts.map(lay))).toBe(lay(rectangle(0, 0, width, height)).panels);
        },
      ),
      { numRuns: 200 },
    );
  });

  it("along the steps of a stagger: full, half, three-quarter, quarter", () => {
    // The split goes up along the joints at 72, 60, 66 and 54 in of the four courses of 12 in.
    const split = [
      [6, 0],
      [6, 1],
      [5, 1],
      [5, 2],
      [5.5, 2],
      [5.5, 3],
      [4.5, 3],
      [4.5, 4],
    ] as const;
    const near = cornersOf([0, 0], ...split, [0, 4]);
    const far = cornersOf(...split, [13.3, 4], [13.3, 0]);
    const lay = (outline: Point[], shiftIn: number): Layout =>
      layOut({ outline, openings: [] }, panelOf(), { ...LEFT, shiftIn }, false);
    // The far part begins at 54 in, from which the first course's joint at 72 in is 18 in away: 24 + 18 = 42.
    expect(total(lay(near, 0), lay(far, 18))).toBe(lay(rectangle(0, 0, 13.3, 4), 0).panels);
  });

  it("along a chalk line, with the stagger continued in the upper part", () => {
    const lay = (outline: Point[], step: number): Layout =>
      layOut({ outline, openings: [] }, panelOf(), { ...LEFT, step }, false);
    const whole = cornersOf([0, 0], [21, 0], [21, 9.5], [0, 9.5]);
    expect(total(lay(rectangle(0, 0, 21, 6), 1), lay(rectangle(0, 6, 21, 3.5), 3))).toBe(
      lay(whole, 1).panels,
    );
  });
});
