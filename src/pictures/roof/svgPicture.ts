import type { PictureOptions } from "../pictureOptions";
import { element, escapeXml, px, text } from "../svg";
import { roofStyle } from "./roofStyle";

/** A place on the picture: px to the right, px down. */
export interface Pixel {
  readonly x: number;
  readonly y: number;
}

export const pointList = (pixels: readonly Pixel[]): string =>
  pixels.map(({ x, y }) => `${px(x)},${px(y)}`).join(" ");

interface Drawing {
  readonly width: number;
  readonly height: number;
  /** What a person who can't see the picture needs to know of it. */
  readonly description: string;
  readonly content: readonly string[];
}

const TITLE_PX = 22;

/** A whole picture of a roof: it stands alone, and carries its own style. */
export const svgPicture = (
  { title, id, palette }: PictureOptions,
  { width, height, description, content }: Drawing,
): string =>
  element(
    "svg",
    {
      xmlns: "http://www.w3.org/2000/svg",
      viewBox: `0 0 ${Math.ceil(width)} ${Math.ceil(height)}`,
      width: Math.ceil(width),
      height: Math.ceil(height),
      role: "img",
      "aria-labelledby": `${id}-title ${id}-desc`,
      class: "gw-picture gw-roof",
    },
    element("title", { id: `${id}-title` }, escapeXml(title)),
    element("desc", { id: `${id}-desc` }, escapeXml(description)),
    element("style", {}, roofStyle(palette)),
    element("rect", { class: "roof-paper", width: Math.ceil(width), height: Math.ceil(height) }),
    ...content,
    text(width / 2, TITLE_PX, title, { class: "roof-title" }),
  );
