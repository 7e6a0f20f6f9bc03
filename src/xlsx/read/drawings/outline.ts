import type { PicturePoint } from "../../../pictures/picturePoint";
import { childOf, numberAttribute, type XmlElement } from "../../xml/xml";
import { pointIn, type Frame } from "./frame";
import { Unsupported, requireSupported, orUnsupported } from "./unsupported";

/** A line from point to point. */
export interface Outline {
  readonly points: readonly PicturePoint[];
  readonly isClosed: boolean;
}

/** A point as fractions of the frame's width and height, 0 to 1. */
type Fraction = readonly [across: number, down: number];

const CORNERS: readonly Fraction[] = [
  [0, 0],
  [1, 0],
  [1, 1],
  [0, 1],
];
const DIAGONAL: readonly Fraction[] = [
  [0, 0],
  [1, 1],
];

interface FractionalOutline {
  readonly points: readonly Fraction[];
  readonly isClosed: boolean;
}

const presetOutline = (name: string | undefined): FractionalOutline => {
  switch (name) {
    case "rect":
      return { points: CORNERS, isClosed: true };
    case "line":
    case "straightConnector1":
      return { points: DIAGONAL, isClosed: false };
    default:
      throw new Unsupported();
  }
};

const fractionOf = (at: number, whole: number): number => (whole === 0 ? 0 : at / whole);

/** The lines of a path. Curves and calculated points (guides) aren't supported. */
const pathOutlines = (path: XmlElement): FractionalOutline[] => {
  requireSupported(!path.attributes.has("fill") && !path.attributes.has("stroke"));
  const [width, height] = [numberAttribute(path, "w"), numberAttribute(path, "h")].map(orUnsupported);
  const lines: { points: Fraction[]; isClosed: boolean }[] = [];
  for (const step of path.children) {
    if (step.name === "close") {
      orUnsupported(lines.at(-1)).isClosed = true;
      continue;
    }
    requireSupported(step.name === "moveTo" || step.name === "lnTo");
    const point = childOf(step, "pt");
    const [x, y] = [numberAttribute(point, "x"), numberAttribute(point, "y")].map(orUnsupported);
    if (step.name === "moveTo") lines.push({ points: [], isClosed: false });
    orUnsupported(lines.at(-1)).points.push([
      fractionOf(x ?? 0, width ?? 0),
      fractionOf(y ?? 0, height ?? 0),
    ]);
  }
  return lines;
};

/** The lines of a shape in a frame. */
export const outlines = (
  properties: XmlElement | undefined,
  frame: Frame,
  flipped: { readonly x: boolean; readonly y: boolean },
): Outline[] => {
  const own = childOf(properties, "custGeom");
  const found = own
    ? (childOf(own, "pathLst")?.children ?? []).flatMap(pathOutlines)
    : [presetOutline(childOf(properties, "prstGeom")?.attributes.get("prst"))];
  return found.map(({ points, isClosed }) => ({
    points: points.map(([across, down]) =>
      pointIn(frame, flipped.x ? 1 - across : across, flipped.y ? 1 - down : down),
    ),
    isClosed,
  }));
};
