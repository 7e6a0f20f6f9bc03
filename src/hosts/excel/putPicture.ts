import { a1 } from "../../sheets/address";
import type { Undo } from "../../sheets/patch";
import type { SheetPicture } from "../host";
import { allOrNothing } from "./allOrNothing";
import type { ExcelEntry } from "./excelHost";
import { PIXELS_TO_POINTS } from "./points";

/** In points, from the sheet's upper left corner. */
export interface PictureBox {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

/** Excel takes an SVG through the document only, at the selection; a test passes a stand-in. */
export type InsertSvg = (svg: string, box: PictureBox) => Promise<void>;

/** The sheet, which may be renamed meanwhile, with what lies on it. */
interface Lying {
  readonly sheetId: string;
  readonly shapeIds: ReadonlySet<string>;
}

const readLying = (excel: ExcelEntry, sheet: string): Promise<Lying> =>
  excel.run(async (context) => {
    const worksheet = context.workbook.worksheets.getItem(sheet);
    worksheet.load("id");
    worksheet.shapes.load("items/id");
    await context.sync();
    return { sheetId: worksheet.id, shapeIds: new Set(worksheet.shapes.items.map(({ id }) => id)) };
  });

const selectCorner = (
  excel: ExcelEntry,
  { sheet, at }: SheetPicture,
): Promise<{ left: number; top: number }> =>
  excel.run(async (context) => {
    const range = context.workbook.worksheets.getItem(sheet).getRange(a1(at));
    range.select();
    range.load("left,top");
    await context.sync();
    return { left: range.left, top: range.top };
  });

const takeAway = (excel: ExcelEntry, sheetId: string, isOurs: (shapeId: string) => boolean): Promise<void> =>
  excel.run(async (context) => {
    const { shapes } = context.workbook.worksheets.getItem(sheetId);
    shapes.load("items/id");
    await context.sync();
    for (const shape of shapes.items) if (isOurs(shape.id)) shape.delete();
    await context.sync();
  });

/** Puts a picture over a sheet's cells. Excel doesn't say which one came of it, so what lay there before tells. */
export const putPicture = async (
  excel: ExcelEntry,
  insertSvg: InsertSvg,
  picture: SheetPicture,
): Promise<Undo> => {
  const before = await readLying(excel, picture.sheet);
  const corner = await selectCorner(excel, picture);
  const isNew = (shapeId: string): boolean => !before.shapeIds.has(shapeId);
  const { shapeIds } = await allOrNothing(
    async () => {
      await insertSvg(picture.svg, {
        ...corner,
        width: picture.widthPx * PIXELS_TO_POINTS,
        height: picture.heightPx * PIXELS_TO_POINTS,
      });
      return readLying(excel, before.sheetId);
    },
    () => takeAway(excel, before.sheetId, isNew),
  );
  return () => takeAway(excel, before.sheetId, (id) => isNew(id) && shapeIds.has(id));
};
