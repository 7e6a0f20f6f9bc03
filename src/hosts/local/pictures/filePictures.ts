import {
  BooleanNumber,
  DrawingTypeEnum,
  DEFAULT_WORKSHEET_COLUMN_WIDTH,
  DEFAULT_WORKSHEET_ROW_HEIGHT,
  ImageSourceType,
  type IWorkbookData,
  type IWorksheetData,
} from "@univerjs/core";
import type { ICellOverGridPosition } from "@univerjs/sheets";
import type { ISheetImage } from "@univerjs/sheets-drawing";
import { LAST_CELL } from "../../../workbook/address";
import type { BookSheet, AnchorPoint, FilePicture } from "../../../xlsx/book/book";

/** Marks pictures from a file. The file keeps them, so they aren't written again. */
const FILE_PICTURE_PREFIX = "file-picture-";
export const isFilePicture = ({ drawingId }: { readonly drawingId: string }): boolean =>
  drawingId.startsWith(FILE_PICTURE_PREFIX);

/** A picture and its position in the engine's terms. */
export interface PlacedPicture {
  readonly picture: FilePicture;
  readonly from: ICellOverGridPosition;
  readonly to: ICellOverGridPosition;
}

/** An image of the engine, with the description from the file. */
export interface FileImage extends ISheetImage {
  readonly description: string;
}

type Sizes = Pick<IWorksheetData, "rowData" | "columnData" | "defaultRowHeight" | "defaultColumnWidth">;

const rowPx = ({ rowData, defaultRowHeight }: Partial<Sizes>, row: number): number => {
  const line = rowData?.[row];
  if (line?.hd === BooleanNumber.TRUE) return 0;
  return line?.ah ?? line?.h ?? defaultRowHeight ?? DEFAULT_WORKSHEET_ROW_HEIGHT;
};

const columnPx = ({ columnData, defaultColumnWidth }: Partial<Sizes>, column: number): number => {
  const line = columnData?.[column];
  if (line?.hd === BooleanNumber.TRUE) return 0;
  return line?.w ?? defaultColumnWidth ?? DEFAULT_WORKSHEET_COLUMN_WIDTH;
};

/** The most rows or columns under a picture: a file may make them almost 0 high. */
const MOST_LINES = 2000;

/** The row or column that lies `px` pixels after the start of `from`, and the remaining offset in it. */
const lineAt = (
  from: number,
  px: number,
  last: number,
  sizeOf: (index: number) => number,
): [number, number] => {
  let [index, rest] = [from, px];
  for (
    let size = sizeOf(index);
    rest > size && index < last && index - from < MOST_LINES;
    size = sizeOf(index)
  ) {
    rest -= size;
    index++;
  }
  return [index, Math.min(rest, sizeOf(index))];
};

/** The position at an offset from a cell's top left corner. */
const positionOf = (sizes: Partial<Sizes>, { row, column, offsetPx }: AnchorPoint): ICellOverGridPosition => {
  const [atRow, rowOffset] = lineAt(row, offsetPx.y, LAST_CELL.row, (each) => rowPx(sizes, each));
  const [atColumn, columnOffset] = lineAt(column, offsetPx.x, LAST_CELL.column, (each) =>
    columnPx(sizes, each),
  );
  return { row: atRow, rowOffset, column: atColumn, columnOffset };
};

const endOf = ({ from, to }: FilePicture): AnchorPoint =>
  "row" in to
    ? to
    : { ...from, offsetPx: { x: from.offsetPx.x + to.widthPx, y: from.offsetPx.y + to.heightPx } };

/** The pictures of a file's sheet, placed on the engine's rows and columns. */
export const placedPictures = (
  { filePictures = [] }: BookSheet,
  sizes: Partial<Sizes>,
): readonly PlacedPicture[] =>
  filePictures.map((picture) => ({
    picture,
    from: positionOf(sizes, picture.from),
    to: positionOf(sizes, endOf(picture)),
  }));

const drawing = (
  unitId: string,
  subUnitId: string,
  { picture: { source, description }, from, to }: PlacedPicture,
  index: number,
): FileImage => ({
  unitId,
  subUnitId,
  drawingId: `${FILE_PICTURE_PREFIX}${subUnitId}-${index}`,
  drawingType: DrawingTypeEnum.DRAWING_IMAGE,
  imageSourceType: ImageSourceType.BASE64,
  source,
  description,
  sheetTransform: { from, to },
  axisAlignSheetTransform: { from, to },
});

/** The engine's resource for the drawings over its sheets. */
export const filePicturesResource = (
  unitId: string,
  picturesBySheetId: Readonly<Record<string, readonly PlacedPicture[]>>,
): NonNullable<IWorkbookData["resources"]>[number] => {
  const sheets = Object.entries(picturesBySheetId).map(([sheetId, pictures]) => {
    const drawings = pictures.map((picture, index) => drawing(unitId, sheetId, picture, index));
    const data = Object.fromEntries(drawings.map((each) => [each.drawingId, each]));
    return [sheetId, { data, order: drawings.map(({ drawingId }) => drawingId) }];
  });
  return { name: "SHEET_DRAWING_PLUGIN", data: JSON.stringify(Object.fromEntries(sheets)) };
};
