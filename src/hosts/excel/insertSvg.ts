import type { InsertSvg } from "./write/putPicture";

/** Inserts an SVG through the Office document API. (Not tried in Excel itself.) */
export const insertSvg: InsertSvg = (svg, { width, height }) =>
  new Promise((resolve, reject) => {
    // In Excel, the position counts from the selected cell.
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
