import type { InsertSvg } from "./putPicture";

/** Inserts an SVG into the document by Office's own way for pictures. (Not tried in Excel itself.) */
export const insertSvg: InsertSvg = (svg, { left, top, width, height }) =>
  new Promise((resolve, reject) => {
    const box = { imageLeft: left, imageTop: top, imageWidth: width, imageHeight: height };
    Office.context.document.setSelectedDataAsync(
      svg,
      { coercionType: Office.CoercionType.XmlSvg, ...box },
      ({ status, error }) => {
        if (status === Office.AsyncResultStatus.Succeeded) resolve();
        else reject(new Error(error.message));
      },
    );
  });
