import { a1 } from "../../../workbook/address";
import type { Undo } from "../../../workbook/patch";
import type { SheetPicture } from "../../../workbook/host";
import { allOrNothing } from "./allOrNothing";
import type { ExcelEntry } from "../ranges/excelEntry";
import { POINTS_PER_PX } from "./points";

/** In points. */
export interface PictureSize {
  readonly width: number;
  readonly height: number;
}

/** Inserts an SVG at the selection, the only way that Excel has for SVG. Tests pass a stand-in. */
export type InsertSvg = (svg: string, size: PictureSize) => Promise<void>;

/** A shape or picture on a sheet, which may be renamed in the meantime. */
interface SheetShape extends PictureSize {
  readonly sheetId: string;
  readonly shapeId: string;
}

/** Excel may round a size to whole pixels. */
const NEARLY_POINTS = 2;

const WHICH_IS_OURS =
  "Another shape was added at the same moment, and Excel doesn't say which one is the picture. It is where the selection was.";

const isSame = (a: SheetShape, b: SheetShape): boolean => a.sheetId === b.sheetId && a.shapeId === b.shapeId;

const isNearly = (a: PictureSize, b: PictureSize): boolean =>
  Math.abs(a.width - b.width) < NEARLY_POINTS && Math.abs(a.height - b.height) < NEARLY_POINTS;

/** The shapes on all sheets: another sheet may have become active before Excel inserted the picture. */
const readShapes = (excel: ExcelEntry): Promise<SheetShape[]> =>
  excel.run(async (context) => {
    const { worksheets } = context.workbook;
    worksheets.load("items/id");
    await context.sync();
    const sheets = worksheets.items;
    for (const { shapes } of sheets) shapes.load("items/id,items/width,items/height");
    await context.sync();
    return sheets.flatMap(({ id: sheetId, shapes }) =>
      shapes.items.map(({ id: shapeId, width, height }) => ({ sheetId, shapeId, width, height })),
    );
  });

/** The top left corner of a cell, in points from that of its sheet. */
interface Corner {
  readonly sheetId: string;
  readonly left: number;
  readonly top: number;
}

const selectCorner = (excel: ExcelEntry, { sheet: name, at }: SheetPicture): Promise<Corner> =>
  excel.run(async (context) => {
    const sheet = context.workbook.worksheets.getItem(name);
    const range = sheet.getRange(a1(at));
    range.select();
    sheet.load("id");
    range.load("left,top");
    await context.sync();
    return { sheetId: sheet.id, left: range.left, top: range.top };
  });

const deleteShapes = (excel: ExcelEntry, gone: readonly SheetShape[]): Promise<void> =>
  excel.run(async (context) => {
    const sheets = [...new Set(gone.map(({ sheetId }) => sheetId))].map((sheetId) => ({
      sheetId,
      sheet: context.workbook.worksheets.getItemOrNullObject(sheetId),
    }));
    for (const { sheet } of sheets) sheet.load("id");
    await context.sync();
    const present = sheets.filter(({ sheet }) => !sheet.isNullObject);
    for (const { sheet } of present) sheet.shapes.load("items/id");
    await context.sync();
    for (const { sheetId, sheet } of present)
      for (const shape of sheet.shapes.items)
        if (gone.some((each) => each.sheetId === sheetId && each.shapeId === shape.id)) shape.delete();
    await context.sync();
  });

const copyTo = (
  excel: ExcelEntry,
  { sheetId, shapeId, ...size }: SheetShape,
  toSheetId: string,
): Promise<SheetShape> =>
  excel.run(async (context) => {
    const { worksheets } = context.workbook;
    const copy = worksheets.getItem(sheetId).shapes.getItem(shapeId).copyTo(worksheets.getItem(toSheetId));
    copy.load("id");
    await context.sync();
    return { sheetId: toSheetId, shapeId: copy.id, ...size };
  });

/** Moves a shape to its corner: the selection, where Excel inserts it, may have changed. */
const place = (excel: ExcelEntry, { sheetId, shapeId }: SheetShape, { left, top }: Corner): Promise<void> =>
  excel.run(async (context) => {
    const shape = context.workbook.worksheets.getItem(sheetId).shapes.getItem(shapeId);
    shape.left = left;
    shape.top = top;
    await context.sync();
  });

/**
 * Inserts a picture over a sheet's cells. Excel doesn't return the new shape, so it is found by comparing with the shapes before,
 * and by its size. For that, only one picture is inserted at a time.
 */
export const putPicture = async (
  excel: ExcelEntry,
  insertSvg: InsertSvg,
  picture: SheetPicture,
): Promise<Undo> => {
  const size = {
    width: picture.widthPx * POINTS_PER_PX,
    height: picture.heightPx * POINTS_PER_PX,
  };
  const before = await readShapes(excel);
  const corner = await selectCorner(excel, picture);
  let most = 1;
  /** What may be the picture, and its copy if there is one. */
  const findOurs = async (): Promise<SheetShape[]> => {
    const added = (await readShapes(excel)).filter((each) => !before.some((other) => isSame(each, other)));
    return added.length === 1 ? added : added.filter((each) => isNearly(each, size));
  };
  const put = await allOrNothing(
    async () => {
      await insertSvg(picture.svg, size);
      const [came, other] = await findOurs();
      if (!came) throw new Error("Excel inserted no picture.");
      if (other) throw new Error(WHICH_IS_OURS);
      const isElsewhere = came.sheetId !== corner.sheetId;
      if (isElsewhere) most = 2;
      const ours = isElsewhere ? await copyTo(excel, came, corner.sheetId) : came;
      await place(excel, ours, corner);
      if (isElsewhere) await deleteShapes(excel, [came]);
      return ours;
    },
    async () => {
      const ours = await findOurs();
      if (ours.length <= most) await deleteShapes(excel, ours);
    },
  );
  return () => deleteShapes(excel, [put]);
};
