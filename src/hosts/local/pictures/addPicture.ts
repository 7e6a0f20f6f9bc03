import {
  DrawingTypeEnum,
  generateRandomId,
  ICommandService,
  ImageSourceType,
  type Injector,
  type Workbook,
} from "@univerjs/core";
import {
  convertPositionCellToSheetOverGrid,
  ScrollToCellOperation,
  SheetSkeletonService,
} from "@univerjs/sheets";
import {
  InsertSheetDrawingCommand,
  ISheetDrawingService,
  RemoveSheetDrawingCommand,
  transformToAxisAlignPosition,
} from "@univerjs/sheets-drawing";
import type { CellAddress } from "../../../workbook/address";
import type { Undo } from "../../../workbook/patch";
import { svgUrl } from "../../../workbook/dataUrl";
import type { SheetPicture } from "../../../workbook/host";

const NOT_TURNED = { flipY: false, flipX: false, angle: 0, skewX: 0, skewY: 0 };

/**
 * Scrolls a picture's corners into view, the first one last, so that it is visible even if the picture is larger than the window.
 * The selection stays, because the pane uses it.
 */
const bringIntoView = (commands: ICommandService, unitId: string, corners: readonly CellAddress[]): void => {
  for (const { row, column } of corners.toReversed()) {
    const range = { startRow: row, endRow: row, startColumn: column, endColumn: column };
    commands.syncExecuteCommand(ScrollToCellOperation.id, { unitId, range });
  }
};

/** Inserts an SVG over the cells of a sheet; returns the function that removes it. */
export const addPicture = async (
  injector: Injector,
  workbook: Workbook,
  { sheet, at, svg, widthPx, heightPx }: SheetPicture,
): Promise<Undo> => {
  const unitId = workbook.getUnitId();
  const subUnitId = workbook.getSheetBySheetName(sheet)?.getSheetId();
  if (subUnitId === undefined) throw new Error(`There is no sheet "${sheet}" in the workbook.`);
  const skeleton = injector.get(SheetSkeletonService).ensureSkeleton(unitId, subUnitId);
  if (!skeleton) throw new Error(`The sheet "${sheet}" isn't ready for a picture yet.`);
  const place = { row: at.row, rowOffset: 0, column: at.column, columnOffset: 0 };
  const { transform, sheetTransform } = convertPositionCellToSheetOverGrid(
    unitId,
    subUnitId,
    place,
    widthPx,
    heightPx,
    skeleton,
  );
  const drawing = {
    unitId,
    subUnitId,
    drawingId: generateRandomId(),
    drawingType: DrawingTypeEnum.DRAWING_IMAGE,
    imageSourceType: ImageSourceType.BASE64,
    source: svgUrl(svg),
    transform: { ...transform, ...NOT_TURNED },
    sheetTransform: { ...sheetTransform, ...NOT_TURNED },
    axisAlignSheetTransform: transformToAxisAlignPosition(transform, skeleton),
  };
  const commands = injector.get(ICommandService);
  const added = await commands.executeCommand(InsertSheetDrawingCommand.id, { unitId, drawings: [drawing] });
  if (!added) throw new Error("The sheet rejected the picture.");
  if (workbook.getActiveSheet().getSheetId() === subUnitId)
    bringIntoView(commands, unitId, [at, sheetTransform.to]);
  return async () => {
    const isThere = injector.get(ISheetDrawingService).getDrawingByParam(drawing) !== undefined;
    if (isThere) await commands.executeCommand(RemoveSheetDrawingCommand.id, { unitId, drawings: [drawing] });
  };
};
