/** Text and attribute values as SVG takes them. */
export const escapeText = (text: string): string =>
  text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;").replace(/"/g, "&quot;");

type Attributes = Readonly<Record<string, string | number>>;

/** A hundredth of a pixel is finer than any screen or printer shows. */
const written = (value: string | number): string =>
  typeof value === "number" ? String(Math.round(value * 100) / 100 + 0) : escapeText(value);

/** An element around markup that is already escaped. */
export const element = (name: string, attributes: Attributes, ...children: readonly string[]): string => {
  const list = Object.entries(attributes).map(([key, value]) => ` ${key}="${written(value)}"`);
  return `<${name}${list.join("")}>${children.join("")}</${name}>`;
};

/** A place on the picture: px to the right, px down. */
export interface Pixel {
  readonly x: number;
  readonly y: number;
}

export const pointList = (pixels: readonly Pixel[]): string =>
  pixels.map(({ x, y }) => `${written(x)},${written(y)}`).join(" ");

export interface Picture {
  readonly id: string;
  readonly width: number;
  readonly height: number;
  readonly title: string;
  /** What a person who can't see the picture needs to know of it. */
  readonly description: string;
  readonly style: string;
  readonly content: readonly string[];
}

/** A whole picture: it stands alone, and carries its own style. */
export const svgPicture = ({ id, width, height, title, description, style, content }: Picture): string =>
  element(
    "svg",
    {
      xmlns: "http://www.w3.org/2000/svg",
      viewBox: `0 0 ${written(width)} ${written(height)}`,
      width,
      height,
      role: "img",
      "aria-labelledby": `${id}-title ${id}-desc`,
      class: "roof-picture",
    },
    element("title", { id: `${id}-title` }, escapeText(title)),
    element("desc", { id: `${id}-desc` }, escapeText(description)),
    element("style", {}, style),
    element("rect", { class: "roof-paper", width, height }),
    ...content,
  );
