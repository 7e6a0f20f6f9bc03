const ENTITIES: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

/** Text made safe for an element or an attribute. Control characters are dropped, because XML doesn't allow them. */
export const escapeXml = (text: string): string =>
  text
    .replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g, "")
    .replace(/[&<>"']/g, (sign) => ENTITIES[sign] ?? "");

/** A coordinate rounded to a hundredth of a pixel, which keeps files short. */
export const px = (value: number): string => String(Math.round(value * 100) / 100);

type Attributes = Readonly<Record<string, string | number>>;

/** An element with markup inside. Attribute values are escaped here; the markup isn't. */
export const element = (name: string, attributes: Attributes, ...inside: string[]): string => {
  const written = Object.entries(attributes)
    .map(([key, value]) => ` ${key}="${typeof value === "number" ? px(value) : escapeXml(value)}"`)
    .join("");
  return inside.length === 0 ? `<${name}${written}/>` : `<${name}${written}>${inside.join("")}</${name}>`;
};

/** One line of text. It is escaped here. */
export const text = (x: number, y: number, words: string, attributes: Attributes = {}): string =>
  element("text", { x, y, ...attributes }, escapeXml(words));

export const line = (x1: number, y1: number, x2: number, y2: number, kind: string): string =>
  element("line", { x1, y1, x2, y2, class: kind });
