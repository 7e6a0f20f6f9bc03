import type { RoofPlane } from "../../../functions/roof/roofParts";
import { labelPoint } from "./labelPoint";
import type { PlanScale } from "./planScale";
import { element, escapeXml } from "../svg";
import { textWidthPx } from "./textAlong";
import { svgPoints, type PicturePoint } from "../picturePoint";

const BADGE_PX = 11;
const HEAD_PX = 8;
const TEXT_HEIGHT_PX = 16;
const TEXT_GAP_PX = 6;
const MARGIN_PX = 4;

/** Room along the arrow for the pitch: its width if the arrow is horizontal, its height if it is vertical. */
const textLengthPx = (text: string, down: PicturePoint): number =>
  Math.abs(down.x) * textWidthPx(text) + Math.abs(down.y) * TEXT_HEIGHT_PX;

interface Arrow {
  readonly lengthPx: number;
  /** With the gap before it; 0 without the pitch. */
  readonly textPx: number;
}

const totalPx = ({ lengthPx, textPx }: Arrow): number => 2 * BADGE_PX + lengthPx + textPx;

/** The largest arrow that fits in the room around a plane's label: with the pitch if possible. */
const arrowThatFits = (roomPx: number, textPx: number): Arrow | undefined =>
  [
    { lengthPx: 30, textPx },
    { lengthPx: 14, textPx },
    { lengthPx: 14, textPx: 0 },
  ].find((arrow) => totalPx(arrow) / 2 + MARGIN_PX <= roomPx);

/** A rise on 12 as plans write it: `6:12`, `6.5:12`. */
export const pitchText = (rise: number): string => `${Math.round(rise * 100) / 100}:12`;

export const numberBadge = (number: number, { x, y }: PicturePoint, radius = BADGE_PX): string =>
  element("circle", { class: "roof-badge", cx: x, cy: y, r: radius }) +
  element("text", { class: "roof-number", x, y, "font-size": radius + 2 }, escapeXml(String(number)));

/** The direction down the slope on the picture, as a unit vector. */
const downSlope = ({ side }: RoofPlane): PicturePoint => ({ x: -side.inward.x, y: side.inward.y });

/** An arrow down the slope from a plane's number, with the pitch at its tip. */
const pitchArrow = (plane: RoofPlane, badge: PicturePoint, { lengthPx, textPx }: Arrow): string => {
  const down = downSlope(plane);
  const at = (alongPx: number, asidePx: number): PicturePoint => ({
    x: badge.x + down.x * alongPx - down.y * asidePx,
    y: badge.y + down.y * alongPx + down.x * asidePx,
  });
  const reach = BADGE_PX + lengthPx;
  const [start, tip, text] = [at(BADGE_PX, 0), at(reach, 0), at(reach + (TEXT_GAP_PX + textPx) / 2, 0)];
  const head = [tip, at(reach - HEAD_PX, 4), at(reach - HEAD_PX, -4)];
  return [
    element("line", { class: "roof-arrow", x1: start.x, y1: start.y, x2: tip.x, y2: tip.y }),
    element("polygon", { class: "roof-arrow-head", points: svgPoints(head) }),
    ...(textPx > 0
      ? [element("text", { class: "roof-inner", ...text }, escapeXml(pitchText(plane.side.pitch)))]
      : []),
  ].join("");
};

/** A plane's number and, if there is room, an arrow down the slope with the pitch. */
export const planeLabel = (plane: RoofPlane, scale: PlanScale): string => {
  const best = labelPoint(plane.corners);
  const middle = scale.toPixel(best);
  const roomPx = best.clearance * scale.pxPerFt;
  const down = downSlope(plane);
  const arrow = arrowThatFits(roomPx, TEXT_GAP_PX + textLengthPx(pitchText(plane.side.pitch), down));
  if (!arrow) return numberBadge(plane.number, middle, Math.min(BADGE_PX, Math.max(7, roomPx * 0.7)));
  const upPx = totalPx(arrow) / 2 - BADGE_PX;
  const badge = { x: middle.x - down.x * upPx, y: middle.y - down.y * upPx };
  return pitchArrow(plane, badge, arrow) + numberBadge(plane.number, badge);
};
