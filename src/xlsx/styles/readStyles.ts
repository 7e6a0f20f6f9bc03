import {
  BaselineOffset,
  BooleanNumber,
  WrapStrategy,
  type IBorderData,
  type IStyleData,
} from "@univerjs/core";
import { colorOf } from "./colors";
import { numberFormats } from "./numberFormats";
import { BORDER_STYLES, enumValue, HORIZONTAL_ALIGNMENTS, VERTICAL_ALIGNMENTS } from "./styleEnums";
import { childOf, childrenOf, flagAttribute, numberAttribute, type XmlElement } from "../xml/xml";

type Theme = readonly (string | undefined)[];

/** An element such as `<b/>` or `<b val="0"/>`. */
const isOn = (font: XmlElement | undefined, name: string): boolean => {
  const element = childOf(font, name);
  return element !== undefined && flagAttribute(element, "val") !== false;
};

const ON = { s: BooleanNumber.TRUE };

const fontStyle = (font: XmlElement | undefined, theme: Theme): IStyleData => {
  const color = colorOf(childOf(font, "color"), theme);
  const name = childOf(font, "name")?.attributes.get("val");
  const sizePt = numberAttribute(childOf(font, "sz"), "val");
  const underline = childOf(font, "u");
  const offset = childOf(font, "vertAlign")?.attributes.get("val");
  return {
    ...(name !== undefined && { ff: name }),
    ...(sizePt !== undefined && { fs: sizePt }),
    ...(isOn(font, "b") && { bl: BooleanNumber.TRUE }),
    ...(isOn(font, "i") && { it: BooleanNumber.TRUE }),
    ...(isOn(font, "strike") && { st: ON }),
    ...(underline && underline.attributes.get("val") !== "none" && { ul: ON }),
    ...(offset === "superscript" && { va: BaselineOffset.SUPERSCRIPT }),
    ...(offset === "subscript" && { va: BaselineOffset.SUBSCRIPT }),
    ...(color !== undefined && { cl: { rgb: color } }),
  };
};

const fillStyle = (fill: XmlElement | undefined, theme: Theme): IStyleData => {
  const pattern = childOf(fill, "patternFill");
  const color =
    pattern?.attributes.get("patternType") === "solid"
      ? colorOf(childOf(pattern, "fgColor"), theme)
      : undefined;
  return color === undefined ? {} : { bg: { rgb: color } };
};

const SIDES = [
  ["t", "top"],
  ["r", "right"],
  ["b", "bottom"],
  ["l", "left"],
] as const;

const borderStyle = (border: XmlElement | undefined, theme: Theme): IStyleData => {
  const data: IBorderData = {};
  for (const [key, name] of SIDES) {
    const side = childOf(border, name);
    const style = enumValue(BORDER_STYLES, side?.attributes.get("style"));
    if (style !== undefined)
      data[key] = { s: style, cl: { rgb: colorOf(childOf(side, "color"), theme) ?? "#000000" } };
  }
  return Object.keys(data).length === 0 ? {} : { bd: data };
};

/** In a file, 91 to 180 rotate down by the degrees over 90; 255 stacks the letters vertically. */
const rotation = (degrees: number | undefined): IStyleData => {
  if (degrees === undefined || degrees === 0) return {};
  if (degrees === 255) return { tr: { a: 0, v: BooleanNumber.TRUE } };
  return { tr: { a: degrees > 90 ? degrees - 90 : -degrees } };
};

const alignmentStyle = (alignment: XmlElement | undefined): IStyleData => {
  const horizontal = enumValue(HORIZONTAL_ALIGNMENTS, alignment?.attributes.get("horizontal"));
  const vertical = enumValue(VERTICAL_ALIGNMENTS, alignment?.attributes.get("vertical"));
  return {
    ...(horizontal !== undefined && { ht: horizontal }),
    ...(vertical !== undefined && { vt: vertical }),
    ...(flagAttribute(alignment, "wrapText") && { tb: WrapStrategy.WRAP }),
    ...rotation(numberAttribute(alignment, "textRotation")),
  };
};

const cellFormats = (styleSheet: XmlElement): readonly XmlElement[] =>
  childrenOf(childOf(styleSheet, "cellXfs"), "xf");

/** The indexes of cell formats that are unlocked on a protected sheet. */
export const unlockedFormats = (styleSheet: XmlElement): number[] =>
  cellFormats(styleSheet).flatMap((xf, index) =>
    flagAttribute(childOf(xf, "protection"), "locked") === false ? [index] : [],
  );

/** The cell formats (`cellXfs`), in the order of their indexes. */
export const readStyles = (styleSheet: XmlElement, theme: Theme): IStyleData[] => {
  const once = (list: string, read: (element: XmlElement, theme: Theme) => IStyleData): IStyleData[] =>
    (childOf(styleSheet, list)?.children ?? []).map((element) => read(element, theme));
  const fonts = once("fonts", fontStyle);
  const fills = once("fills", fillStyle);
  const borders = once("borders", borderStyle);
  const formats = numberFormats(styleSheet);
  return cellFormats(styleSheet).map((xf) => {
    const pattern = formats.get(numberAttribute(xf, "numFmtId") ?? 0);
    return {
      ...fonts[numberAttribute(xf, "fontId") ?? 0],
      ...fills[numberAttribute(xf, "fillId") ?? 0],
      ...borders[numberAttribute(xf, "borderId") ?? 0],
      ...alignmentStyle(childOf(xf, "alignment")),
      ...(pattern !== undefined && { n: { pattern } }),
    };
  });
};
