import { dataUrl, svgUrl } from "../../../workbook/dataUrl";
import type { FilePicture } from "../../book/book";
import { FileError } from "../../book/fileError";
import { relationshipsOf, type Relationship } from "../../package/relationships";
import type { Parts } from "../../package/zip";
import {
  childOf,
  descendantsOf,
  flagAttribute,
  numberAttribute,
  parseXml,
  type XmlElement,
} from "../../xml/xml";
import { readAnchor } from "./anchor";
import { flips, refuseRotated } from "./frame";
import { imageKind, type ImageKind } from "./imageKind";
import { Unsupported, requireSupported, orUnsupported } from "./unsupported";
import { paintOf, refuseEffects } from "./paint";
import type { PictureBudget } from "./pictureBudget";
import { shapesSvg } from "./shapes";

/** The drawings over a sheet's cells. */
export interface SheetDrawings {
  readonly pictures: readonly FilePicture[];
  /** Parts that are fully shown. */
  readonly partsShown: readonly string[];
  /** Parts with something that isn't shown. */
  readonly partsNotShown: readonly string[];
  /** How many pictures are linked from outside the file. */
  readonly linkedPictures: number;
}

const NO_DRAWINGS: SheetDrawings = { pictures: [], partsShown: [], partsNotShown: [], linkedPictures: 0 };

/** A drawing part, with what it takes to follow its relationships. */
interface Drawing {
  readonly parts: Parts;
  readonly path: string;
  /** Image parts by relationship id. */
  readonly images: ReadonlyMap<string, string>;
  /** Image kinds by part, because many anchors may show the same image. */
  readonly kinds: Map<string, ImageKind | undefined>;
  readonly budget: PictureBudget;
}

/** The part that a blip shows. An external image is never fetched. */
const imagePath = (blip: XmlElement | undefined, { images }: Drawing): string | undefined => {
  // The prefix of `r:embed` may differ between files.
  const id = [...(blip?.attributes ?? [])].find(([name]) => /:embed$/.test(name))?.[1];
  return images.get(id ?? "");
};

const imagesOf = (relationships: readonly Relationship[]): ReadonlyMap<string, string> =>
  new Map(
    relationships.flatMap(({ id, kind, isExternal, target }): [string, string][] =>
      kind === "image" && !isExternal ? [[id, target]] : [],
    ),
  );

const kindOf = (path: string, bytes: Uint8Array, { kinds }: Drawing): ImageKind => {
  if (!kinds.has(path)) kinds.set(path, imageKind(bytes));
  return orUnsupported(kinds.get(path));
};

/** Only a plain rectangle is supported: no border, effects, or other outline. */
const requirePlainRectangle = (properties: XmlElement | undefined): void => {
  requireSupported((childOf(properties, "prstGeom")?.attributes.get("prst") ?? "rect") === "rect");
  requireSupported(
    !childOf(properties, "custGeom") && ["none", undefined].includes(paintOf(childOf(properties, "ln"))),
  );
  refuseEffects(properties);
};

const isUncropped = (crop: XmlElement | undefined): boolean =>
  ["l", "t", "r", "b"].every((side) => (numberAttribute(crop, side) ?? 0) === 0);

/** A raster picture. The SVG version that newer programs add to it is ignored. */
const pictureSource = (picture: XmlElement, drawing: Drawing): string => {
  const properties = childOf(picture, "spPr");
  const place = childOf(properties, "xfrm");
  refuseRotated(place);
  requireSupported(!flips(place).x && !flips(place).y);
  requirePlainRectangle(properties);
  const fill = childOf(picture, "blipFill");
  const blip = childOf(fill, "blip");
  // Anything else in a blip changes its appearance: a washed-out watermark would hide the cells beneath.
  requireSupported((blip?.children ?? []).every(({ name }) => name === "extLst"));
  requireSupported(
    isUncropped(childOf(fill, "srcRect")) && isUncropped(childOf(childOf(fill, "stretch"), "fillRect")),
  );
  requireSupported(!childOf(fill, "tile"));
  const path = imagePath(blip, drawing) ?? "";
  const bytes = orUnsupported(drawing.parts.get(path));
  requireSupported(drawing.budget({ pictures: 1, pictureBytes: bytes.length }));
  const { type, pixels } = kindOf(path, bytes, drawing);
  requireSupported(drawing.budget({ picturePixels: pixels }));
  return dataUrl(type, bytes);
};

const shapesSource = (thing: XmlElement, { budget }: Drawing): string => {
  const svg = shapesSvg(thing);
  requireSupported(budget({ pictures: 1, pictureBytes: svg.length }));
  return svgUrl(svg);
};

/** Children of an anchor that aren't the anchored object. */
const ANCHOR_PARTS = ["from", "to", "ext", "pos", "clientData"];

const readAnchoredObject = (anchor: XmlElement, drawing: Drawing): FilePicture => {
  const objects = anchor.children.filter(({ name }) => !ANCHOR_PARTS.includes(name));
  const thing = orUnsupported(objects[0]);
  const [named] = descendantsOf(thing, "cNvPr");
  requireSupported(objects.length === 1 && !flagAttribute(named, "hidden"));
  const place = readAnchor(anchor);
  return {
    ...place,
    description: named?.attributes.get("descr") ?? "",
    source: thing.name === "pic" ? pictureSource(thing, drawing) : shapesSource(thing, drawing),
  };
};

/** The parts that an anchor shows: its images, and the drawing part itself where it has shapes. */
const partsOf = (anchor: XmlElement, drawing: Drawing): string[] => [
  ...descendantsOf(anchor, "blip").flatMap((blip) => {
    const path = imagePath(blip, drawing);
    return path !== undefined && drawing.parts.has(path) ? [path] : [];
  }),
  ...(["sp", "cxnSp"].some((name) => descendantsOf(anchor, name).length > 0) ? [drawing.path] : []),
];

const tryToRead = (anchor: XmlElement, drawing: Drawing): SheetDrawings => {
  const itsParts = partsOf(anchor, drawing);
  try {
    return { ...NO_DRAWINGS, pictures: [readAnchoredObject(anchor, drawing)], partsShown: itsParts };
  } catch (error) {
    const isElsewhere = itsParts.length === 0 && descendantsOf(anchor, "pic").length > 0;
    if (error instanceof Unsupported)
      return { ...NO_DRAWINGS, partsNotShown: itsParts, linkedPictures: isElsewhere ? 1 : 0 };
    throw error;
  }
};

/**
 * The pictures and drawings over a sheet's cells, as far as they can be shown. They are for viewing only, so a problem in them
 * never keeps a workbook from being opened.
 */
export const readDrawings = (parts: Parts, sheetPath: string, budget: PictureBudget): SheetDrawings => {
  try {
    const path = relationshipsOf(parts, sheetPath).find(({ kind }) => kind === "drawing")?.target ?? "";
    const bytes = parts.get(path);
    if (!bytes || !budget({ drawingBytes: bytes.length })) return NO_DRAWINGS;
    const images = imagesOf(relationshipsOf(parts, path));
    const drawing: Drawing = { parts, path, images, kinds: new Map(), budget };
    const read = parseXml(bytes, path).root.children.map((anchor) => tryToRead(anchor, drawing));
    return {
      pictures: read.flatMap(({ pictures }) => pictures),
      partsShown: read.flatMap(({ partsShown }) => partsShown),
      partsNotShown: read.flatMap(({ partsNotShown }) => partsNotShown),
      linkedPictures: read.reduce((sum, { linkedPictures }) => sum + linkedPictures, 0),
    };
  } catch (error) {
    if (error instanceof FileError) return NO_DRAWINGS;
    throw error;
  }
};
