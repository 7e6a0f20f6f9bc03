import { pxOfEmu } from "../../styles/sizes";
import { childOf, numberAttribute, type XmlElement } from "../../xml/xml";
import { requireSupported, orUnsupported } from "./unsupported";

const HEX = /^[0-9a-f]{6}$/i;

/** Whether a shape's fill or line comes from the theme, which isn't read. */
const isThemed = (shape: XmlElement, reference: "fillRef" | "lnRef"): boolean =>
  (numberAttribute(childOf(childOf(shape, "style"), reference), "idx") ?? 0) !== 0;

/** A solid color, `none`, or undefined where the file doesn't say. */
export const paintOf = (holder: XmlElement | undefined): string | undefined => {
  const fill = holder?.children.find(({ name }) => name.endsWith("Fill"));
  if (!fill || fill.name === "noFill") return fill && "none";
  requireSupported(fill.name === "solidFill");
  const color = childOf(fill, "srgbClr");
  const hex = color?.attributes.get("val") ?? "";
  requireSupported(HEX.test(hex) && color?.children.length === 0);
  return `#${hex}`;
};

/** Shadows and other effects aren't supported. */
export const refuseEffects = (properties: XmlElement | undefined): void => {
  requireSupported((childOf(properties, "effectLst")?.children ?? []).length === 0);
  requireSupported(["effectDag", "scene3d", "sp3d"].every((name) => !childOf(properties, name)));
};

const paintOrNone = (holder: XmlElement | undefined, isOfTheme: boolean): string => {
  const paint = paintOf(holder);
  requireSupported(paint !== undefined || !isOfTheme);
  return paint ?? "none";
};

export const fillOf = (shape: XmlElement): string =>
  paintOrNone(childOf(shape, "spPr"), isThemed(shape, "fillRef"));

export interface Stroke {
  readonly color: string;
  readonly widthPx: number;
  /** Lengths of dashes and gaps, alternating. */
  readonly dashesPx: readonly number[];
  readonly arrows: { readonly start: boolean; readonly end: boolean };
}

/** In multiples of the line width. */
const DASHES: ReadonlyMap<string, readonly number[]> = new Map([
  ["solid", []],
  ["dot", [1, 3]],
  ["dash", [4, 3]],
  ["lgDash", [8, 3]],
  ["sysDot", [1, 1]],
  ["sysDash", [3, 1]],
]);

const DEFAULT_WIDTH_EMU = 9525;
const WIDEST_EMU = 20_116_800;

const hasArrow = (line: XmlElement | undefined, name: "headEnd" | "tailEnd"): boolean => {
  const type = childOf(line, name)?.attributes.get("type") ?? "none";
  requireSupported(type === "none" || type === "triangle");
  return type === "triangle";
};

export const strokeOf = (shape: XmlElement): Stroke => {
  const line = childOf(childOf(shape, "spPr"), "ln");
  const widthEmu = numberAttribute(line, "w") ?? DEFAULT_WIDTH_EMU;
  requireSupported(widthEmu >= 0 && widthEmu <= WIDEST_EMU);
  const widthPx = pxOfEmu(widthEmu);
  const dashes = orUnsupported(DASHES.get(childOf(line, "prstDash")?.attributes.get("val") ?? "solid"));
  requireSupported(!childOf(line, "custDash"));
  return {
    color: paintOrNone(line, isThemed(shape, "lnRef")),
    widthPx,
    dashesPx: dashes.map((widths) => widths * widthPx),
    arrows: { start: hasArrow(line, "headEnd"), end: hasArrow(line, "tailEnd") },
  };
};
