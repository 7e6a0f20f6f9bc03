import { childOf, descendantsOf, numberAttribute, type XmlElement } from "../xml/xml";

/** The indexed colors of old files (ECMA-376 part 1, 18.8.27). The first eight come twice. */
const FIRST_EIGHT = "000000 FFFFFF FF0000 00FF00 0000FF FFFF00 FF00FF 00FFFF";
const PALETTE =
  `${FIRST_EIGHT} ${FIRST_EIGHT} 800000 008000 000080 808000 800080 008080 C0C0C0 808080 9999FF 993366 FFFFCC CCFFFF 660066 FF8080 0066CC CCCCFF 000080 FF00FF FFFF00 00FFFF 800080 800000 008080 0000FF 00CCFF CCFFFF CCFFCC FFFF99 99CCFF FF99CC CC99FF FFCC99 3366FF 33CCCC 99CC00 FFCC00 FF9900 FF6600 666699 969696 003366 339966 003300 333300 993300 993366 333399 333333`.split(
    " ",
  );

/** The order in which `theme` indexes a theme's colors: light and dark are swapped compared with the theme part. */
const THEME_ORDER = [
  "lt1",
  "dk1",
  "lt2",
  "dk2",
  "accent1",
  "accent2",
  "accent3",
  "accent4",
  "accent5",
  "accent6",
  "hlink",
  "folHlink",
];

/** The colors of a theme part, as six hex digits, in the order of their indexes. */
export const themeColors = (theme: XmlElement | undefined): readonly (string | undefined)[] => {
  const scheme = theme ? descendantsOf(theme, "clrScheme")[0] : undefined;
  return THEME_ORDER.map((name) => {
    const [color] = childOf(scheme, name)?.children ?? [];
    return color?.attributes.get(color.name === "sysClr" ? "lastClr" : "val");
  });
};

/** Applies a tint as the format defines it: on the lightness of HSL, (max + min) / 2 of red, green and blue. */
const tinted = (rgb: string, tint: number): string => {
  if (tint === 0) return rgb;
  const parts = [0, 2, 4].map((at) => parseInt(rgb.slice(at, at + 2), 16) / 255);
  const lightness = (Math.max(...parts) + Math.min(...parts)) / 2;
  const wanted = tint < 0 ? lightness * (1 + tint) : lightness * (1 - tint) + tint;
  // Hue and saturation stay.
  const part = (value: number): number => {
    const spread = 1 - Math.abs(2 * lightness - 1);
    const share = spread === 0 ? 0 : (value - lightness) / spread;
    return wanted + share * (1 - Math.abs(2 * wanted - 1));
  };
  return parts
    .map((value) =>
      Math.round(Math.min(1, Math.max(0, part(value))) * 255)
        .toString(16)
        .padStart(2, "0"),
    )
    .join("");
};

/** The color of a color element as `#2f4858`; undefined where it is automatic. */
export const colorOf = (
  element: XmlElement | undefined,
  theme: readonly (string | undefined)[],
): string | undefined => {
  const rgb = element?.attributes.get("rgb");
  const themed = numberAttribute(element, "theme");
  const indexed = numberAttribute(element, "indexed");
  const base =
    rgb?.slice(-6) ??
    (themed === undefined ? undefined : theme[themed]) ??
    (indexed === undefined ? undefined : PALETTE[indexed]);
  if (base === undefined || !/^[0-9A-Fa-f]{6}$/.test(base)) return undefined;
  return `#${tinted(base, numberAttribute(element, "tint") ?? 0).toLowerCase()}`;
};

/** The engine's `#2f4858`, `#abc` or `rgb(...)` as the file's `FF2F4858`; undefined for anything else. */
export const argbOf = (color: string): string | undefined => {
  const hex = /^#([0-9A-Fa-f]{6})$/.exec(color)?.[1];
  if (hex !== undefined) return `FF${hex.toUpperCase()}`;
  const short = /^#([0-9A-Fa-f])([0-9A-Fa-f])([0-9A-Fa-f])$/.exec(color);
  if (short)
    return argbOf(
      `#${short
        .slice(1)
        .map((digit) => digit + digit)
        .join("")}`,
    );
  const parts = /^rgba?\(\s*(\d+)\s*,\s*(\d+)\s*,\s*(\d+)/.exec(color)?.slice(1).map(Number);
  return (
    parts && argbOf(`#${parts.map((part) => Math.min(part, 255).toString(16).padStart(2, "0")).join("")}`)
  );
};
