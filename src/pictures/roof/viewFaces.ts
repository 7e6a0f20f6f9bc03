import type { Roof, RoofEdge } from "../../../functions/roof/roofParts";
import { along, atHeight, dot, minus, type RoofPoint } from "../../../functions/roof/skeleton/planVectors";
import { insideFt, isGable, planeHeight, type RoofSide } from "../../../functions/roof/skeleton/roofSide";
import { planeClass } from "./roofStyle";

/** Every wall is drawn this high, because the footprint doesn't give wall heights. */
const WALL_FT = 8;
/** A point this close to a gable's rake line counts as on it. */
const ON_LINE_FT = 1e-3;
/** The horizontal direction of the light: oblique, so that planes at right angles get different shades. */
const LIGHT = { x: -0.94, y: -0.34 };

/** A flat face of the building. Its corners run counterclockwise as seen from outside. */
export interface ViewFace {
  readonly corners: readonly RoofPoint[];
  readonly className: string;
  readonly isWall: boolean;
}

/** 0 for a side that faces the light, 1 for one that faces away. */
const shadow = ({ inward }: RoofSide): number => (1 + dot(inward, LIGHT)) / 2;

const wallClass = (side: RoofSide): string => `roof-wall${shadow(side) > 0.25 ? " roof-shadow" : ""}`;

/** The wall under a top edge that runs from left to right as seen from outside. */
const wallUnder = (side: RoofSide, from: RoofPoint, to: RoofPoint): ViewFace => ({
  corners: [atHeight(from, -WALL_FT), atHeight(to, -WALL_FT), to, from],
  className: wallClass(side),
  isWall: true,
});

/** The part of a gable's wall under one of its rakes: up to the plane above, and never past the wall's corners. */
const wallUnderRake = (side: RoofSide, { plane, from, to }: RoofEdge): ViewFace[] => {
  if (Math.max(Math.abs(insideFt(side, from)), Math.abs(insideFt(side, to))) > ON_LINE_FT) return [];
  const wallFt = dot(side.direction, minus(side.to, side.from));
  const held = (point: RoofPoint): number =>
    Math.min(wallFt, Math.max(0, dot(side.direction, minus(point, side.from))));
  if (held(to) - held(from) < ON_LINE_FT) return [];
  const top = (spot: RoofPoint): RoofPoint => {
    const point = along(side.from, side.direction, held(spot));
    return atHeight(point, planeHeight(plane.side, point));
  };
  return [wallUnder(side, top(from), top(to))];
};

const wallsOf = ({ sides, edges }: Roof): ViewFace[] => {
  const outer = edges.filter(({ otherPlane }) => !otherPlane);
  return sides.flatMap((side) =>
    isGable(side)
      ? outer.flatMap((edge) => wallUnderRake(side, edge))
      : [wallUnder(side, atHeight(side.from, 0), atHeight(side.to, 0))],
  );
};

/** Every face that can be seen: the walls and the planes. */
export const viewFaces = (roof: Roof): ViewFace[] => [
  ...wallsOf(roof),
  ...roof.planes.map(({ corners, side }) => ({
    corners,
    className: planeClass(shadow(side)),
    isWall: false,
  })),
];
