import type { PicturePoint } from "../../../pictures/picturePoint";
import { childOf, numberAttribute, type XmlElement } from "../../xml/xml";
import { spotIn, type Frame } from "./frame";
import { NotShown, onlyIf, orNotShown } from "./notShown";

/** A line from spot to spot. */
export interface Outline {
  readonly spots: readonly PicturePoint[];
  readonly isClosed: boolean;
}

/** From 0 to 1, across and down the shape's frame. */
type Share = readonly [across: number, down: number];

const CORNERS: readonly Share[] = [
  [0, 0],
  [1, 0],
  [1, 1],
  [0, 1],
];
const DIAGONAL: readonly Share[] = [
  [0, 0],
  [1, 1],
];

interface Shares {
  readonly shares: readonly Share[];
  readonly isClosed: boolean;
}

const namedShares = (name: string | undefined): Shares => {
  switch (name) {
    case "rect":
      return { shares: CORNERS, isClosed: true };
    case "line":
    case "straightConnector1":
      return { shares: DIAGONAL, isClosed: false };
    default:
      throw new NotShown();
  }
};

const shareOf = (at: number, whole: number): number => (whole === 0 ? 0 : at / whole);

/** The lines of a path; one with curves, or with places that are worked out, isn't known. */
const pathShares = (path: XmlElement): Shares[] => {
  onlyIf(!path.attributes.has("fill") && !path.attributes.has("stroke"));
  const [width, height] = [numberAttribute(path, "w"), numberAttribute(path, "h")].map(orNotShown);
  const lines: { shares: Share[]; isClosed: boolean }[] = [];
  for (const step of path.children) {
    if (step.name === "close") {
      orNotShown(lines.at(-1)).isClosed = true;
      continue;
    }
    onlyIf(step.name === "moveTo" || step.name === "lnTo");
    const point = childOf(step, "pt");
    const [x, y] = [numberAttribute(point, "x"), numberAttribute(point, "y")].map(orNotShown);
    if (step.name === "moveTo") lines.push({ shares: [], isClosed: false });
    orNotShown(lines.at(-1)).shares.push([shareOf(x ?? 0, width ?? 0), shareOf(y ?? 0, height ?? 0)]);
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
    ? (childOf(own, "pathLst")?.children ?? []).flatMap(pathShares)
    : [namedShares(childOf(properties, "prstGeom")?.attributes.get("prst"))];
  return found.map(({ shares, isClosed }) => ({
    spots: shares.map(([across, down]) =>
      spotIn(frame, flipped.x ? 1 - across : across, flipped.y ? 1 - down : down),
    ),
    isClosed,
  }));
};
