import type { PicturePoint } from "../../../pictures/picturePoint";
import { element, px } from "../../../pictures/svg";
import { pxOfEmu } from "../../styles/sizes";
import { childOf, flagAttribute, type XmlElement } from "../../xml/xml";
import { transformed, cornersFrame, flips, refuseRotated, type FrameTransform, type Frame } from "./frame";
import { Unsupported, requireSupported } from "./unsupported";
import { outlines, type Outline } from "./outline";
import { fillOf, refuseEffects, strokeOf, type Stroke } from "./paint";
import { shapeText } from "./shapeText";

/** In dark mode the cells are dark too: lines turn light, and every color keeps its hue. */
const STYLE = element(
  "style",
  {},
  "@media (prefers-color-scheme:dark){g{filter:invert(1) hue-rotate(180deg)}}",
);

/** A drawing without dark mode, for paper. */
export const onPaper = (svg: string): string => svg.replace(STYLE, "");

/** The longest side of a drawing that is shown: about ten pages. */
const LONGEST_PX = 20_000;
const ARROW_LINE_WIDTHS = 3;
const SMALLEST_ARROW_PX = 7;

const arrow = (at: PicturePoint, from: PicturePoint, { color, widthPx }: Stroke): string => {
  const length = Math.hypot(at.x - from.x, at.y - from.y);
  if (length === 0) return "";
  const size = Math.max(SMALLEST_ARROW_PX, widthPx * ARROW_LINE_WIDTHS);
  const [x, y] = [((from.x - at.x) / length) * size, ((from.y - at.y) / length) * size];
  const corner = (side: number): string =>
    `${px(at.x + x - (side * y) / 2)},${px(at.y + y + (side * x) / 2)}`;
  return element("polygon", { points: `${px(at.x)},${px(at.y)} ${corner(1)} ${corner(-1)}`, fill: color });
};

const arrowsOf = ({ points }: Outline, stroke: Stroke): string[] => {
  const [first, second, nextToLast, last] = [points[0], points[1], points.at(-2), points.at(-1)];
  if (!first || !second || !nextToLast || !last || stroke.color === "none") return [];
  return [
    ...(stroke.arrows.start ? [arrow(first, second, stroke)] : []),
    ...(stroke.arrows.end ? [arrow(last, nextToLast, stroke)] : []),
  ];
};

const pathOf = (lines: readonly Outline[]): string =>
  lines
    .map(
      ({ points, isClosed }) =>
        `M${points.map(({ x, y }) => `${px(x)} ${px(y)}`).join("L")}${isClosed ? "Z" : ""}`,
    )
    .join("");

const shapeMarkup = (shape: XmlElement, change: FrameTransform): string[] => {
  const properties = childOf(shape, "spPr");
  const place = childOf(properties, "xfrm");
  refuseRotated(place);
  refuseEffects(properties);
  // The text of a linked shape is in a cell.
  requireSupported((shape.attributes.get("textlink") ?? "") === "");
  const frame = transformed(cornersFrame(place, "off", "ext"), change);
  const lines = outlines(properties, frame, flips(place));
  const stroke = strokeOf(shape);
  const dashes = stroke.dashesPx.length > 0 && { "stroke-dasharray": stroke.dashesPx.map(px).join(" ") };
  const style = { fill: fillOf(shape), stroke: stroke.color, "stroke-width": stroke.widthPx, ...dashes };
  return [
    element("path", { d: pathOf(lines), ...style }),
    ...lines.flatMap((each) => (each.isClosed ? [] : arrowsOf(each, stroke))),
    ...shapeText(shape, frame),
  ];
};

/** Children of a group that aren't shapes. */
const GROUP_PROPERTIES = ["nvGrpSpPr", "grpSpPr", "extLst"];

const groupMarkup = (group: XmlElement, change: FrameTransform): string[] => {
  const place = childOf(childOf(group, "grpSpPr"), "xfrm");
  refuseRotated(place);
  requireSupported(!flips(place).x && !flips(place).y);
  const inside = {
    from: cornersFrame(place, "chOff", "chExt"),
    to: transformed(cornersFrame(place, "off", "ext"), change),
  };
  return group.children.flatMap((child) =>
    GROUP_PROPERTIES.includes(child.name) ? [] : markup(child, inside),
  );
};

const isHidden = (thing: XmlElement): boolean =>
  thing.children.some((each) => flagAttribute(childOf(each, "cNvPr"), "hidden") === true);

const markup = (thing: XmlElement, change: FrameTransform): string[] => {
  if (isHidden(thing)) return [];
  switch (thing.name) {
    case "sp":
    case "cxnSp":
      return shapeMarkup(thing, change);
    case "grpSp":
      return groupMarkup(thing, change);
    default:
      throw new Unsupported();
  }
};

/** A shape or a group as an SVG file. Supports plain lines, fills and text; throws `Unsupported` for anything else. */
export const shapesSvg = (thing: XmlElement): string => {
  const properties = childOf(thing, thing.name === "grpSp" ? "grpSpPr" : "spPr");
  const from = cornersFrame(childOf(properties, "xfrm"), "off", "ext");
  const to: Frame = { left: 0, top: 0, width: pxOfEmu(from.width), height: pxOfEmu(from.height) };
  const { width, height } = to;
  requireSupported([width, height].every((length) => length > 0 && length <= LONGEST_PX));
  return element(
    "svg",
    {
      xmlns: "http://www.w3.org/2000/svg",
      width,
      height,
      viewBox: `0 0 ${px(width)} ${px(height)}`,
      preserveAspectRatio: "none",
    },
    STYLE,
    element("g", {}, ...markup(thing, { from, to })),
  );
};
