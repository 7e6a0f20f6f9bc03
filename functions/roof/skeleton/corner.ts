import { along, atHeight, cross, type RoofPoint } from "./planVectors";
import type { Point } from "../../../shared/outline";
import { bearing, type RoofSide } from "./roofSide";

/** A corner of the wavefront: where it started, and how far it moves, in level ft per ft of height. */
export interface Corner {
  readonly born: RoofPoint;
  readonly move: Point;
}

export const cornerAt = ({ born, move }: Corner, height: number): Point => along(born, move, height - born.z);

/**
 * The corner between two sides moves so as to stay on both: `inward · move = run per rise` for each.
 * Sides in line keep their corner perpendicular to both. Where they run opposite ways, or in line at unequal speeds,
 * there is no such corner: `collapse` removes it before the wavefront moves on.
 */
export const cornerBetween = (a: RoofSide, b: RoofSide, born: RoofPoint): Corner => {
  if (bearing(a, b) !== "crossing") return { born, move: along({ x: 0, y: 0 }, a.inward, a.runPerRise) };
  const turn = cross(a.inward, b.inward);
  const move = {
    x: (a.runPerRise * b.inward.y - b.runPerRise * a.inward.y) / turn,
    y: (b.runPerRise * a.inward.x - a.runPerRise * b.inward.x) / turn,
  };
  return { born, move };
};

/** The position of the corner at a height, in space. */
export const spotAt = (corner: Corner, height: number): RoofPoint =>
  atHeight(cornerAt(corner, height), height);
