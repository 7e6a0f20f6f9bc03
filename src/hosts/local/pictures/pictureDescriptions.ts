import type { Injector, Workbook } from "@univerjs/core";
import { ISheetDrawingService, type ISheetDrawing } from "@univerjs/sheets-drawing";
import { combineLatest, merge, startWith } from "rxjs";
import { a1 } from "../../../workbook/address";
import { isFilePicture, type FileImage } from "./filePictures";

const inWords = (drawing: ISheetDrawing): string[] => {
  if (!isFilePicture(drawing)) return [];
  const { description, sheetTransform } = drawing as FileImage;
  return [`at ${a1(sheetTransform.from)}: ${description || "a picture that the file says nothing of"}`];
};

/** Tells those who can't see them which pictures of its file lie on the sheet in front. */
export const describePictures = (injector: Injector, workbook: Workbook, container: HTMLElement): void => {
  const drawings = injector.get(ISheetDrawingService);
  const changes = merge(drawings.add$, drawings.update$, drawings.remove$).pipe(startWith([]));
  combineLatest([workbook.activeSheet$, changes]).subscribe(([sheet]) => {
    const there = sheet ? drawings.getDrawingData(workbook.getUnitId(), sheet.getSheetId()) : {};
    const words = Object.values(there).flatMap(inWords);
    if (words.length === 0) container.removeAttribute("aria-description");
    else container.setAttribute("aria-description", `Pictures on this sheet, ${words.join("; ")}`);
  });
};
