import type { RoofPlane } from "../../../functions/roof/roofParts";
import { labelPoint } from "./labelPoint";
import type { PlanScale } from "./planScale";
import { element, escapeXml } from "../svg";
import { svgPoints, type PicturePoint } from "../picturePoint";

const BADGE_PX = 11;
const HEAD_PX = 8;
const TEXT_PX = 14;

/** The arrow's length and whether the pitch fits at its tip, from the room around the plane's label. */
const arrowFor = (roomPx: number): { readonly lengthPx: number; readonly withText: boolean } | undefined => {
  if (roomPx >= 50) return { lengthPx: 30, withText: true };
  return roomPx >= 22 ? { lengthPx: 14, withText: false } : undefined;
};

/** A rise on 12 as plans write it: `6:12`, `6.5:12`. */
export const pitchText = (rise: number): string => `${Math.round(rise * 100) / 100}:12`;

export const numberBadge = (number: number, { x, y }: PicturePoint, radius = BADGE_PX): string =>
  element("circle", { class: "roof-badge", cx: x, cy: y, r: radius }) +
  element("text", { class: "roof-number", x, y, "font-size": radius + 2 }, escapeXml(String(number)));

/** An arrow down the slope from a plane's number, with the pitch at its tip. */
const pitchArrow = (
  { side }: RoofPlane,
  badge: PicturePoint,
  lengthPx: number,
  withText: boolean,
): string => {
  const down = { x: -side.inward.x, y: side.inward.y };
  const at = (alongPx: number, asidePx: number): PicturePoint => ({
    x: badge.x + down.x * alongPx - down.y * asidePx,
    y: badge.y + down.y * alongPx + down.x * asidePx,
  });
  const reach = BADGE_PX + lengthPx;
  const [start, tip, text] = [at(BADGE_PX, 0), at(reach, 0), at(reach + TEXT_PX, 0)];
  const head = [tip, at(reach - HEAD_PX, 4), at(reach - HEAD_PX, -4)];
  return [
    element("line", { class: "roof-arrow", x1: start.x, y1: start.y, x2: tip.x, y2: tip.y }),
    element("polygon", { class: "roof-arrow-head", points: svgPoints(head) }),
    ...(withText
      ? [element("text", { class: "roof-inner", ...text }, escapeXml(pitchText(side.pitch)))]
      : []),
  ].join("");
};

/** A plane's number and, if there is room, an arrow down the slope with the pitch. */
export const planeLabel = (plane: RoofPlane, scale: PlanScale): string => {
  const best = labelPoint(plane.corners);
  const middle = scale.toPixel(best);
  const roomPx = best.clearance * scale.pxPerFt;
  const arrow = arrowFor(roomPx);
  if (!arrow) return numberBadge(plane.number, middle, Math.min(BADGE_PX, Math.max(7, roomPx * 0.7)));
  const upPx = (BADGE_PX + arrow.lengthPx) / 2;
  const { inward } = plane.side;
  const badge = { x: middle.x + inward.x * upPx, y: middle.y - inward.y * upPx };
  return pitchArrow(plane, badge, arrow.lengthPx, arrow.withText) + numberBadge(plane.number, badge);
};
