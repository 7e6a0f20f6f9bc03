import { DrawingTypeEnum, type Injector, type Workbook } from "@univerjs/core";
import { ISheetDrawingService, type ISheetImage } from "@univerjs/sheets-drawing";
import { svgUrl } from "../../../workbook/dataUrl";
import type { BookPicture } from "../../../xlsx/book/book";
import { onPaper } from "../../../xlsx/read/drawings/shapes";
import { decodedImage } from "./decodedImage";
import { isFilePicture } from "./filePictures";

/** The pictures that were inserted here, as a file stores them. */
export interface Pictures {
  readonly bySheet: ReadonlyMap<string, readonly BookPicture[]>;
  /** The number of pictures that couldn't be drawn for the file. */
  readonly lost: number;
}

/** Image pixels per screen pixel, so that a print is sharp too. */
const IMAGE_PX_PER_PX = 2;
const SVG_SOURCE = /^data:image\/svg\+xml;base64,/;

const toBytes = (base64: string): Uint8Array => Uint8Array.from(atob(base64), (byte) => byte.charCodeAt(0));

const drawn = async (source: string, widthPx: number, heightPx: number): Promise<Uint8Array> => {
  const image = await decodedImage(source);
  const canvas = document.createElement("canvas");
  canvas.width = Math.round(widthPx * IMAGE_PX_PER_PX);
  canvas.height = Math.round(heightPx * IMAGE_PX_PER_PX);
  canvas.getContext("2d")?.drawImage(image, 0, 0, canvas.width, canvas.height);
  const blob = await new Promise<Blob | null>((resolve) => {
    canvas.toBlob(resolve, "image/png");
  });
  if (!blob) throw new Error("The picture couldn't be drawn.");
  return new Uint8Array(await blob.arrayBuffer());
};

const pictureOf = async ({ source, transform, sheetTransform }: ISheetImage): Promise<BookPicture> => {
  const { width = 0, height = 0 } = transform ?? {};
  const { row, column, rowOffset, columnOffset } = sheetTransform.from;
  // A picture from a copied sheet of a file has the page's colors; `onPaper` gives it those of paper.
  const svg = SVG_SOURCE.test(source)
    ? onPaper(new TextDecoder().decode(toBytes(source.replace(SVG_SOURCE, ""))))
    : undefined;
  return {
    at: { row, column },
    offsetPx: { x: columnOffset, y: rowOffset },
    width,
    height,
    png: await drawn(svg === undefined ? source : svgUrl(svg), width, height),
    ...(svg !== undefined && { svg: new TextEncoder().encode(svg) }),
  };
};

export const readPictures = async (injector: Injector, workbook: Workbook): Promise<Pictures> => {
  const bySheet = new Map<string, BookPicture[]>();
  let lost = 0;
  for (const [sheetId, { order, data }] of Object.entries(
    injector.get(ISheetDrawingService).getDrawingDataForUnit(workbook.getUnitId()),
  )) {
    const sheet = workbook.getSheetBySheetId(sheetId)?.getName();
    if (sheet === undefined) continue;
    for (const id of order) {
      const drawing = data[id];
      if (drawing && isFilePicture(drawing)) continue;
      const isImage = drawing?.drawingType === DrawingTypeEnum.DRAWING_IMAGE;
      const picture = isImage && (await pictureOf(drawing as ISheetImage).catch(() => undefined));
      if (picture) bySheet.set(sheet, [...(bySheet.get(sheet) ?? []), picture]);
      else lost++;
    }
  }
  return { bySheet, lost };
};
