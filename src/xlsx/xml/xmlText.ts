const ENTITIES: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };

/** Characters that XML can't hold, and an underscore that would read as an escape. */
const UNWRITABLE =
  /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]|_(?=x[0-9A-Fa-f]{4}_)|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;

const hex = (character: string): string =>
  `_x${character.charCodeAt(0).toString(16).toUpperCase().padStart(4, "0")}_`;

/** Escapes text and attribute values. */
export const escapeXml = (text: string): string =>
  text
    .replace(/[&<>"]/g, (sign) => ENTITIES[sign] ?? sign)
    // XML reads a bare carriage return as a line feed, and white space in an attribute as a space.
    .replace(/\r/g, "&#13;")
    .replace(/\t/g, "&#9;")
    .replace(/\n/g, "&#10;");

/** Escapes a cell's text, in which the format writes characters that XML can't hold as `_x000B_`. */
export const escapeCellText = (text: string): string => escapeXml(text.replace(UNWRITABLE, hex));

export const unescapeCellText = (text: string): string =>
  text.replace(/_x([0-9A-Fa-f]{4})_/g, (_, code: string) => String.fromCharCode(parseInt(code, 16)));

export type Attributes = Readonly<Record<string, string | number | undefined>>;

/** ` r="A1" s="3"`, without attributes that are undefined. */
export const attributesText = (attributes: Attributes): string =>
  Object.entries(attributes)
    .map(([name, value]) => (value === undefined ? "" : ` ${name}="${escapeXml(String(value))}"`))
    .join("");
