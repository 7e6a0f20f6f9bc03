import { element, escapeXml } from "../svg";
import type { PicturePoint } from "../picturePoint";

/** Average width of a character of the pictures' 13 px type, rounded up. */
const CHARACTER_PX = 7;

export const textWidthPx = (text: string): number => text.length * CHARACTER_PX;

/** Text along the line between two points, right side up, `asidePx` to the right of the line. */
export const textAlong = (
  text: string,
  from: PicturePoint,
  to: PicturePoint,
  asidePx: number,
  className: string,
): string => {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const length = Math.hypot(dx, dy);
  const x = (from.x + to.x) / 2 - (dy / length) * asidePx;
  const y = (from.y + to.y) / 2 + (dx / length) * asidePx;
  const degrees = (Math.atan2(dy, dx) * 180) / Math.PI;
  const upright = degrees > 90.5 ? degrees - 180 : degrees < -89.5 ? degrees + 180 : degrees;
  const turn = `translate(${x.toFixed(2)} ${y.toFixed(2)}) rotate(${upright.toFixed(2)})`;
  return element("text", { class: className, transform: turn }, escapeXml(text));
};
