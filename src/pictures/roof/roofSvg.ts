import type { PictureOptions } from "../pictureOptions";
import { element } from "../svg";
import { svgPicture, type Drawing } from "../svgPicture";
import { roofStyle } from "./roofStyle";

/** A complete picture of a roof, in the style that plan and view share. */
export const roofSvg = (
  options: PictureOptions,
  drawing: Omit<Drawing, "className" | "definitions">,
): string =>
  svgPicture(options, {
    ...drawing,
    className: "gw-roof",
    definitions: [element("style", {}, roofStyle(options.palette))],
  });
