import type { InsertSvg } from "./write/putPicture";

/** Inserts an SVG into the document by Office's own way for pictures. (Not tried in Excel itself.) */
export const insertSvg: InsertSvg = (svg, { width, height }) =>
  new Promise((resolve, reject) => {
    // Its place counts from the selected cell, in Excel: there it is to lie.
    const box = { imageLeft: 0, imageTop: 0, imageWidth: width, imageHeight: height };
    Office.context.document.setSelectedDataAsync(
      svg,
      { coercionType: Office.CoercionType.XmlSvg, ...box },
      ({ status, error }) => {
        if (status === Office.AsyncResultStatus.Succeeded) resolve();
        else reject(new Error(error.message));
      },
    );
  });
