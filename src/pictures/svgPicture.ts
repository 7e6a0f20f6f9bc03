import type { PictureOptions } from "./pictureOptions";
import { element, escapeXml, text } from "./svg";

export interface Drawing {
  readonly width: number;
  readonly height: number;
  /** For screen readers. */
  readonly description: string;
  /** The class that the picture's style rules start with. */
  readonly className: string;
  /** The style, patterns and markers, so that the picture is complete in itself. */
  readonly definitions: readonly string[];
  readonly content: readonly string[];
}

const TITLE_PX = 22;

/** A complete SVG file with its title, its description for screen readers, and its style. */
export const svgPicture = (
  { title, id }: PictureOptions,
  { width, height, description, className, definitions, content }: Drawing,
): string => {
  const size = { width: Math.ceil(width), height: Math.ceil(height) };
  return element(
    "svg",
    {
      xmlns: "http://www.w3.org/2000/svg",
      viewBox: `0 0 ${size.width} ${size.height}`,
      ...size,
      role: "img",
      "aria-labelledby": `${id}-title ${id}-desc`,
      class: `gw-picture ${className}`,
    },
    element("title", { id: `${id}-title` }, escapeXml(title)),
    element("desc", { id: `${id}-desc` }, escapeXml(description)),
    ...definitions,
    element("rect", { ...size, class: "gw-paper" }),
    ...content,
    text(width / 2, TITLE_PX, title, { class: "gw-title", "text-anchor": "middle" }),
  );
};
