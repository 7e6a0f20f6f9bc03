import type { Point } from "../../shared/outline";
import { cornerAt, cornerBetween, spotAt, type Corner } from "./skeleton/corner";
import { along, around, atHeight, cross, dot, type RoofPoint } from "./skeleton/planVectors";
import { bearing, isGable, isInner, planeHeight, type RoofSide } from "./skeleton/roofSide";

/**
 * A corner of the roof at the overhangs. Every plane is at height 0 above its own wall line and continues straight down
 * past it, as do hips and valleys; all end plumb at the overhangs. Where pitches or overhangs differ, the eaves are
 * therefore at different heights, as on level walls. At such a corner the hip ends at the higher eave, and the lower
 * plane continues next to it; at an inner corner the valley continues to the lower eave, and the higher plane with it.
 * That extra piece of edge is the skirt of the corner.
 */
export interface RoofCorner {
  readonly before: RoofSide;
  readonly after: RoofSide;
  /** Starts where the hip, valley or rake ends at the outer edge of the roof. */
  readonly corner: Corner;
  readonly skirt: { readonly owner: RoofSide; readonly end: RoofPoint } | undefined;
}

/** Heights that differ by less than this are equal. */
const LEVEL_FT = 1e-9;

/** Where two lines `inward · p = offset` cross. */
const meeting = (a: RoofSide, aOffsetFt: number, b: RoofSide, bOffsetFt: number): Point => {
  const turn = cross(a.inward, b.inward);
  return {
    x: (aOffsetFt * b.inward.y - bOffsetFt * a.inward.y) / turn,
    y: (bOffsetFt * a.inward.x - aOffsetFt * b.inward.x) / turn,
  };
};

/** The corner at height 0: of the wall lines, or of the rake line of a gable. */
const cornerAtWalls = (before: RoofSide, after: RoofSide): Point =>
  bearing(before, after) === "crossing"
    ? meeting(before, before.lineFt, after, after.lineFt)
    : along(after.from, after.inward, after.lineFt - dot(after.inward, after.from));

const edgeOffsetFt = (side: RoofSide): number => side.lineFt + side.eaveHeightFt * side.runPerRise;

/** The corner between two eaves at different heights. */
const unequalCorner = (before: RoofSide, after: RoofSide, atWalls: Corner): RoofCorner => {
  const [lower, higher] = before.eaveHeightFt < after.eaveHeightFt ? [before, after] : [after, before];
  const inner = isInner(before, after);
  const born = spotAt(atWalls, (inner ? lower : higher).eaveHeightFt);
  const owner = inner ? higher : lower;
  const end =
    bearing(before, after) === "crossing"
      ? meeting(before, edgeOffsetFt(before), after, edgeOffsetFt(after))
      : cornerAt(atWalls, lower.eaveHeightFt);
  return {
    before,
    after,
    corner: { ...atWalls, born },
    skirt: { owner, end: atHeight(end, planeHeight(owner, end)) },
  };
};

export const roofCorner = (before: RoofSide, after: RoofSide): RoofCorner => {
  const atWalls = cornerBetween(before, after, atHeight(cornerAtWalls(before, after), 0));
  const eaves = [before, after].filter((side) => !isGable(side)).map((side) => side.eaveHeightFt);
  const [first = 0, second = first] = eaves;
  if (Math.abs(first - second) > LEVEL_FT) return unequalCorner(before, after, atWalls);
  return { before, after, corner: { ...atWalls, born: spotAt(atWalls, first) }, skirt: undefined };
};

const skirtOf = ({ skirt }: RoofCorner, side: RoofSide): RoofPoint | undefined =>
  skirt?.owner === side ? skirt.end : undefined;

/** Where the eave, or the bottom of the gable, starts and ends on the side between two corners. */
const eaveEnds = (start: RoofCorner, end: RoofCorner): readonly [RoofPoint, RoofPoint] => [
  skirtOf(start, start.after) ?? start.corner.born,
  skirtOf(end, end.before) ?? end.corner.born,
];

/** A piece of the outer edge of the roof, with the roof on its left. */
export interface EdgePiece {
  readonly side: RoofSide;
  readonly from: RoofPoint;
  readonly to: RoofPoint;
  readonly isSkirt: boolean;
}

/** The outer edge of one ring: the eave or gable bottom of each side, and the skirts between them. */
export const outerEdge = (corners: readonly RoofCorner[]): EdgePiece[] =>
  corners.flatMap((start, index): EdgePiece[] => {
    const end = around(corners, index + 1);
    const [from, to] = eaveEnds(start, end);
    const startSkirt = skirtOf(start, start.after);
    const endSkirt = skirtOf(end, end.before);
    return [
      ...(startSkirt ? [{ side: start.after, from: start.corner.born, to: startSkirt, isSkirt: true }] : []),
      { side: start.after, from, to, isSkirt: false },
      ...(endSkirt ? [{ side: end.before, from: endSkirt, to: end.corner.born, isSkirt: true }] : []),
    ];
  });
