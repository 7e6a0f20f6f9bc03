import fc from "fast-check";
import * as clipping from "polygon-clipping";
import { layOut } from "../../../functions/layout/engine/layOut";
import { outline } from "../../../shared/kinds/outline";
import { twiceSignedArea, type Outline } from "../../../shared/outline";
import { areaOfRegion, boxOf, regionOf } from "../../support/clippingCount";
import { areaOf } from "../../support/countedPiece";
import { LEFT, movedToCorner, panelOf } from "../../support/layouts";
import { slantedFaces } from "../../support/slantedFaces";

const SETBACK_IN = 0.5;

/** Corners on a quarter foot, so that a face has vertical sides among its slants and nothing as thin as the setback. */
const isCoarse = (corners: Outline): boolean =>
  corners.every(({ x, y }) => [x * 4, y * 4].every((value) => Math.abs(value - Math.round(value)) < 1e-9));

const isSound = (corners: Outline): boolean => {
  try {
    return (
      outline.read(
        corners.map(({ x, y }) => [x, y]),
        "outline",
      ).length === corners.length
    );
  } catch {
    return false;
  }
};

/** The face minus a strip inside each vertical side. */
const setBackRegion = (corners: Outline): clipping.MultiPolygon => {
  const isCounterclockwise = twiceSignedArea(corners) > 0;
  return corners.reduce(
    (region, from, index) => {
      const to = corners[(index + 1) % corners.length] ?? from;
      if (from.x !== to.x) return region;
      const [low, high] = [Math.min(from.y, to.y) * 12, Math.max(from.y, to.y) * 12];
      const isRightSide = to.y > from.y === isCounterclockwise;
      const [left, right] = isRightSide
        ? [from.x * 12 - SETBACK_IN, from.x * 12]
        : [from.x * 12, from.x * 12 + SETBACK_IN];
      return clipping.difference(region, boxOf(left, low, right, high));
    },
    regionOf(corners, []),
  );
};

describe("the setback", () => {
  it("leaves a strip free inside every vertical side, among slants of any kind", () => {
    const coarse = slantedFaces
      .map((face) => face.outline)
      .filter((corners) => isCoarse(corners) && isSound(corners));
    fc.assert(
      fc.property(coarse, (corners) => {
        const layout = layOut(
          { outline: corners, openings: [] },
          panelOf({ "gable setback": SETBACK_IN }),
          LEFT,
          true,
        );
        const covered = layout.courses.reduce(
          (sum, { whole, cuts }) =>
            sum + whole * 24 * 12 + cuts.reduce((area, { rings }) => area + areaOf(rings), 0),
          0,
        );
        expect(Math.abs(covered - areaOfRegion(setBackRegion(movedToCorner(corners, corners))))).toBeLessThan(
          1e-6,
        );
      }),
      { numRuns: 1000 },
    );
  });
});
