import type { Injector, Workbook } from "@univerjs/core";
import { ISheetDrawingService, type ISheetDrawing } from "@univerjs/sheets-drawing";
import { combineLatest, merge, startWith } from "rxjs";
import { a1 } from "../../../workbook/address";
import { isFilePicture, type FileImage } from "./filePictures";

const descriptionOf = (drawing: ISheetDrawing): string[] => {
  if (!isFilePicture(drawing)) return [];
  const { description, sheetTransform } = drawing as FileImage;
  return [`at ${a1(sheetTransform.from)}: ${description || "a picture without a description"}`];
};

/** Describes the file's pictures on the active sheet for screen readers. */
export const describePictures = (injector: Injector, workbook: Workbook, container: HTMLElement): void => {
  const drawings = injector.get(ISheetDrawingService);
  const changes = merge(drawings.add$, drawings.update$, drawings.remove$).pipe(startWith([]));
  combineLatest([workbook.activeSheet$, changes]).subscribe(([sheet]) => {
    const onSheet = sheet ? drawings.getDrawingData(workbook.getUnitId(), sheet.getSheetId()) : {};
    const descriptions = Object.values(onSheet).flatMap(descriptionOf);
    if (descriptions.length === 0) container.removeAttribute("aria-description");
    else container.setAttribute("aria-description", `Pictures on this sheet, ${descriptions.join("; ")}`);
  });
};
