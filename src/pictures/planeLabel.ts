import type { RoofPlane } from "../../functions/roof/roofParts";
import { labelPoint } from "./labelPoint";
import type { PlanScale } from "./planScale";
import { element, escapeText, pointList } from "./svg";

const BADGE_PX = 11;
const ARROW_PX = 30;
const HEAD_PX = 8;
/** A plane with less room than this around its label gets its number alone, and with less than half of it a smaller one. */
const ROOMY_PX = 38;

/** A rise on 12 as a plan shows it: `6:12`, `6.5:12`. */
export const pitchText = (rise: number): string => `${Math.round(rise * 100) / 100}:12`;

export const numberBadge = (number: number, x: number, y: number, radius = BADGE_PX): string =>
  element("circle", { class: "roof-badge", cx: x, cy: y, r: radius }) +
  element("text", { class: "roof-number", x, y, "font-size": radius + 2 }, escapeText(String(number)));

/** An arrow down the slope, and the pitch beside its point. */
const pitchArrow = ({ side }: RoofPlane, x: number, y: number): string => {
  const down = { x: -side.inward.x, y: side.inward.y };
  const at = (alongPx: number, asidePx: number) => ({
    x: x + down.x * alongPx - down.y * asidePx,
    y: y + down.y * alongPx + down.x * asidePx,
  });
  const tip = at(BADGE_PX + ARROW_PX, 0);
  const neck = BADGE_PX + ARROW_PX - HEAD_PX;
  const text = at(BADGE_PX + ARROW_PX + 14, 0);
  const start = at(BADGE_PX, 0);
  return (
    element("line", { class: "roof-arrow", x1: start.x, y1: start.y, x2: tip.x, y2: tip.y }) +
    element("polygon", { class: "roof-arrow-head", points: pointList([tip, at(neck, 4), at(neck, -4)]) }) +
    element("text", { class: "roof-inner", x: text.x, y: text.y }, escapeText(pitchText(side.pitch)))
  );
};

/** A plane's number, and where there is room the way and steepness of its fall. */
export const planeLabel = (plane: RoofPlane, scale: PlanScale): string => {
  const place = labelPoint(plane.corners);
  const { x, y } = scale.toPixel(place);
  const roomPx = place.clearance * scale.pxPerFt;
  if (roomPx < ROOMY_PX)
    return numberBadge(plane.number, x, y, Math.min(BADGE_PX, Math.max(7, roomPx * 0.7)));
  const upPx = (BADGE_PX + ARROW_PX) / 2;
  const [badgeX, badgeY] = [x + plane.side.inward.x * upPx, y - plane.side.inward.y * upPx];
  return pitchArrow(plane, badgeX, badgeY) + numberBadge(plane.number, badgeX, badgeY);
};
