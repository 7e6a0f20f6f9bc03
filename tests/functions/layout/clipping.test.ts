import fc from "fast-check";
import * as clipping from "polygon-clipping";
import { layOut } from "../../../functions/layout/engine/layOut";
import type { ListedCourse } from "../../../functions/layout/engine/layoutResult";
import { outline as outlineKind } from "../../../shared/kinds/outline";
import { areaOfRegion, boxOf, clippingCount, contains, regionOf } from "../../support/clippingCount";
import { areaOf, countedBy, expectSameCount, type Counted } from "../../support/countedPiece";
import { cornersOf, LEFT, movedToCorner, panelOf } from "../../support/layouts";
import { slantedFaces, type SlantedFace } from "../../support/slantedFaces";

const isSound = ({ outline, openings }: SlantedFace): boolean => {
  try {
    const corners = outlineKind.read(
      outline.map(({ x, y }) => [x, y]),
      "outline",
    );
    layOut({ outline: corners, openings }, panelOf(), LEFT, true);
    return true;
  } catch {
    return false;
  }
};

/** Snapping may make two sides meet, or an opening reach out: such faces are refused, which has its own tests. */
const soundFaces = slantedFaces.filter(isSound);

const piecesOf = (
  { wholeRuns, cuts, lineIn, showsIn }: ListedCourse,
  widthIn: number,
): clipping.Polygon[] => [
  ...wholeRuns.map(({ xIn, count }) => boxOf(xIn, lineIn, xIn + count * widthIn, lineIn + showsIn)),
  ...cuts.map(({ rings }) =>
    rings.map((ring) => [...ring, ...ring.slice(0, 1)].map(({ xIn, yIn }): clipping.Pair => [xIn, yIn])),
  ),
];

const seenRegion = ({ outline, openings }: SlantedFace): clipping.MultiPolygon =>
  regionOf(
    movedToCorner(outline, outline),
    openings.map((opening) => movedToCorner(outline, opening)),
  );

/** A corner that reaches a thousandth of an inch past a joint is a piece, but one that the library may lose. */
const withoutSpecks = (counted: Counted): Counted => ({
  ...counted,
  pieces: counted.pieces.filter(({ areaSqIn }) => areaSqIn > 1e-3),
});

/** A chalk line at 60 in crosses a side that rises 0.024 in over 43 in. */
const NEARLY_LEVEL_TOP: SlantedFace = {
  outline: cornersOf(
    [0.8, 0],
    [0.499, 0.625],
    [-0.445, 1.95],
    [-4.054, 1.952],
    [-0.721, -0.347],
    [-0.178, -0.78],
    [2.432, -3.049],
  ),
  openings: [],
};

describe("a layout, against a general polygon library", () => {
  it("finds the same pieces, blanks and locks on 1000 slanted faces", () => {
    fc.assert(
      fc.property(
        soundFaces,
        fc.constantFrom(0, 0.5, 2),
        fc.integer({ min: 0, max: 95 }),
        (face, slantAllowanceIn, quarters) => {
          const shiftIn = quarters / 4;
          const layout = layOut(
            face,
            panelOf({ "slant allowance": slantAllowanceIn }),
            { ...LEFT, shiftIn },
            true,
          );
          const steps = [24, 12, 18, 6];
          const counted = clippingCount(
            face.outline,
            face.openings,
            { widthIn: 24, heightIn: 12, slantAllowanceIn },
            (course) => ((steps[(course - 1) % 4] ?? 0) + shiftIn) % 24 || 24,
          );
          expectSameCount(withoutSpecks(countedBy(layout)), withoutSpecks(counted), 2e-3);
        },
      ),
      { numRuns: 1000, examples: [[NEARLY_LEVEL_TOP, 0, 0]] },
    );
  });

  it("covers each course to the last billionth of its area", () => {
    fc.assert(
      fc.property(soundFaces, (face) => {
        const layout = layOut(face, panelOf(), LEFT, true);
        const region = seenRegion(face);
        for (const { whole, cuts, lineIn } of layout.courses) {
          const strip = boxOf(-1, lineIn, layout.widthIn + 1, lineIn + 12);
          const covered = whole * 24 * 12 + cuts.reduce((sum, { rings }) => sum + areaOf(rings), 0);
          const expected = areaOfRegion(clipping.intersection(region, strip));
          expect(Math.abs(covered - expected)).toBeLessThanOrEqual(1e-9 * Math.max(144, expected));
        }
      }),
      { numRuns: 500 },
    );
  });

  it("lays exactly one piece over every point of the face, and none outside it or over an opening", () => {
    fc.assert(
      fc.property(soundFaces, fc.double({ min: 0.01, max: 0.99, noNaN: true }), (face, offset) => {
        const layout = layOut(face, panelOf(), LEFT, true);
        const region = seenRegion(face);
        const pieces = layout.courses.flatMap((course) => piecesOf(course, layout.panelWidthIn));
        for (let place = 0; place < 150; place++) {
          const share = (place + offset) / 150;
          const spot: [number, number] = [share * layout.widthIn, ((share * 17.17) % 1) * layout.heightIn];
          const over = pieces.filter((piece) => contains([piece], spot)).length;
          expect(over).toBe(contains(region, spot) ? 1 : 0);
        }
      }),
      { numRuns: 100 },
    );
  });
});
